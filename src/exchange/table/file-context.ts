import { TintladderError } from '../../core/index.js';
import type { Emit, ReaderOptions } from '../measurement/format-contract.js';
import type { Measurement, MeasurementTable } from '../measurement/measurement.js';
import { createScaleDecision, type ScaleDecision } from '../quantity/scale-decision.js';
import { cellPlace } from '../text/cell-place.js';
import type { NumberStyle } from '../text/file-number.js';
import type { Notes } from '../text/notes.js';
import { createTristimulusScale, type TristimulusScale } from './tristimulus-scale.js';

/** What all tables of one file share while it is read. */
export interface FileContext {
  readonly options: ReaderOptions;
  readonly notes: Notes;
  /** For spectra that state no scale. */
  readonly scale: ScaleDecision;
  readonly tristimulus: TristimulusScale;
  readonly style: NumberStyle;
  /** Takes each reading as soon as its scale is known, in the order of the file. */
  readonly emit: Emit;
  /** Readings of the file so far; numbers those without a name. */
  count: number;
  /** Rows that are no readings: computed from others, of another quantity, or excluded. */
  leftOut: number;
  /** Readings that wait for a scale to be settled. */
  readonly waiting: (() => Measurement)[];
}

/** What the readers of one file share: its scales, its notes, and where measurements go. */
export function createFileContext(options: ReaderOptions, notes: Notes, emit: Emit): FileContext {
  return {
    options,
    notes,
    scale: createScaleDecision(notes),
    tristimulus: createTristimulusScale(notes),
    style: {},
    emit,
    count: 0,
    leftOut: 0,
    waiting: [],
  };
}

/** Hands on the readings that waited for a scale. */
export function releaseWaiting(file: FileContext): void {
  for (const make of file.waiting) file.emit(make());
  file.waiting.length = 0;
}

/**
 * Ends a file: settles its scales, hands on what waited, and notes what only the whole shows.
 *
 * @param tables - describes the tables, once the scale is settled
 * @throws TintladderError `empty-file` for a file without a reading; `reflectance-out-of-range`
 */
export function settleFile(file: FileContext, tables: () => readonly MeasurementTable[]): readonly MeasurementTable[] {
  file.scale.settle();
  file.tristimulus.settle();
  releaseWaiting(file);
  const described = tables().filter(({ count }) => count > 0);
  if (file.count === 0) {
    const path = cellPlace(tables()[0]?.line ?? 1, 1);
    throw new TintladderError('empty-file', { path, received: file.leftOut, expected: 'a reading' });
  }
  if (file.style.decimalMark === ',') {
    file.notes.add('decimal-comma', 'The numbers were read with a decimal comma.');
  }
  const grids = new Set(described.flatMap(({ grid }) => (grid ? [JSON.stringify(grid)] : [])));
  if (grids.size > 1) {
    const message = `The file holds spectra on ${grids.size} wavelength grids; each was kept on its own.`;
    file.notes.add('several-grids', message);
  }
  return described;
}
