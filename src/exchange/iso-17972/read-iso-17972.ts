import { TintladderError } from '../../core/index.js';
import { nearest } from '../conditions/read-condition.js';
import { toConditions, viewingOf } from '../conditions/stated-parts.js';
import type { MeasurementTable } from '../measurement/measurement.js';
import { quantityInProse } from '../quantity/quantity-text.js';
import type { ReflectanceScale } from '../quantity/reflectance-scale.js';
import { unsupportedQuantity } from '../quantity/unsupported-quantity.js';
import { sumBands } from '../table/bands.js';
import type { Triple } from '../table/coordinates.js';
import type { FileContext } from '../table/file-context.js';
import { isLeftOut } from '../table/left-out.js';
import type { RawColour } from '../table/raw-reading.js';
import { createTableReader, type TableReader } from '../table/table-reader.js';
import { wholeTextReader } from '../table/whole-text-reader.js';
import { type NumberStyle, notANumber, parseFileNumber } from '../text/file-number.js';
import { type OrderedGrid, orderWavelengths } from '../wavelength/wavelength-grid.js';
import { type ColourSpecification, readColourSpecifications } from './colour-specification.js';
import { fieldsOf, takeField } from './object-fields.js';
import { BAND_PASS_TAG, REPLICATE_TAG, SESSION_TAG } from './own-tags.js';
import { childOf, descendants, parseXml, type XmlElement } from './xml-element.js';

const NO_SPECIFICATION: ColourSpecification = { stated: {} };
/** The standard gives X, Y, Z for a white of 100. */
const WHITE = 100;

/**
 * Reads the XML colour exchange of ISO 17972: reflectance spectra, CIELAB and CIEXYZ of every object with their specifications. Spot-colour
 * characterisation (part 4) uses the same objects, with what tells them apart in tags, which are kept as fields.
 *
 * @throws TintladderError `malformed`, `truncated`, `unknown-format` for other XML, `unsupported-quantity`, `no-header` for a spectrum without
 * its wavelengths, and the faults of its values
 * @see ISO 17972-1 and ISO 17972-4, Graphic technology: colour data exchange format (CxF/X)
 */
export const createIso17972Reader = /* @__PURE__ */ wholeTextReader(readText);

function readText(text: string, file: FileContext): () => readonly MeasurementTable[] {
  const root = parseXml(text);
  if (root.name !== 'CxF') {
    throw new TintladderError('unknown-format', {
      path: `line ${root.line}, column 1`,
      received: root.name,
      expected: 'the root CxF of ISO 17972',
    });
  }
  const specifications = readColourSpecifications(root, file.notes);
  const scale = statedScale(root);
  const tables = new Map<string, TableReader>();
  for (const object of descendants(root, 'Object')) {
    for (const colours of coloursOf(object, specifications, file)) readColours(colours, scale, file, tables);
  }
  return () => [...tables.values()].map(({ table }) => table());
}

/** The scale that the description of the file states, such as "Reflectance values in percent". */
function statedScale(root: XmlElement): ReflectanceScale | undefined {
  const description = childOf(childOf(root, 'FileInformation'), 'Description')?.text ?? '';
  return quantityInProse(description)?.scale;
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
  readonly colours: readonly Colour[];
}

/**
 * The readings of an object: one for each spectrum, with the colours of the same specification; a single spectrum has all of them. Colours without
 * a spectrum are one reading together.
 */
function coloursOf(
  object: XmlElement,
  specifications: ReadonlyMap<string, ColourSpecification>,
  file: FileContext,
): ObjectColours[] {
  const values = childOf(object, 'ColorValues');
  const all = (values?.children ?? []).map((element): Colour => {
    const id = element.attributes.get('ColorSpecification') ?? '';
    return { element, id, specification: specifications.get(id) ?? NO_SPECIFICATION };
  });
  const spectra = all.filter(({ element: { name } }) => name === 'ReflectanceSpectrum');
  const colours = all.filter(({ element: { name } }) => Object.hasOwn(COORDINATES, name));
  refuseOtherSpectra(values, spectra, file);
  if (spectra.length + colours.length === 0) return [];
  if (spectra.length === 0) return [{ object, colours }];
  if (spectra.length === 1) return [{ object, spectrum: spectra[0], colours }];
  if (colours.some(({ id }) => spectra.every((spectrum) => spectrum.id !== id))) {
    const message =
      'An object holds several spectra, and colours that belong to none of them by their specification; those were left out.';
    file.notes.add('colours-left-out', message, `line ${object.line}`);
  }
  return spectra.map((spectrum) => ({ object, spectrum, colours: colours.filter(({ id }) => id === spectrum.id) }));
}

const COORDINATES = {
  ColorCIELab: ['lab', ['L', 'A', 'B']],
  ColorCIEXYZ: ['xyz', ['X', 'Y', 'Z']],
} as const;

function refuseOtherSpectra(
  values: XmlElement | undefined,
  spectra: readonly Colour[],
  { options }: FileContext,
): void {
  if (options.quantity === 'reflectance') return;
  const other = values?.children.find(({ name }) => /Spectrum$/.test(name) && name !== 'ReflectanceSpectrum');
  if (other) throw unsupportedQuantity(`line ${other.line}, column 1`, other.name);
  for (const { element, specification } of spectra) {
    const type = specification.measurementType;
    if (type && !/reflect/i.test(type)) throw unsupportedQuantity(`line ${element.line}, column 1`, type);
  }
}

function readColours(
  { object, spectrum, colours }: ObjectColours,
  scale: ReflectanceScale | undefined,
  file: FileContext,
  tables: Map<string, TableReader>,
): void {
  const { notes } = file;
  const name = object.attributes.get('Name') ?? object.attributes.get('Id') ?? '';
  const here = () => `line ${object.line}, object ${JSON.stringify(name)}`;
  const band = (i: number) => `line ${spectrum?.element.line ?? object.line}, reading ${i + 1}`;
  const fields = fieldsOf(object, spectrum?.element);
  const replicate = takeField(fields, REPLICATE_TAG) ?? '';
  const session = takeField(fields, SESSION_TAG);
  const bandPass = takeField(fields, BAND_PASS_TAG);
  if (isLeftOut({ name, replicate, line: object.line }, here, file, true)) return;
  const numbers = spectrum ? readNumbers(spectrum.element, band) : [];
  const ownParts = spectrum?.specification.stated ?? {};
  const stated = colours.reduce((near, { specification }) => {
    const { illuminant: _i, observer: _o, ...far } = specification.stated;
    return nearest(near, far, here, notes);
  }, ownParts);
  const bands = spectrum && orderBands(spectrum, numbers.length, file);
  const key = JSON.stringify([
    bands?.grid,
    colours.map(({ element, id }) => [element.name, id]),
    stated,
    session,
    bandPass,
  ]);
  let table = tables.get(key);
  if (!table) {
    table = createTableReader({ line: object.line, ...(bands ? { grid: bands.grid } : {}), scale }, file);
    tables.set(key, table);
  }
  table.add(
    {
      name,
      replicate,
      line: object.line,
      ...(bands ? { values: takeBands(numbers, bands) } : {}),
      colours: colours.map(({ element, specification }): RawColour => {
        const [space, coordinates] = COORDINATES[element.name === 'ColorCIELab' ? 'ColorCIELab' : 'ColorCIEXYZ'];
        const viewing = viewingOf({ ...ownParts, ...specification.stated });
        return { space, values: readTriple(element, coordinates, here), viewing, white: WHITE, place: here };
      }),
      conditions: {
        ...toConditions(stated),
        ...(session === undefined ? {} : { session }),
        ...(bandPass === 'corrected' || bandPass === 'not-corrected' ? { bandPass } : {}),
      },
      fields: Object.fromEntries(fields),
    },
    { name: here, value: (i) => band(bands?.order[i] ?? i) },
  );
}

function takeBands(numbers: readonly number[], { order, resampling }: OrderedGrid): Float64Array {
  const ordered = Float64Array.from(order, (i) => numbers[i]);
  return resampling ? sumBands(ordered, resampling) : ordered;
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
const POINT: NumberStyle = { decimalMark: '.' };

function toNumber(text: string, place: () => string): number {
  const value = parseFileNumber(text, POINT);
  if (value === undefined) throw notANumber(text, POINT, place());
  return value;
}

function orderBands({ element, specification, id }: Colour, count: number, file: FileContext): OrderedGrid {
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
  return orderWavelengths(given, file.options, file.notes);
}
