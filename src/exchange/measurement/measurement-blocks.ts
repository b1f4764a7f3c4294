import {
  type Conditions,
  describeViewing,
  type Grid,
  gridOf,
  type MeasuredColour,
  type Viewing,
} from '../../colorimetry/index.js';
import { TintladderError } from '../../core/index.js';
import type { Measurement } from './measurement.js';

/** A colour that all measurements of a block have: its coordinates and its viewing. */
export interface ColourHead {
  readonly space: 'lab' | 'xyz';
  readonly viewing?: Viewing | undefined;
}

/** Measurements that can stand in one table: the same grid, kinds of colour, conditions and fields. */
export interface MeasurementBlock {
  readonly measurements: readonly Measurement[];
  readonly grid?: Grid;
  readonly colours: readonly ColourHead[];
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
    const [first] = measurements;
    const { spectrum, replicate, conditions, fields } = first;
    return {
      measurements,
      ...(spectrum ? { grid: gridOf(spectrum) } : {}),
      colours: coloursOf(first).map(({ space, viewing }) => ({ space, viewing })),
      hasReplicate: replicate !== undefined,
      conditions,
      labels: Object.keys(fields),
    };
  });
}

function keyOf(measurement: Measurement, path: string): string {
  const { spectrum, replicate, conditions, fields } = measurement;
  const { viewing, ...circumstances } = conditions;
  const colours = coloursOf(measurement);
  for (const one of [viewing, ...colours.map((colour) => colour.viewing)]) {
    if (one && typeof one.illuminant !== 'string') {
      throw new TintladderError('unknown-illuminant', {
        path: `${path}.conditions.viewing.illuminant`,
        received: one.illuminant.name,
        expected: 'an illuminant with a name that a file can give',
      });
    }
  }
  return JSON.stringify([
    spectrum && gridOf(spectrum),
    colours.map((colour) => [colour.space, colour.viewing && describeViewing(colour.viewing)]),
    replicate !== undefined,
    viewing && describeViewing(viewing),
    Object.entries(circumstances).sort(),
    Object.keys(fields),
  ]);
}

interface FlatColour extends ColourHead {
  readonly values: readonly [number, number, number];
}

/** All colours of a measurement one by one. */
export function coloursOf({ lab, xyz, colours, conditions: { viewing } }: Measurement): FlatColour[] {
  const all: readonly MeasuredColour[] = colours ?? [
    ...(lab ? [{ lab, ...(viewing ? { viewing } : {}) }] : []),
    ...(xyz ? [{ xyz, ...(viewing ? { viewing } : {}) }] : []),
  ];
  return all.flatMap((colour): FlatColour[] => [
    ...(colour.lab
      ? [
          {
            space: 'lab' as const,
            viewing: colour.viewing,
            values: [colour.lab.L, colour.lab.a, colour.lab.b] as const,
          },
        ]
      : []),
    ...(colour.xyz
      ? [
          {
            space: 'xyz' as const,
            viewing: colour.viewing,
            values: [colour.xyz.X, colour.xyz.Y, colour.xyz.Z] as const,
          },
        ]
      : []),
  ]);
}

/** Wavelengths of a grid as text, with no more digits than it takes to read the same grid again. */
export function wavelengthTexts({ start, step, count }: Grid): string[] {
  return Array.from({ length: count }, (_, i) => String(Math.round((start + i * step) * 1e9) / 1e9));
}

/** The coordinates of a measurement's colours in the order of its block's columns. */
export function coordinatesOf(measurement: Measurement): number[] {
  return coloursOf(measurement).flatMap(({ values }) => [...values]);
}
