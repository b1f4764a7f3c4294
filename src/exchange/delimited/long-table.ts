import { TintladderError } from '../../core/index.js';
import { quantityTaken } from '../quantity/quantity-taken.js';
import { unsupportedQuantity } from '../quantity/unsupported-quantity.js';
import { columnRole } from '../table/column-role.js';
import type { FileContext } from '../table/file-context.js';
import type { PlannedColumn, TableContext } from '../table/heading.js';
import { NO_CONTEXT } from '../table/preamble.js';
import { createRowReader, type RowReader } from '../table/row-reader.js';
import { columnsOf, planTable } from '../table/table-plan.js';
import { cellPlace } from '../text/cell-place.js';
import { looksNumeric, type NumberStyle, notANumber, parseFileNumber } from '../text/file-number.js';
import { isWavelength, parseWavelengthLabel } from '../wavelength/wavelength-label.js';
import { noteClosing } from './closing-remarks.js';
import { isWavelengthHeading, parseValueHeading, type ValueHeading } from './headings.js';
import type { Layout } from './layout.js';
import { isBlank, isComment, type LayoutReader, toWidth } from './layout-reader.js';
import { type LooseRow, readLooseRows } from './loose-rows.js';

interface LongReading {
  readonly wavelength: number;
  readonly label: string;
  readonly cells: readonly string[];
  readonly line: number;
}

interface Sample {
  readonly first: LooseRow;
  readonly readings: LongReading[];
}

interface ValueColumn {
  readonly index: number;
  readonly heading: ValueHeading | undefined;
}

interface LongPlan extends LooseRow {
  readonly context: TableContext;
  readonly wavelength: number;
  readonly values: readonly ValueColumn[];
  /** Columns that tell one sample from another. */
  readonly keys: readonly number[];
  /** Columns that say something of the sample. */
  readonly others: readonly number[];
}

/** Columns that tell one sample, or one way of reading it, from another. */
const KEYS = ['name', 'replicate', 'condition', 'kind'];

/** Reads a table with one row per sample and wavelength. Its samples are gathered, and then read as rows of wide tables. */
export function createLongReader({ headingRow }: Layout, file: FileContext): LayoutReader {
  let loose: LooseRow[] = [];
  const samples = new Map<string, Sample>();
  const readers = new Map<string, RowReader>();
  const style: NumberStyle = {};
  let plan: LongPlan | undefined;
  let received = 0;

  const finish = () => {
    if (plan) for (const sample of samples.values()) readSample(sample, plan, readers, file);
    samples.clear();
  };

  return {
    row(cells, line) {
      if (!plan) {
        if (received++ === headingRow) {
          plan = planLong(cells, line, readLooseRows(loose, NO_CONTEXT, file.notes), file);
          loose = [];
        } else if (!isBlank(cells)) loose.push({ cells, line });
        return;
      }
      if (isBlank(cells) || isComment(cells, plan.cells.length)) return;
      if (cells.some(isWavelengthHeading) && cells.length >= plan.cells.length) {
        finish();
        plan = planLong(cells, line, readLooseRows(loose, { ...plan.context, name: undefined }, file.notes), file);
        loose = [];
        return;
      }
      // a closing remark has no number where wavelengths stand
      if (cells.length < plan.cells.length && !looksNumeric(cells[plan.wavelength] ?? '')) {
        loose.push({ cells, line });
        return;
      }
      addReading(toWidth(cells, plan.cells.length, line), line, plan, samples, style);
    },
    end() {
      finish();
      noteClosing(loose, plan?.context ?? NO_CONTEXT, file);
    },
    tables: () => [...readers.values()].flatMap((reader) => reader.tables()),
  };
}

function planLong(cells: readonly string[], line: number, context: TableContext, { options }: FileContext): LongPlan {
  const wavelength = cells.findIndex(isWavelengthHeading);
  const roles = cells.map((cell) => columnRole(cell).kind);
  const free = cells.map((_, i) => i).filter((i) => i !== wavelength && !KEYS.includes(roles[i]));
  const found = free.flatMap((index) => {
    const heading = parseValueHeading(cells[index]);
    return heading ? [{ index, heading }] : [];
  });
  const values = found.length > 0 ? found : [{ index: free.at(-1) ?? 0, heading: undefined }];
  const quantityOf = ({ heading }: ValueColumn) => heading?.quantity ?? context.quantity?.quantity;
  const read = values.filter((value) => quantityTaken(quantityOf(value), options.quantity) !== undefined);
  if (read.length === 0) {
    const [first] = values;
    const place = first.heading?.quantity
      ? cellPlace(line, first.index + 1)
      : (context.quantity?.place ?? cellPlace(line, 1));
    throw unsupportedQuantity(place, cells[first.index].trim(), quantityOf(first));
  }
  const others = cells.map((_, i) => i).filter((i) => i !== wavelength && !values.some(({ index }) => index === i));
  const keys = others.filter((i) => KEYS.includes(roles[i]));
  return { cells, line, context, wavelength, values: read, others, keys: keys.length > 0 ? keys : others };
}

function addReading(
  cells: readonly string[],
  line: number,
  plan: LongPlan,
  samples: Map<string, Sample>,
  style: NumberStyle,
): void {
  const label = cells[plan.wavelength].trim();
  const wavelength = parseFileNumber(label, style) ?? parseWavelengthLabel(label)?.wavelength;
  if (wavelength === undefined) throw notANumber(label, style, cellPlace(line, plan.wavelength + 1));
  if (!isWavelength(wavelength)) {
    throw new TintladderError('grid-invalid', {
      path: cellPlace(line, plan.wavelength + 1),
      received: label,
      expected: 'a wavelength in nm',
    });
  }
  const key = JSON.stringify(plan.keys.map((index) => cells[index]));
  let sample = samples.get(key);
  if (!sample) {
    sample = { first: { cells, line }, readings: [] };
    samples.set(key, sample);
  }
  sample.readings.push({ wavelength, label, cells, line });
}

function decimalsOf(text: string): number {
  return /[.,](\d+)/.exec(text)?.[1].length ?? 0;
}

function readSample(
  { first, readings }: Sample,
  plan: LongPlan,
  readers: Map<string, RowReader>,
  file: FileContext,
): void {
  const ordered = inOrder(readings, plan, file);
  const { others, values, line, context } = plan;
  const count = ordered.length;
  // the cells of a sample: what is said of it, then its readings, one value column after the other
  const placeOf = (index: number, ofHeading: boolean) => {
    if (index < others.length) return cellPlace(ofHeading ? line : first.line, others[index] + 1);
    const reading = ordered[(index - others.length) % count];
    const { index: column } = values[Math.floor((index - others.length) / count)];
    return cellPlace(reading.line, (ofHeading ? plan.wavelength : column) + 1);
  };
  const cells = [
    ...others.map((index) => first.cells[index]),
    ...values.flatMap(({ index }) => ordered.map((reading) => reading.cells[index])),
  ];
  const key = [line, ...ordered.map(({ wavelength }) => wavelength)].join(' ');
  let reader = readers.get(key);
  if (!reader) {
    const columns: PlannedColumn[] = [
      ...columnsOf(others.map((index) => plan.cells[index])),
      ...values.flatMap(({ heading }) => ordered.map((reading) => bandOf(reading, heading))),
    ];
    const place = (index: number) => placeOf(index, true);
    reader = createRowReader(
      planTable({ columns, line, placeOf: place, rows: [cells], context }, file.options, file.notes),
      file,
    );
    readers.set(key, reader);
  }
  reader.read(cells, first.line, (index) => placeOf(index, false));
}

function bandOf({ wavelength, label }: LongReading, heading: ValueHeading | undefined): PlannedColumn {
  return {
    role: {
      kind: 'wavelength',
      label: {
        wavelength,
        decimals: decimalsOf(label),
        ...(heading?.scale ? { scale: heading.scale } : {}),
        ...(heading?.quantity ? { quantity: heading.quantity } : {}),
        ...(heading ? { stated: heading.stated } : {}),
      },
    },
    label,
  };
}

function inOrder(readings: readonly LongReading[], plan: LongPlan, file: FileContext): readonly LongReading[] {
  const sorted = [...readings].sort((a, b) => a.wavelength - b.wavelength);
  const descending = readings.every((reading, i) => i === 0 || reading.wavelength < readings[i - 1].wavelength);
  if (descending || sorted.every((reading, i) => reading === readings[i])) {
    if (!descending) refuseRepeated(sorted, plan);
    return readings;
  }
  refuseRepeated(sorted, plan);
  const message = 'The wavelengths of a sample are not in order; they were put in ascending order.';
  file.notes.add('wavelengths-reordered', message, cellPlace(readings[0].line, plan.wavelength + 1));
  return sorted;
}

function refuseRepeated(sorted: readonly LongReading[], { wavelength: column }: LongPlan): void {
  for (let i = 1; i < sorted.length; i++) {
    if (sorted[i].wavelength !== sorted[i - 1].wavelength) continue;
    throw new TintladderError('wavelength-repeated', {
      path: cellPlace(Math.max(sorted[i].line, sorted[i - 1].line), column + 1),
      received: sorted[i].wavelength,
      expected: 'each wavelength once per sample',
      hint: 'Give repeats of a sample a column headed replicate.',
    });
  }
}
