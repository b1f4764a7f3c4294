import type { Measurement } from '../measurement/measurement.js';
import { type MeasurementBlock, readingsOf, toBlocks, wavelengthTexts } from '../measurement/measurement-blocks.js';

const STANDARD_FIELD = /^(SAMPLE_|STRING$|CMYK_|RGB_|D_|XYY_|LAB_|XYZ_|STDEV_|MEAN_|CHI_)/;

/**
 * Writes measurements as ISO 28178 keyword text: `SPECTRAL_NM`, `SPECTRAL_DEC` pairs, a table a block.
 *
 * @see ISO 28178
 */
export function writeIso28178(measurements: readonly Measurement[]): string {
  return `ISO28178\nORIGINATOR "tintladder"\n${toBlocks(measurements).map(writeBlock).join('')}`;
}

function writeBlock(block: MeasurementBlock): string {
  const { measurements, grid, hasLab, hasXyz, hasReplicate, labels, conditions } = block;
  const wavelengths = grid ? wavelengthTexts(grid) : [];
  const fields = [
    'SAMPLE_NAME',
    ...(hasReplicate ? ['REPLICATE'] : []),
    ...(hasLab ? ['LAB_L', 'LAB_A', 'LAB_B'] : []),
    ...(hasXyz ? ['XYZ_X', 'XYZ_Y', 'XYZ_Z'] : []),
    ...wavelengths.flatMap(() => ['SPECTRAL_NM', 'SPECTRAL_DEC']),
    ...labels.map(quote),
  ];
  const own = [...(hasReplicate ? ['REPLICATE'] : []), ...labels.filter((label) => !STANDARD_FIELD.test(label))];
  const { viewing } = conditions;
  const illuminant = viewing && (typeof viewing.illuminant === 'string' ? viewing.illuminant : viewing.illuminant.name);
  const coordinates = (hasLab ? 3 : 0) + (hasXyz ? 3 : 0);
  const rows = measurements.map((measurement) => {
    const readings = readingsOf(measurement).map(String);
    return [
      quote(measurement.name),
      ...(hasReplicate ? [quote(measurement.replicate ?? '')] : []),
      ...readings.slice(0, coordinates),
      ...readings.slice(coordinates).flatMap((reading, i) => [wavelengths[i], reading]),
      ...labels.map((label) => quote(measurement.fields[label])),
    ].join(' ');
  });
  return [
    // every table states its conditions anew; an empty value ends what an earlier table stated
    `WEIGHTING_FUNCTION ${quote(`ILLUMINANT, ${illuminant ?? ''}`)}`,
    `WEIGHTING_FUNCTION ${quote(`OBSERVER, ${viewing ? `${viewing.observer} degree` : ''}`)}`,
    `MEASUREMENT_GEOMETRY ${quote(conditions.geometry ?? '')}`,
    `INSTRUMENTATION ${quote(conditions.instrument ?? '')}`,
    'KEYWORD "SPECULAR_COMPONENT"',
    `SPECULAR_COMPONENT ${quote(conditions.specular ?? '')}`,
    ...own.map((label) => `KEYWORD ${quote(label)}`),
    `NUMBER_OF_FIELDS ${fields.length}`,
    'BEGIN_DATA_FORMAT',
    fields.join(' '),
    'END_DATA_FORMAT',
    `NUMBER_OF_SETS ${rows.length}`,
    'BEGIN_DATA',
    ...rows,
    'END_DATA',
    '',
  ].join('\n');
}

function quote(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}
