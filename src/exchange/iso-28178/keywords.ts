import type { ReflectanceScale } from '../quantity/reflectance-scale.js';
import type { TableContext } from '../table/heading.js';
import { NO_CONTEXT, type Remark, readRemarks } from '../table/preamble.js';
import type { Notes } from '../text/notes.js';
import type { DataFormat, Keyword } from './data-tables.js';

/** The standard gives X, Y, Z for a white of 100. */
const WHITE = 100;
/** Keywords whose values are free text and say nothing of the readings. */
const NO_STATEMENT =
  /^(?:ORIGINATOR|CREATED|KEYWORD|NUMBER_OF_|MANUFACTURER|PROD_DATE|SERIAL|COMMENT|MATERIAL|SAMPLE_BACKING|FILTER|SPECTRAL_)/;

/** The last value of a keyword. */
export function lastOf(keywords: readonly Keyword[], word: string): string | undefined {
  return keywords.filter((keyword) => keyword.word === word).at(-1)?.value;
}

/** What the keywords before a table say of its readings. */
export function contextOf({ keywords, line }: DataFormat, notes: Notes): TableContext {
  const remarks = [...keywords]
    .sort((one, other) => one.line - other.line)
    .flatMap((keyword) => (NO_STATEMENT.test(keyword.word) ? [] : [remarkOf(keyword, line)]));
  const { name: _, ...context } = readRemarks(remarks, NO_CONTEXT, notes);
  const norm = Number(lastOf(keywords, 'SPECTRAL_NORM'));
  const scale: ReflectanceScale | undefined = norm === 1 ? 'fraction' : norm === 100 ? 'percent' : undefined;
  return {
    ...context,
    white: WHITE,
    ...(scale ? { quantity: { rest: '', ...context.quantity, scale, place: `line ${line}` } } : {}),
  };
}

/** `WEIGHTING_FUNCTION "ILLUMINANT, D50"` is the statement of an illuminant. */
function remarkOf({ word, value }: Keyword, line: number): Remark {
  const place = `line ${line}, column 1 (${word})`;
  const weighting = word === 'WEIGHTING_FUNCTION' ? /^\s*(\w+)\s*,(.*)$/s.exec(value) : null;
  return weighting ? { key: weighting[1], value: weighting[2].trim(), place } : { key: word, value, place };
}
