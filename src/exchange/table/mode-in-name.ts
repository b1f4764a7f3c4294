import type { Conditions } from '../../colorimetry/index.js';
import type { Notes } from '../text/notes.js';

const ABBREVIATION = /(?:^|[\s_(\-,;/])(?:(SCI|SPIN|RSIN)|(SCE|SPEX|RSEX))(?=$|[\s_)\-,;/\d])/;

/** Conditions with the specular mode that a sample's name carries as an abbreviation, where nothing else states one; noted. */
export function withModeOfName(conditions: Conditions, name: string, place: () => string, notes: Notes): Conditions {
  if (conditions.specular !== undefined) return conditions;
  const found = ABBREVIATION.exec(name);
  if (!found) return conditions;
  const specular = found[1] ? 'included' : 'excluded';
  notes.count(
    'mode-from-name',
    place(),
    (count) =>
      `${count === 1 ? 'One reading states' : `${count} readings state`} the specular mode only in the name (the first: ${JSON.stringify(name)}).`,
  );
  return { ...conditions, specular };
}
