import { type Conditions, describeViewing, type Grid, gridOf } from '../../colorimetry/index.js';
import { TintladderError } from '../../core/index.js';
import type { Measurement } from './measurement.js';

/** Measurements that can stand in one table: the same grid, kinds of colour, conditions and fields. */
export interface MeasurementBlock {
  readonly measurements: readonly Measurement[];
  readonly grid?: Grid;
  readonly hasLab: boolean;
  readonly hasXyz: boolean;
  readonly hasReplicate: boolean;
  readonly conditions: Conditions;
  readonly labels: readonly string[];
}

/**
 * Cuts measurements into runs that share a table, in their order.
 *
 * @throws TintladderError `empty` for no measurement; `unknown-illuminant` for a caller's own illuminant, which a file can't name
 */
export function toBlocks(measurements: readonly Measurement[]): MeasurementBlock[] {
  if (measurements.length === 0) {
    throw new TintladderError('empty', {
      path: 'measurements',
      received: [],
      expected: 'at least one measurement',
    });
  }
  const blocks: { key: string; measurements: Measurement[] }[] = [];
  measurements.forEach((measurement, i) => {
    const key = keyOf(measurement, `measurements[${i}]`);
    const last = blocks.at(-1);
    if (last && last.key === key) last.measurements.push(measurement);
    else blocks.push({ key, measurements: [measurement] });
  });
  return blocks.map(({ measurements }) => {
    const [{ spectrum, lab, xyz, replicate, conditions, fields }] = measurements;
    return {
      measurements,
      ...(spectrum ? { grid: gridOf(spectrum) } : {}),
      hasLab: lab !== undefined,
      hasXyz: xyz !== undefined,
      hasReplicate: replicate !== undefined,
      conditions,
      labels: Object.keys(fields),
    };
  });
}

function keyOf({ spectrum, lab, xyz, replicate, conditions, fields }: Measurement, path: string): string {
  const { viewing, specular, geometry, instrument } = conditions;
  if (viewing && typeof viewing.illuminant !== 'string') {
    throw new TintladderError('unknown-illuminant', {
      path: `${path}.conditions.viewing.illuminant`,
      received: viewing.illuminant.name,
      expected: 'an illuminant with a name that a file can give',
    });
  }
  return JSON.stringify([
    spectrum && gridOf(spectrum),
    lab !== undefined,
    xyz !== undefined,
    replicate !== undefined,
    viewing && describeViewing(viewing),
    specular,
    geometry,
    instrument,
    Object.keys(fields),
  ]);
}

/** Wavelengths of a grid as text, with no more digits than it takes to read the same grid again. */
export function wavelengthTexts({ start, step, count }: Grid): string[] {
  return Array.from({ length: count }, (_, i) => String(Math.round((start + i * step) * 1e9) / 1e9));
}

/** The readings of a measurement in the order of a block's columns; numbers in full, so that they come back the same. */
export function readingsOf({ spectrum, lab, xyz }: Measurement): number[] {
  return [...(lab ? [lab.L, lab.a, lab.b] : []), ...(xyz ? [xyz.X, xyz.Y, xyz.Z] : []), ...(spectrum?.values ?? [])];
}
