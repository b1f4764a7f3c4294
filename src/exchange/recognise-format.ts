import type { MeasurementFormat } from './measurement.js';

/** The format of a text by the marks in its beginning: an XML element, a labelled data record, a data block; anything else is delimited text. */
export function recogniseFormat(text: string): MeasurementFormat {
  const beginning = text.trimStart();
  if (beginning.startsWith('<')) return 'iso-17972';
  if (/^(?:\$\$.*\s+)*##\s*[A-Z$]/i.test(beginning)) return 'jcamp-dx';
  if (text.includes('BEGIN_DATA') && /^[ \t]*BEGIN_DATA(?:_FORMAT)?[ \t]*$/m.test(text)) return 'iso-28178';
  return 'delimited-text';
}
