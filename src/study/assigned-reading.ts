import type { Spectrum } from '../colorimetry/index.js';
import type { SeriesPlace } from './series-kinds.js';
import type { ReadingPlace, UnitLabels } from './study.js';

/** A reading with its place in the study. */
export interface AssignedReading
  extends Required<Pick<ReadingPlace, 'role' | 'area' | 'storage'>>,
    SeriesPlace,
    UnitLabels {
  readonly name: string;
  readonly spectrum: Spectrum;
  /** Line of the file at which it starts. */
  readonly line?: number;
  readonly package?: string;
  readonly paint: string;
}

/** A reading as a fault names it, with its line where two may have one name. */
export function placeText({ name, line }: Pick<AssignedReading, 'name' | 'line'>): string {
  return line === undefined ? name : `${name} (line ${line})`;
}
