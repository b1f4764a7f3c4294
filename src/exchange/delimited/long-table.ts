import { TintladderError } from '../../core/index.js';
import type { ReaderOptions } from '../measurement/format-contract.js';
import { unsupportedQuantity } from '../quantity/unsupported-quantity.js';
import { columnRole } from '../table/column-role.js';
import type { FileContext } from '../table/file-context.js';
import { createRowReader, type RowReader } from '../table/row-reader.js';
import { columnsOf, type PlannedColumn, planTable } from '../table/table-plan.js';
import { cellPlace } from '../text/cell-place.js';
import { type DecimalMark, notANumber, parseFileNumber } from '../text/file-number.js';
import { isWavelength, parseWavelengthLabel } from '../wavelength/wavelength-label.js';
import { isNameHeading, isWavelengthHeading, parseQuantity } from './headings.js';
import { type LooseRow, type Preamble, readPreamble } from './preamble.js';
import { isBlank, isComment, type LayoutReader, noteLoose, toWidth } from './wide-table.js';

interface LongReading {
  readonly wavelength: number;
  readonly decimals: number;
  readonly label: string;
  readonly value: string;
  readonly line: number;
}

interface Sample {
  readonly first: LooseRow;
  readonly readings: LongReading[];
}

interface LongPlan extends LooseRow, Preamble {
  readonly wavelength: number;
  readonly value: number;
  /** Columns that tell one sample from another. */
  readonly keys: readonly number[];
  /** Columns that say something of the sample. */
  readonly others: readonly number[];
}

/** Reads a table with one row per sample and wavelength. Its samples are gathered, and then read as rows of wide tables. */
export function createLongReader(headingRow: number, file: FileContext, options: ReaderOptions): LayoutReader {
  const loose: LooseRow[] = [];
  const samples = new Map<string, Sample>();
  const readers = new Map<string, RowReader>();
  const wavelengthMark: DecimalMark = {};
  let plan: LongPlan | undefined;
  let received = 0;

  return {
    row(cells, line) {
      if (!plan) {
        if (received++ === headingRow) plan = planLong(cells, line, loose, file);
        else if (!isBlank(cells)) loose.push({ cells, line });
        return;
      }
      if (isBlank(cells) || isComment(cells, plan)) return;
      addReading(toWidth(cells, plan.cells.length, line), line, plan, samples, wavelengthMark);
    },
    end() {
      noteLoose(loose, file);
      if (plan) for (const sample of samples.values()) readSample(sample, plan, readers, file, options);
    },
    tables: () => [...readers.values()].map((reader) => reader.table()),
  };
}

function planLong(cells: readonly string[], line: number, loose: readonly LooseRow[], file: FileContext): LongPlan {
  const preamble = readPreamble(loose);
  const wavelength = cells.findIndex(isWavelengthHeading);
  const name = cells.findIndex(isNameHeading);
  const free = cells.map((_, i) => i).filter((i) => i !== wavelength && i !== name);
  const value = free.find((i) => parseQuantity(cells[i]) !== undefined) ?? free.at(-1) ?? 0;
  const quantity = parseQuantity(cells[value]);
  if (quantity?.unsupported) throw unsupportedQuantity(cellPlace(line, value + 1), quantity.unsupported);
  if (quantity?.scale) file.scale.state(quantity.scale, cellPlace(line, value + 1));
  if (preamble.unsupported)
    throw unsupportedQuantity(cellPlace(preamble.unsupported.line, 1), preamble.unsupported.quantity);
  if (preamble.scale) file.scale.state(preamble.scale.value, cellPlace(preamble.scale.line, 1));
  const others = cells.map((_, i) => i).filter((i) => i !== wavelength && i !== value);
  const named = others.filter((i) => ['name', 'replicate'].includes(columnRole(cells[i]).kind));
  return { cells, line, ...preamble, wavelength, value, others, keys: named.length > 0 ? named : others };
}

function addReading(
  cells: readonly string[],
  line: number,
  plan: LongPlan,
  samples: Map<string, Sample>,
  mark: DecimalMark,
): void {
  const label = cells[plan.wavelength].trim();
  const wavelength = parseFileNumber(label, mark) ?? parseWavelengthLabel(label)?.wavelength;
  if (wavelength === undefined) throw notANumber(label, mark, cellPlace(line, plan.wavelength + 1));
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
  sample.readings.push({ wavelength, decimals: decimalsOf(label), label, value: cells[plan.value], line });
}

function decimalsOf(text: string): number {
  return /[.,](\d+)/.exec(text)?.[1].length ?? 0;
}

function readSample(
  { first, readings }: Sample,
  plan: LongPlan,
  readers: Map<string, RowReader>,
  file: FileContext,
  options: ReaderOptions,
): void {
  const sorted = [...readings].sort((a, b) => a.wavelength - b.wavelength);
  const descending = readings.every((reading, i) => i === 0 || reading.wavelength < readings[i - 1].wavelength);
  if (!descending && sorted.some((reading, i) => reading !== readings[i])) {
    refuseRepeated(sorted, plan);
    const message = 'The wavelengths of a sample are not in order; they were put in ascending order.';
    file.notes.add('wavelengths-reordered', message, cellPlace(first.line, plan.wavelength + 1));
  }
  const ordered = descending ? readings : sorted;
  const { others } = plan;
  const path = (index: number, line: number) =>
    index < others.length
      ? cellPlace(line, others[index] + 1)
      : cellPlace(ordered[index - others.length].line, plan.value + 1);
  const key = ordered.map(({ wavelength }) => wavelength).join(' ');
  let reader = readers.get(key);
  if (!reader) {
    const { line, stated, common } = plan;
    const columns: PlannedColumn[] = [
      ...columnsOf(others.map((index) => plan.cells[index])),
      ...ordered.map(({ wavelength, decimals, label }) => ({
        role: { kind: 'wavelength' as const, label: { wavelength, decimals } },
        label,
      })),
    ];
    const firstRow = [...others.map((index) => first.cells[index]), ...ordered.map(({ value }) => value)];
    const placeOf = (index: number) =>
      index < others.length
        ? cellPlace(line, others[index] + 1)
        : cellPlace(ordered[index - others.length].line, plan.wavelength + 1);
    reader = createRowReader(
      planTable({ columns, line, placeOf, firstRow, stated, common }, options.outsideRange, file.notes),
      file,
    );
    readers.set(key, reader);
  }
  const cells = [...others.map((index) => first.cells[index]), ...ordered.map(({ value }) => value)];
  reader.read(cells, first.line, (index) => path(index, first.line));
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
