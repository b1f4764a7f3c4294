import { TintladderError } from '../../core/index.js';
import type { Measurement, MeasurementTable, ReflectanceScale } from '../measurement/measurement.js';
import { createScaleDecision, type ScaleDecision } from '../quantity/scale-decision.js';
import { cellPlace } from '../text/cell-place.js';
import type { DecimalMark } from '../text/file-number.js';
import type { Notes } from '../text/notes.js';

/** What all tables of one file share while it is read. */
export interface FileContext {
  readonly notes: Notes;
  readonly scale: ScaleDecision;
  readonly mark: DecimalMark;
  /** Takes each reading as soon as its scale is known, in the order of the file. */
  readonly emit: (measurement: Measurement) => void;
  /** Readings of the file so far; numbers those without a name. */
  count: number;
  /** Readings that wait for the scale to be settled. */
  readonly waiting: (() => Measurement)[];
}

/** What the readers of one file share: its scale, its notes, and where measurements go. */
export function createFileContext(
  scale: ReflectanceScale | undefined,
  notes: Notes,
  emit: (measurement: Measurement) => void,
): FileContext {
  return { notes, scale: createScaleDecision(scale, notes), mark: {}, emit, count: 0, waiting: [] };
}

/** Hands on the readings that waited for the scale. */
export function releaseWaiting(file: FileContext): void {
  for (const make of file.waiting) file.emit(make());
  file.waiting.length = 0;
}

/**
 * Ends a file: settles its scale, hands on what waited, and notes what only the whole shows.
 *
 * @param tables - describes the tables, once the scale is settled
 * @throws TintladderError `empty-file` for a file without a reading; `scale-mixed`, `reflectance-out-of-range`
 */
export function settleFile(file: FileContext, tables: () => readonly MeasurementTable[]): readonly MeasurementTable[] {
  file.scale.settle();
  releaseWaiting(file);
  const described = tables();
  if (file.count === 0) {
    const path = cellPlace(described[0]?.line ?? 1, 1);
    throw new TintladderError('empty-file', { path, received: '', expected: 'a reading' });
  }
  if (file.mark.value === ',') file.notes.add('decimal-comma', 'The numbers were read with a decimal comma.');
  const grids = new Set(described.flatMap(({ grid }) => (grid ? [JSON.stringify(grid)] : [])));
  if (grids.size > 1) {
    const message = `The file holds spectra on ${grids.size} wavelength grids; each was kept on its own.`;
    file.notes.add('several-grids', message);
  }
  return described;
}
