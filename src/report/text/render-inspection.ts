import {
  D65_10,
  describeViewing,
  labFromSpectrum,
  labFromXyz,
  srgbSwatch,
  whitePoint,
} from '../../colorimetry/index.js';
import { TintladderError } from '../../core/index.js';
import { assertFlag, assertOptions, formatCount, formatFixed } from '../../core/internal.js';
import type { Measurement, MeasurementFile } from '../../exchange/index.js';
import { asMeasurement } from '../../exchange/internal.js';
import { assertMeasurementFile } from './assert-measurement-file.js';
import { plainText } from './plain-text.js';
import { textStyle } from './text-style.js';
import { textTable } from './text-table.js';

/** How the text is laid out. */
export interface RenderInspectionOptions {
  /** Whether swatches are shown as coloured blocks beside their hex codes. @default false */
  readonly colour?: boolean | undefined;
  /** Readings listed before the rest is only counted. @default 40 */
  readonly most?: number | undefined;
}

/**
 * What a measurement file holds, as text for a terminal: format, tables with grid and scale, readings with CIELAB and a
 * swatch, and everything that had to be assumed.
 *
 * Spectra are shown under D65 and the 10 degree observer; Lab and XYZ values under the conditions that the file states.
 *
 * @param file - as `readMeasurements` gives it
 * @param options - colour and length
 * @returns lines that end with a line feed
 * @throws TintladderError `wrong-type` for what is no measurement file; `invalid-option`
 * @example renderInspection(readMeasurements('name,400,410\nA,50,60\n')).split('\n')[0] // 'delimited-text, 1 reading'
 */
export function renderInspection(file: MeasurementFile, options: RenderInspectionOptions = {}): string {
  assertMeasurementFile(file);
  assertOptions(options, ['colour', 'most']);
  const { format, tables, measurements, warnings } = file;
  const { colour = false, most = 40 } = options;
  assertFlag(colour, 'options.colour');
  if (typeof most !== 'number' || !(most >= 0)) {
    throw new TintladderError('invalid-option', { path: 'options.most', received: most, expected: 'a number from 0' });
  }
  const style = textStyle(colour);
  const shown = measurements.slice(0, most).map((one, i) => asMeasurement(one, `file.measurements[${i}]`));
  const rows = shown.map((measurement) => [
    plainText(measurement.name),
    String(measurement.line ?? ''),
    ...colourCells(measurement, colour),
  ]);
  const lines = [
    style.bold(`${format}, ${formatCount(measurements.length, 'reading')}`),
    ...tables.map(({ line, count, grid, scale, scaleFrom }) => {
      const spectra = grid
        ? `, ${grid.start} to ${grid.start + (grid.count - 1) * grid.step} nm every ${grid.step} nm`
        : ', no spectra';
      const units = scale ? `, ${scale}${scaleFrom === 'values' ? ' (decided from the values)' : ' (stated)'}` : '';
      return `Table at line ${line}: ${formatCount(count, 'reading')}${spectra}${units}`;
    }),
    '',
    ...textTable(
      [
        { heading: 'Name', side: 'right' },
        { heading: 'Line', side: 'left' },
        { heading: 'L*', side: 'left' },
        { heading: 'a*', side: 'left' },
        { heading: 'b*', side: 'left' },
        { heading: 'under', side: 'right' },
        { heading: 'on screen', side: 'right' },
      ],
      rows,
    ),
    ...(measurements.length > most ? [`and ${measurements.length - most} more`] : []),
    ...warnings.map(({ message, path }) => style.faint(plainText(`Note: ${path ? `${path}: ` : ''}${message}`))),
  ];
  return `${lines.join('\n')}\n`;
}

function colourCells({ spectrum, lab, xyz, conditions }: Measurement, colour: boolean): string[] {
  const viewing = spectrum ? D65_10 : conditions.viewing;
  const found = spectrum
    ? labFromSpectrum(spectrum, D65_10)
    : (lab ?? (xyz && viewing && labFromXyz(xyz, whitePoint(viewing))));
  if (!found) return ['–', '–', '–', 'not stated', '–'];
  const figures = [found.L, found.a, found.b].map((value) => formatFixed(value, 2));
  if (!viewing) return [...figures, 'not stated', '–'];
  const { hex, inGamut, rgb } = srgbSwatch(found, viewing);
  const block = colour ? `\u001b[48;2;${rgb.map((part) => Math.round(255 * part)).join(';')}m    \u001b[0m ` : '';
  return [...figures, describeViewing(viewing), `${block}${hex}${inGamut ? '' : ' (outside the screen’s gamut)'}`];
}
