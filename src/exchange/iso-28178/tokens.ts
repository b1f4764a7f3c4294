import { TintladderError } from '../../core/index.js';
import { cellPlace } from '../text/cell-place.js';

/** One line of keyword text: its tokens, and the line as it stands. */
export interface TokenLine {
  readonly tokens: readonly string[];
  readonly text: string;
  readonly line: number;
}

/** A quoted value longer than this is a quote that does not close. */
const LONGEST_QUOTE = 2 ** 16;

/**
 * Splits keyword text that comes in blocks cut anywhere into lines of tokens. Blanks separate tokens, double quotes keep blanks (and line breaks)
 * together, a quote inside is doubled, and `#` starts a comment. Lines without a token are left out.
 *
 * @throws TintladderError `malformed` for a quote that does not close
 */
export function createTokenSplitter(sink: (line: TokenLine) => void): { push(text: string): void; end(): void } {
  let rest = '';
  let line = 1;

  const split = (text: string, last: boolean) => {
    const shape = /[ \t\v\f]+|(\n)|#[^\n]*|"((?:[^"]|"")*)"|("?)[^\s]+/g;
    let tokens: string[] = [];
    let at = line;
    let startAt = 0;
    for (let match = shape.exec(text); match; match = shape.exec(text)) {
      const [whole, lineBreak, quoted, openQuote] = match;
      if (lineBreak !== undefined) {
        if (tokens.length > 0) sink({ tokens, text: text.slice(startAt, match.index), line });
        tokens = [];
        line = ++at;
        startAt = match.index + 1;
      } else if (quoted !== undefined) {
        tokens.push(quoted.replaceAll('""', '"'));
        at += whole.split('\n').length - 1;
      } else if (openQuote === '"') {
        if (!last && text.length - match.index < LONGEST_QUOTE) break;
        throw new TintladderError('malformed', {
          path: cellPlace(at, tokens.length + 1),
          received: whole,
          expected: 'a closing quote',
        });
      } else if (!/^[ \t\v\f#]/.test(whole)) tokens.push(whole);
    }
    if (last && tokens.length > 0) sink({ tokens, text: text.slice(startAt), line });
    rest = last ? '' : text.slice(startAt);
  };

  return {
    push(text) {
      let block = rest + text;
      // whether a last carriage return is half of a line break shows with the next block
      const held = block.endsWith('\r') ? '\r' : '';
      if (held) block = block.slice(0, -1);
      if (block.includes('\r')) block = block.replace(/\r\n?/g, '\n');
      const end = block.lastIndexOf('\n') + 1;
      if (end === 0) rest = block;
      else {
        const tail = block.slice(end);
        split(block.slice(0, end), false);
        rest += tail;
      }
      rest += held;
    },
    end() {
      split(rest.replace(/\r\n?/g, '\n'), true);
    },
  };
}
