import Papa from 'papaparse';
import { describeViewing } from '../../colorimetry/index.js';
import { isComputedName } from '../measurement/computed-names.js';
import type { Measurement } from '../measurement/measurement.js';
import {
  coloursOf,
  coordinatesOf,
  type MeasurementBlock,
  toBlocks,
  wavelengthTexts,
} from '../measurement/measurement-blocks.js';
import { type StatementPart, statementsOf } from '../measurement/statements.js';

const KEYS: Readonly<Record<StatementPart, string>> = {
  illuminant: 'Illuminant',
  observer: 'Observer',
  specular: 'Specular',
  geometry: 'Geometry',
  instrument: 'Instrument',
  session: 'Session',
  bandPass: 'Band-pass',
};

/** Writes measurements as comma-separated text, one column per wavelength; conditions stand in lines before the table. */
export function writeDelimited(measurements: readonly Measurement[]): string {
  const blocks = toBlocks(measurements);
  const statements = statementsOf(blocks, ({ colours, conditions }) =>
    colours.length > 0 ? undefined : conditions.viewing,
  );
  let said = false;
  return blocks
    .map((block, i) => {
      const lines = [
        ...statements[i].map(([part, value]) => [KEYS[part], value]),
        ...(block.grid && !said ? [['Reflectance', '0-1']] : []),
        ...(isNamedAsComputed(block) ? [['Rows', 'samples']] : []),
      ];
      said ||= block.grid !== undefined;
      return `${Papa.unparse([...lines, headingOf(block), ...rowsOf(block)], { newline: '\n' })}\n`;
    })
    .join('\n');
}

function isNamedAsComputed({ measurements }: MeasurementBlock): boolean {
  return measurements.some(({ name, replicate }) => isComputedName(name) || isComputedName(replicate ?? ''));
}

/** X, Y, Z up to this might be taken for those of a white of 1. */
const SMALL = 2;

function headingOf({ measurements, grid, colours, hasReplicate, labels }: MeasurementBlock): string[] {
  const small = measurements.every((measurement) =>
    coloursOf(measurement).every(({ space, values }) => space === 'lab' || Math.max(...values) < SMALL),
  );
  return [
    'Sample name',
    ...(hasReplicate ? ['Replicate'] : []),
    ...colours.flatMap(({ space, viewing }) => {
      const under = viewing ? ` (${describeViewing(viewing)})` : '';
      return space === 'lab'
        ? ['L*', 'a*', 'b*'].map((coordinate) => coordinate + under)
        : ['X', 'Y', 'Z'].map((coordinate) => `${coordinate}${under}${small ? ' (0-100)' : ''}`);
    }),
    ...(grid ? wavelengthTexts(grid).map((wavelength) => `${wavelength} nm`) : []),
    ...labels,
  ];
}

function rowsOf({ measurements, hasReplicate, labels }: MeasurementBlock): string[][] {
  return measurements.map((measurement) => [
    measurement.name,
    ...(hasReplicate ? [measurement.replicate ?? ''] : []),
    ...coordinatesOf(measurement).map(String),
    ...Array.from(measurement.spectrum?.values ?? [], String),
    ...labels.map((label) => measurement.fields[label]),
  ]);
}
