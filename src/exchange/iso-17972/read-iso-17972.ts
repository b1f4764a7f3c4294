import { TintladderError } from '../../core/index.js';
import type { FileContext } from '../file-context.js';
import type { MeasurementTable } from '../measurement.js';
import type { CheckedReadOptions } from '../read-options.js';
import { createRowReader, type RowReader } from '../row-reader.js';
import { type TablePlan, unsupportedQuantity } from '../table-plan.js';
import { orderWavelengths } from '../wavelength-grid.js';
import { type ColourSpecification, readColourSpecifications } from './colour-specification.js';
import { childOf, descendants, parseXml, type XmlElement } from './xml-element.js';

const NO_SPECIFICATION: ColourSpecification = { conditions: {} };

/**
 * Reads the XML colour exchange of ISO 17972: reflectance spectra, CIELAB and CIEXYZ of every object with their specifications. Spot-colour
 * characterisation (part 4) uses the same objects, with what tells them apart in tags, which are kept as fields.
 *
 * @throws TintladderError `malformed`, `truncated`, `unknown-format` for other XML, `unsupported-quantity`, `no-header` for a spectrum without
 * its wavelengths, and the faults of its values
 * @see ISO 17972-1 and ISO 17972-4, Graphic technology: colour data exchange format (CxF/X)
 */
export function readIso17972(
  text: string,
  file: FileContext,
  options: CheckedReadOptions,
): () => readonly MeasurementTable[] {
  const root = parseXml(text);
  if (root.name !== 'CxF') {
    throw new TintladderError('unknown-format', {
      path: `line ${root.line}, column 1`,
      received: `XML with the root ${root.name}`,
      expected: 'the root CxF of ISO 17972',
    });
  }
  file.mark.value = '.';
  const specifications = readColourSpecifications(root);
  const readers = new Map<string, RowReader>();
  for (const object of descendants(root, 'Object')) {
    readObject(object, specifications, file, options, readers);
  }
  return () => [...readers.values()].map((reader) => reader.table());
}

interface Colour {
  readonly element: XmlElement;
  readonly specification: ColourSpecification;
  readonly id: string;
}

function readObject(
  object: XmlElement,
  specifications: ReadonlyMap<string, ColourSpecification>,
  file: FileContext,
  options: CheckedReadOptions,
  readers: Map<string, RowReader>,
): void {
  const values = childOf(object, 'ColorValues');
  const find = (name: string): Colour[] =>
    (values?.children ?? [])
      .filter((child) => child.name === name)
      .map((element) => {
        const id = element.attributes.get('ColorSpecification') ?? '';
        return { element, id, specification: specifications.get(id) ?? NO_SPECIFICATION };
      });
  const spectra = find('ReflectanceSpectrum');
  const labs = find('ColorCIELab');
  const xyzs = find('ColorCIEXYZ');
  refuseOtherSpectra(values, spectra);
  if (spectra.length + labs.length + xyzs.length === 0) return;
  // values that share a specification belong together; a single L*, a*, b* belongs to a single spectrum under any
  const beside = (colours: readonly Colour[], id: string, i: number) =>
    colours.find((colour) => colour.id === id) ?? (i === 0 && spectra.length <= 1 ? colours[0] : undefined);
  const leaders = spectra.length > 0 ? spectra : (labs.length > 0 ? labs : xyzs).slice(0, 1);
  if (labs.length > leaders.length || xyzs.length > leaders.length) {
    const message =
      'An object holds L*, a*, b* or X, Y, Z several times; those without a spectrum of their own were left out.';
    file.notes.add('colours-left-out', message, `line ${object.line}`);
  }
  leaders.forEach((leader, i) => {
    const spectrum = spectra.length > 0 ? leader : undefined;
    readColour(object, spectrum, beside(labs, leader.id, i), beside(xyzs, leader.id, i), file, options, readers);
  });
}

function refuseOtherSpectra(values: XmlElement | undefined, spectra: readonly Colour[]): void {
  const other = values?.children.find(({ name }) => /Spectrum$/.test(name) && name !== 'ReflectanceSpectrum');
  if (other) throw unsupportedQuantity(`line ${other.line}, column 1`, other.name);
  for (const { element, specification } of spectra) {
    const type = specification.measurementType;
    if (type && !/reflect/i.test(type)) throw unsupportedQuantity(`line ${element.line}, column 1`, type);
  }
}

function readColour(
  object: XmlElement,
  spectrum: Colour | undefined,
  lab: Colour | undefined,
  xyz: Colour | undefined,
  file: FileContext,
  options: CheckedReadOptions,
  readers: Map<string, RowReader>,
): void {
  const numbers = spectrum ? spectrum.element.text.split(/\s+/).filter((part) => part !== '') : [];
  const labels = tagFields(object, spectrum);
  const conditions = {
    ...(lab ?? xyz)?.specification.conditions,
    ...spectrum?.specification.conditions,
    ...((lab ?? xyz)?.specification.conditions.viewing
      ? { viewing: (lab ?? xyz)?.specification.conditions.viewing }
      : {}),
  };
  const key = JSON.stringify([
    gridKey(spectrum),
    numbers.length,
    lab !== undefined,
    xyz !== undefined,
    labels.map(([label]) => label),
    conditions,
  ]);
  let reader = readers.get(key);
  if (!reader) {
    reader = createRowReader(
      planColour(object, spectrum, numbers.length, lab, xyz, labels, conditions, file, options),
      file,
    );
    readers.set(key, reader);
  }
  const coordinates = [
    ...(lab ? ['L', 'A', 'B'].map((name) => childOf(lab.element, name)?.text ?? '') : []),
    ...(xyz ? ['X', 'Y', 'Z'].map((name) => childOf(xyz.element, name)?.text ?? '') : []),
  ];
  const name = object.attributes.get('Name') ?? object.attributes.get('Id') ?? '';
  const cells = [name, ...numbers, ...coordinates, ...labels.map(([, value]) => value)];
  const line = spectrum?.element.line ?? object.line;
  reader.read(cells, object.line, (index) =>
    index > 0 && index <= numbers.length
      ? `line ${line}, reading ${index}`
      : `line ${object.line}, object ${JSON.stringify(name)}`,
  );
}

/** What an object says beside its colours: its type, its identifier, the name of the spectrum, and its tags. */
function tagFields(object: XmlElement, spectrum: Colour | undefined): [string, string][] {
  const fields = new Map<string, string>();
  const add = (label: string | undefined, value: string | undefined) => {
    if (label && value !== undefined && !fields.has(label)) fields.set(label, value);
  };
  add('ObjectType', object.attributes.get('ObjectType'));
  add('Id', object.attributes.get('Id'));
  add('Spectrum', spectrum?.element.attributes.get('Name'));
  for (const tag of descendants(object, 'Tag'))
    add(tag.attributes.get('Name'), tag.attributes.get('Value') ?? tag.text);
  return [...fields];
}

function gridKey(spectrum: Colour | undefined): string {
  if (!spectrum) return '';
  const { element, specification } = spectrum;
  return `${element.attributes.get('StartWL') ?? specification.start}/${element.attributes.get('Increment') ?? specification.step}`;
}

function planColour(
  object: XmlElement,
  spectrum: Colour | undefined,
  count: number,
  lab: Colour | undefined,
  xyz: Colour | undefined,
  labels: readonly [string, string][],
  common: TablePlan['common'],
  file: FileContext,
  options: CheckedReadOptions,
): TablePlan {
  const afterSpectrum = 1 + count;
  const afterLab = afterSpectrum + (lab ? 3 : 0);
  const afterXyz = afterLab + (xyz ? 3 : 0);
  return {
    line: object.line,
    width: afterXyz + labels.length,
    name: 0,
    ...(spectrum ? { spectrum: planSpectrum(spectrum, count, file, options) } : {}),
    ...(lab ? { lab: { indices: [afterSpectrum, afterSpectrum + 1, afterSpectrum + 2] as const } } : {}),
    ...(xyz ? { xyz: { indices: [afterLab, afterLab + 1, afterLab + 2] as const } } : {}),
    conditionColumns: [],
    fieldColumns: labels.map(([label], i) => ({ index: afterXyz + i, label })),
    stated: {},
    common,
  };
}

function planSpectrum(
  { element, specification, id }: Colour,
  count: number,
  file: FileContext,
  options: CheckedReadOptions,
): TablePlan['spectrum'] {
  const start = Number(element.attributes.get('StartWL') ?? specification.start);
  const step = Number(element.attributes.get('Increment') ?? specification.step);
  if (!(start > 0 && step > 0)) {
    throw new TintladderError('no-header', {
      path: `line ${element.line}, column 1`,
      received: `a spectrum under ${id === '' ? 'no specification' : `the specification ${JSON.stringify(id)}`} without a wavelength range`,
      expected: 'StartWL and Increment in nm',
    });
  }
  const given = Array.from({ length: count }, (_, i) => ({
    wavelength: start + i * step,
    decimals: 0,
    path: `line ${element.line}, reading ${i + 1}`,
  }));
  const { grid, order } = orderWavelengths(given, options.outsideRange, file.notes);
  return { grid, columns: Int32Array.from(order, (i) => i + 1) };
}
