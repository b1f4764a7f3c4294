import { NO_TYPE, OWN_ID } from './own-tags.js';
import { descendants, type XmlElement } from './xml-element.js';

/** What an object says beside its colours: its type, its identifier, the name of the spectrum, and its tags. */
export function fieldsOf(object: XmlElement, spectrum: XmlElement | undefined): Map<string, string> {
  const fields = new Map<string, string>();
  const add = (label: string | undefined, value: string | undefined) => {
    if (label && value !== undefined && !fields.has(label)) fields.set(label, value);
  };
  // what stands there only because the format asks for it says nothing of the sample
  const type = object.attributes.get('ObjectType');
  const id = object.attributes.get('Id');
  if (type !== NO_TYPE) add('ObjectType', type);
  if (!id?.startsWith(OWN_ID)) add('Id', id);
  add('Spectrum', spectrum?.attributes.get('Name'));
  for (const tag of descendants(object, 'Tag'))
    add(tag.attributes.get('Name'), tag.attributes.get('Value') ?? tag.text);
  return fields;
}

/** Takes a field out. */
export function takeField(fields: Map<string, string>, label: string): string | undefined {
  const value = fields.get(label);
  fields.delete(label);
  return value;
}
