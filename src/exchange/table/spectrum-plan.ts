import { NOTHING_STATED } from '../conditions/stated-parts.js';
import type { ReaderOptions } from '../measurement/format-contract.js';
import { quantityTaken } from '../quantity/quantity-taken.js';
import type { Quantity } from '../quantity/quantity-text.js';
import { noteTurned } from '../quantity/to-reflectance.js';
import { unsupportedQuantity } from '../quantity/unsupported-quantity.js';
import type { Notes } from '../text/notes.js';
import { orderWavelengths } from '../wavelength/wavelength-grid.js';
import type { WavelengthLabel } from '../wavelength/wavelength-label.js';
import type { Heading, SpectrumPlan } from './heading.js';

interface Band {
  readonly index: number;
  readonly label: WavelengthLabel;
  readonly quantity: Quantity | undefined;
}

/**
 * The spectra of a table: its wavelengths, apart by the specular mode and the geometry that their headings state. Other quantities beside
 * reflectance stay text; alone they are refused, unless the caller asks to have them turned into reflectance.
 *
 * @throws TintladderError `unsupported-quantity`, `grid-invalid`, `wavelength-repeated`, `wavelengths-uneven`
 */
export function planSpectra(
  { columns, placeOf, context }: Heading,
  options: ReaderOptions,
  notes: Notes,
  used: Set<number>,
): SpectrumPlan[] {
  const bands = columns.flatMap(({ role }, index): Band[] =>
    role.kind === 'wavelength'
      ? [{ index, label: role.label, quantity: role.label.quantity ?? context.quantity?.quantity }]
      : [],
  );
  if (bands.length === 0) return [];
  const read = bands.filter(({ quantity }) => quantityTaken(quantity, options.quantity) !== undefined);
  if (read.length === 0 && columns.some(({ role }) => role.kind === 'coordinate')) {
    noteOthers(bands, placeOf, notes);
    return [];
  }
  if (read.length === 0) {
    const [{ index, label, quantity }] = bands;
    const place = label.quantity === undefined ? (context.quantity?.place ?? placeOf(index)) : placeOf(index);
    throw unsupportedQuantity(place, quantity ?? '', quantity);
  }
  for (const { index } of read) used.add(index);
  if (read.length < bands.length)
    noteOthers(
      bands.filter((band) => !read.includes(band)),
      placeOf,
      notes,
    );
  return [...groupBy(read, keyOf).values()].map((group) => {
    const [{ label, quantity }] = group;
    const given = group.map(({ index, label: { wavelength, decimals } }) => ({
      wavelength,
      decimals,
      path: placeOf(index),
    }));
    const { grid, order, resampling } = orderWavelengths(given, options, notes);
    const scale = group.find((band) => band.label.scale)?.label.scale ?? context.quantity?.scale;
    const taken = quantityTaken(quantity, options.quantity);
    if (taken && taken !== 'reflectance') noteTurned(taken, placeOf(group[0].index), notes);
    if (quantity === undefined && scale === undefined && options.quantity === undefined) {
      const message = 'The file does not say what its spectra are; they were read as reflectance.';
      notes.add('reflectance-assumed', message, placeOf(group[0].index));
    }
    return {
      grid,
      columns: Int32Array.from(order, (i) => group[i].index),
      ...(resampling ? { resampling } : {}),
      ...(scale ? { scale } : {}),
      ...(taken && taken !== 'reflectance' ? { turn: taken } : {}),
      stated: label.stated ?? NOTHING_STATED,
    };
  });
}

function noteOthers([{ index, quantity }]: readonly Band[], placeOf: (index: number) => string, notes: Notes): void {
  const message = `Columns hold another quantity than reflectance (${quantity}); they are kept as text.`;
  notes.add('other-quantities-left-out', message, placeOf(index));
}

const keyOf = ({ label: { stated }, quantity }: Band) =>
  JSON.stringify([stated?.specular, stated?.geometry, quantity ?? 'reflectance']);

function groupBy<Item>(items: readonly Item[], key: (item: Item) => string): Map<string, Item[]> {
  const groups = new Map<string, Item[]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group) group.push(item);
    else groups.set(key(item), [item]);
  }
  return groups;
}
