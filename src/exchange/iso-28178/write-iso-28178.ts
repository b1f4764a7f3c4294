import { describeViewing } from '../../colorimetry/index.js';
import { sameViewing } from '../../colorimetry/internal.js';
import { isComputedName } from '../measurement/computed-names.js';
import type { Measurement } from '../measurement/measurement.js';
import {
  type ColourHead,
  coordinatesOf,
  type MeasurementBlock,
  toBlocks,
  wavelengthTexts,
} from '../measurement/measurement-blocks.js';
import { type StatementPart, statementsOf } from '../measurement/statements.js';

const STANDARD_FIELD = /^(SAMPLE_|STRING$|CMYK_|RGB_|D_|XYY_|LAB_|XYZ_|STDEV_|MEAN_|CHI_)/;

/**
 * Writes measurements as ISO 28178 keyword text: `SPECTRAL_NM`, `SPECTRAL_DEC` pairs, one table for each run of measurements that share one. What is
 * not stated is not written.
 *
 * @see ISO 28178
 */
export function writeIso28178(measurements: readonly Measurement[]): string {
  const blocks = toBlocks(measurements);
  const statements = statementsOf(blocks, mainViewing);
  const tables = blocks.map((block, i) => writeBlock(block, statements[i]));
  return `ISO28178\nORIGINATOR "tintladder"\n${tables.join('')}`;
}

function mainViewing({ colours, conditions }: MeasurementBlock) {
  return colours.length > 0 ? colours[0].viewing : conditions.viewing;
}

/** Lines that state a part; keywords that the standard does not have are announced. */
const LINES: Readonly<Record<StatementPart, (value: string) => string[]>> = {
  illuminant: (value) => [`WEIGHTING_FUNCTION ${quote(`ILLUMINANT, ${value}`)}`],
  observer: (value) => [`WEIGHTING_FUNCTION ${quote(`OBSERVER, ${value}`)}`],
  geometry: (value) => [`MEASUREMENT_GEOMETRY ${quote(value)}`],
  instrument: (value) => [`INSTRUMENTATION ${quote(value)}`],
  specular: (value) => own('SPECULAR_COMPONENT', value),
  session: (value) => own('MEASUREMENT_SESSION', value),
  bandPass: (value) => own('BAND_PASS_CORRECTION', value),
};

function own(keyword: string, value: string): string[] {
  return [`KEYWORD ${quote(keyword)}`, `${keyword} ${quote(value)}`];
}

function writeBlock(block: MeasurementBlock, statements: readonly (readonly [StatementPart, string])[]): string {
  const { measurements, grid, colours, hasReplicate, labels } = block;
  const wavelengths = grid ? wavelengthTexts(grid) : [];
  const coordinates = colours.flatMap((colour) => coordinateFields(colour, block));
  const fields = [
    'SAMPLE_NAME',
    ...(hasReplicate ? ['REPLICATE'] : []),
    ...coordinates.map(({ field }) => field),
    ...wavelengths.flatMap(() => ['SPECTRAL_NM', 'SPECTRAL_DEC']),
    ...labels.map(quote),
  ];
  const announced = [
    ...(hasReplicate ? ['REPLICATE'] : []),
    ...coordinates.flatMap(({ label, standard }) => (standard ? [] : [label])),
    ...labels.filter((label) => !STANDARD_FIELD.test(label)),
  ];
  const computed = measurements.some(({ name, replicate }) => isComputedName(name) || isComputedName(replicate ?? ''));
  const rows = measurements.map((measurement) =>
    [
      quote(measurement.name),
      ...(hasReplicate ? [quote(measurement.replicate ?? '')] : []),
      ...coordinatesOf(measurement).map(String),
      ...Array.from(measurement.spectrum?.values ?? [], (value, i) => `${wavelengths[i]} ${value}`),
      ...labels.map((label) => quote(measurement.fields[label])),
    ].join(' '),
  );
  return [
    ...statements.flatMap(([part, value]) => LINES[part](value)),
    ...(computed ? own('ROWS', 'samples') : []),
    ...announced.map((label) => `KEYWORD ${quote(label)}`),
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

/** Fields of a colour; one under another viewing than the table's says so. */
function coordinateFields({ space, viewing }: ColourHead, block: MeasurementBlock) {
  const names = space === 'lab' ? ['LAB_L', 'LAB_A', 'LAB_B'] : ['XYZ_X', 'XYZ_Y', 'XYZ_Z'];
  const main = mainViewing(block);
  const standard = viewing === undefined || (main !== undefined && sameViewing(viewing, main));
  return names.map((name) => {
    const label = standard || !viewing ? name : `${name} (${describeViewing(viewing)})`;
    return { label, field: standard ? name : quote(label), standard };
  });
}

function quote(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}
