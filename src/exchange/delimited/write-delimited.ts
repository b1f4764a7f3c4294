import Papa from 'papaparse';
import { describeViewing } from '../../colorimetry/index.js';
import type { Measurement } from '../measurement/measurement.js';
import { type MeasurementBlock, readingsOf, toBlocks, wavelengthTexts } from '../measurement/measurement-blocks.js';

/** Writes measurements as comma-separated text, one column per wavelength; conditions stand in lines before the table. */
export function writeDelimited(measurements: readonly Measurement[]): string {
  return toBlocks(measurements).map(writeBlock).join('\n');
}

function writeBlock(block: MeasurementBlock): string {
  const { measurements, grid, hasLab, hasXyz, hasReplicate, labels, conditions } = block;
  const suffix = conditions.viewing ? ` (${describeViewing(conditions.viewing)})` : '';
  const heading = [
    'Sample name',
    ...(hasReplicate ? ['Replicate'] : []),
    ...(hasLab ? ['L*', 'a*', 'b*'].map((coordinate) => coordinate + suffix) : []),
    ...(hasXyz ? ['X', 'Y', 'Z'].map((coordinate) => coordinate + suffix) : []),
    ...(grid ? wavelengthTexts(grid).map((wavelength) => `${wavelength} nm`) : []),
    ...labels,
  ];
  const rows = measurements.map((measurement) => [
    measurement.name,
    ...(hasReplicate ? [measurement.replicate ?? ''] : []),
    ...readingsOf(measurement).map(String),
    ...labels.map((label) => measurement.fields[label]),
  ]);
  const statements = [
    ...(conditions.specular ? [`Specular: ${conditions.specular}`] : []),
    ...(conditions.geometry ? [`Geometry: ${conditions.geometry}`] : []),
    ...(conditions.instrument ? [`Instrument: ${conditions.instrument}`] : []),
    ...(conditions.viewing && !hasLab && !hasXyz ? viewingStatements(block) : []),
  ];
  const lines = [...statements.map((statement) => [statement]), heading, ...rows];
  return `${Papa.unparse(lines, { newline: '\n' })}\n`;
}

function viewingStatements({ conditions: { viewing } }: MeasurementBlock): string[] {
  if (!viewing) return [];
  const [illuminant, observer] = describeViewing(viewing).split('/');
  return [`Illuminant: ${illuminant}`, `Observer: ${observer}`];
}
