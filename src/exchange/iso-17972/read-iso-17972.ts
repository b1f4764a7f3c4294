import { TintladderError } from '../../core/index.js';
import type { Emit, ReaderOptions } from '../measurement/format-contract.js';
import type { MeasurementTable } from '../measurement/measurement.js';
import { unsupportedQuantity } from '../quantity/unsupported-quantity.js';
import type { Triple } from '../table/coordinates.js';
import { createFileContext, type FileContext, settleFile } from '../table/file-context.js';
import { createTableReader, type TableReader } from '../table/table-reader.js';
import { type DecimalMark, notANumber, parseFileNumber } from '../text/file-number.js';
import type { Notes } from '../text/notes.js';
import { gatherText, type TextSink } from '../text/text-sink.js';
import { type OrderedGrid, orderWavelengths } from '../wavelength/wavelength-grid.js';
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
export function createIso17972Reader(
  options: ReaderOptions,
  notes: Notes,
  emit: Emit,
): TextSink<readonly MeasurementTable[]> {
  return gatherText((text) => {
    const file = createFileContext(options.scale, notes, emit);
    return settleFile(file, readText(text, file, options));
  });
}

function readText(text: string, file: FileContext, options: ReaderOptions): () => readonly MeasurementTable[] {
  const root = parseXml(text);
  if (root.name !== 'CxF') {
    throw new TintladderError('unknown-format', {
      path: `line ${root.line}, column 1`,
      received: root.name,
      expected: 'the root CxF of ISO 17972',
    });
  }
  const specifications = readColourSpecifications(root);
  const tables = new Map<string, TableReader>();
  for (const object of descendants(root, 'Object')) {
    for (const colours of coloursOf(object, specifications, file)) readColours(colours, file, options, tables);
  }
  return () => [...tables.values()].map(({ table }) => table());
}

interface Colour {
  readonly element: XmlElement;
  readonly specification: ColourSpecification;
  readonly id: string;
}

/** The colours of an object that belong to one reading. */
interface ObjectColours {
  readonly object: XmlElement;
  readonly spectrum?: Colour;
  readonly lab?: Colour;
  readonly xyz?: Colour;
}

function coloursOf(
  object: XmlElement,
  specifications: ReadonlyMap<string, ColourSpecification>,
  file: FileContext,
): ObjectColours[] {
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
  if (spectra.length + labs.length + xyzs.length === 0) return [];
  // values that share a specification belong together; a single L*, a*, b* belongs to a single spectrum under any
  const beside = (colours: readonly Colour[], id: string, i: number) =>
    colours.find((colour) => colour.id === id) ?? (i === 0 && spectra.length <= 1 ? colours[0] : undefined);
  const leaders = spectra.length > 0 ? spectra : (labs.length > 0 ? labs : xyzs).slice(0, 1);
  if (labs.length > leaders.length || xyzs.length > leaders.length) {
    const message =
      'An object holds L*, a*, b* or X, Y, Z several times; those without a spectrum of their own were left out.';
    file.notes.add('colours-left-out', message, `line ${object.line}`);
  }
  return leaders.map((leader, i) => {
    const lab = beside(labs, leader.id, i);
    const xyz = beside(xyzs, leader.id, i);
    return {
      object,
      ...(spectra.length > 0 ? { spectrum: leader } : {}),
      ...(lab ? { lab } : {}),
      ...(xyz ? { xyz } : {}),
    };
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

function readColours(
  { object, spectrum, lab, xyz }: ObjectColours,
  file: FileContext,
  options: ReaderOptions,
  tables: Map<string, TableReader>,
): void {
  const name = object.attributes.get('Name') ?? object.attributes.get('Id') ?? '';
  const here = () => `line ${object.line}, object ${JSON.stringify(name)}`;
  const band = (i: number) => `line ${spectrum?.element.line ?? object.line}, reading ${i + 1}`;
  const numbers = spectrum ? readNumbers(spectrum.element, band) : [];
  const colour = lab ?? xyz;
  const viewing = colour?.specification.conditions.viewing;
  const conditions = {
    ...colour?.specification.conditions,
    ...spectrum?.specification.conditions,
    ...(viewing ? { viewing } : {}),
  };
  const fields = tagFields(object, spectrum);
  const ordered = spectrum && orderBands(spectrum, numbers.length, file, options);
  const key = JSON.stringify([
    ordered?.grid,
    lab !== undefined,
    xyz !== undefined,
    fields.map(([label]) => label),
    conditions,
  ]);
  let table = tables.get(key);
  if (!table) {
    table = createTableReader({ line: object.line, ...(ordered ? { grid: ordered.grid } : {}) }, file);
    tables.set(key, table);
  }
  table.add(
    {
      name,
      replicate: '',
      line: object.line,
      ...(ordered ? { values: Float64Array.from(ordered.order, (i) => numbers[i]) } : {}),
      ...(lab ? { lab: readTriple(lab.element, ['L', 'A', 'B'], here) } : {}),
      ...(xyz ? { xyz: readTriple(xyz.element, ['X', 'Y', 'Z'], here) } : {}),
      conditions,
      fields: Object.fromEntries(fields),
    },
    { name: here, value: (i) => band(ordered?.order[i] ?? i), lab: here, xyz: here },
  );
}

function readNumbers({ text }: XmlElement, placeOf: (index: number) => string): number[] {
  return text
    .split(/\s+/)
    .filter((part) => part !== '')
    .map((part, i) => toNumber(part, () => placeOf(i)));
}

function readTriple(element: XmlElement, names: readonly [string, string, string], place: () => string): Triple {
  const [first, second, third] = names.map((name) => toNumber(childOf(element, name)?.text ?? '', place));
  return [first, second, third];
}

/** XML has the point for its decimal mark. */
const POINT: DecimalMark = { value: '.' };

function toNumber(text: string, place: () => string): number {
  const value = parseFileNumber(text, POINT);
  if (value === undefined) throw notANumber(text, POINT, place());
  return value;
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

function orderBands(
  { element, specification, id }: Colour,
  count: number,
  file: FileContext,
  options: ReaderOptions,
): OrderedGrid {
  const start = Number(element.attributes.get('StartWL') ?? specification.start);
  const step = Number(element.attributes.get('Increment') ?? specification.step);
  if (!(start > 0 && step > 0)) {
    throw new TintladderError('no-header', {
      path: `line ${element.line}, column 1`,
      received: id,
      expected: 'a specification with StartWL and Increment in nm',
    });
  }
  const given = Array.from({ length: count }, (_, i) => ({
    wavelength: start + i * step,
    decimals: 0,
    path: `line ${element.line}, reading ${i + 1}`,
  }));
  return orderWavelengths(given, options.outsideRange, file.notes);
}
