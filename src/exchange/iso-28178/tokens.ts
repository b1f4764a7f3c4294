import { TintladderError } from '../../core/index.js';
import { cellPlace } from '../text/cell-place.js';

/** One line of keyword text: its tokens, and the line as it stands. */
export interface TokenLine {
  readonly tokens: readonly string[];
  readonly text: string;
  readonly line: number;
}

/**
 * Splits keyword text into lines of tokens. Blanks separate tokens, double quotes keep blanks (and line breaks) together, a quote inside is
 * doubled, and `#` starts a comment. Lines without a token are left out.
 *
 * @throws TintladderError `malformed` for a quote that does not close
 */
export function* tokenLines(text: string): Generator<TokenLine> {
  const shape = /[ \t\v\f]+|(\n)|#[^\n]*|"((?:[^"]|"")*)"|("?)[^\s]+/g;
  let tokens: string[] = [];
  let line = 1;
  let startLine = 1;
  let startAt = 0;
  let match = shape.exec(text);
  while (match) {
    const [whole, lineBreak, quoted, openQuote] = match;
    if (lineBreak !== undefined) {
      if (tokens.length > 0) yield { tokens, text: text.slice(startAt, match.index), line: startLine };
      tokens = [];
      line++;
      startLine = line;
      startAt = match.index + 1;
    } else if (quoted !== undefined) {
      tokens.push(quoted.replaceAll('""', '"'));
      line += whole.split('\n').length - 1;
    } else if (openQuote === '"') {
      throw new TintladderError('malformed', {
        path: cellPlace(line, tokens.length + 1),
        received: whole,
        expected: 'a closing quote',
      });
    } else if (!/^[ \t\v\f#]/.test(whole)) tokens.push(whole);
    match = shape.exec(text);
  }
  if (tokens.length > 0) yield { tokens, text: text.slice(startAt), line: startLine };
}
