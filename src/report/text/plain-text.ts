/** Text made safe for a terminal: control and escape characters can neither colour, move nor hide what follows. */
export function plainText(text: string): string {
  return text.replace(/[\p{Cc}\p{Cs}\u2028-\u202e\u2066-\u2069]+/gu, '\ufffd');
}

const WIDE =
  /[\p{Script=Han}\p{Script=Hangul}\p{Script=Hiragana}\p{Script=Katakana}\u3000-\u303f\uff01-\uff60]|\p{Emoji_Presentation}/u;
/** Text of one column a character, which most is: the segmenter is slow. */
const NARROW = /^[ -~\u00a0-\u02ff\u0370-\u03ff\u2010-\u2027\u2500-\u257f]*$/;
/** Made when first needed, since it takes longer to make than the rest of the room to load. */
let segmenter: Intl.Segmenter | undefined;
function graphemesOf(text: string): Iterable<Intl.SegmentData> {
  segmenter ??= new Intl.Segmenter('en', { granularity: 'grapheme' });
  return segmenter.segment(text);
}

/** The escapes by which this room colours text. */
const COLOUR = new RegExp(`${String.fromCharCode(27)}\\[[\\d;]*m`, 'g');

/** Columns that a text takes on a terminal: two for a wide character, none for a combining mark or a colour. */
export function displayWidth(text: string): number {
  if (NARROW.test(text)) return text.length;
  let width = 0;
  for (const { segment } of graphemesOf(text.replace(COLOUR, ''))) width += WIDE.test(segment) ? 2 : 1;
  return width;
}

/** Fills a text with spaces on the right, or on the left for numbers. */
export function pad(text: string, width: number, side: 'left' | 'right'): string {
  const fill = ' '.repeat(Math.max(0, width - displayWidth(text)));
  return side === 'left' ? fill + text : text + fill;
}

/** Breaks a text at spaces so that no line is longer than `width`, save for a single longer word. */
export function wrap(text: string, width: number, indent = ''): string[] {
  const lines: string[] = [];
  let line = '';
  // a space that may not break holds a figure and its unit together
  for (const word of text.split(/[ \t\n]+/)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && displayWidth(indent + longer) > width) {
      lines.push(indent + line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, indent + line];
}
