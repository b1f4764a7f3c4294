import { createDelimitedReader } from './delimited/read-delimited.js';
import { writeDelimited } from './delimited/write-delimited.js';
import { createIso17972Reader } from './iso-17972/read-iso-17972.js';
import { recogniseIso17972 } from './iso-17972/recognise-iso-17972.js';
import { writeIso17972 } from './iso-17972/write-iso-17972.js';
import { createIso28178Reader } from './iso-28178/read-iso-28178.js';
import { recogniseIso28178 } from './iso-28178/recognise-iso-28178.js';
import { writeIso28178 } from './iso-28178/write-iso-28178.js';
import { createJcampDxReader } from './jcamp-dx/read-jcamp-dx.js';
import { recogniseJcampDx } from './jcamp-dx/recognise-jcamp-dx.js';
import type { CreateReader, WriteFormat } from './measurement/format-contract.js';

// The registry of formats: a line in each list that a format has a part in. The lists are apart so that what only writes carries no reader.

/** The formats that tintladder reads, in the order in which a text is tried for their marks. */
export const MEASUREMENT_FORMATS = ['iso-17972', 'jcamp-dx', 'iso-28178', 'delimited-text'] as const;

/** A format that tintladder reads. */
export type MeasurementFormat = (typeof MEASUREMENT_FORMATS)[number];

/** Whether the beginning of a text has the marks of a format; what has none is delimited text. */
const RECOGNISERS: Readonly<Record<MeasurementFormat, (beginning: string) => boolean>> = {
  'iso-17972': recogniseIso17972,
  'jcamp-dx': recogniseJcampDx,
  'iso-28178': recogniseIso28178,
  'delimited-text': () => true,
};

/** Starts reading a file, by its format. */
export const READERS: Readonly<Record<MeasurementFormat, CreateReader>> = {
  'iso-17972': createIso17972Reader,
  'jcamp-dx': createJcampDxReader,
  'iso-28178': createIso28178Reader,
  'delimited-text': createDelimitedReader,
};

/** Writes measurements, by format. */
export const WRITERS = {
  'delimited-text': writeDelimited,
  'iso-28178': writeIso28178,
  'iso-17972': writeIso17972,
} as const satisfies Partial<Record<MeasurementFormat, WriteFormat>>;

/** The format of a text by the marks in its beginning; what has none is delimited text. */
export function recogniseFormat(beginning: string): MeasurementFormat {
  return MEASUREMENT_FORMATS.find((format) => RECOGNISERS[format](beginning)) ?? 'delimited-text';
}
