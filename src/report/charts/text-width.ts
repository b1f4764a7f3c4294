/** Widths of characters at 12 px, rather too wide than too narrow: the font is the reader's and can't be measured. */
const WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/[ijltf.,:;'|!()[\]\s]/, 4],
  [/[mwMW%@…]/, 10.5],
  [/[A-Z\u0391-\u03a9]/, 8.6],
  [/[\u1100-\u11ff\u2e80-\ud7ff\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60]|\p{Extended_Pictographic}/u, 13],
];
const USUAL = 7.1;
/** How much wider the same is in bold. */
const BOLD = 1.16;

/** About how wide a text is at 12 px. */
export function textWidth(text: string): number {
  return [...text].reduce((sum, one) => sum + (WIDTHS.find(([some]) => some.test(one))?.[1] ?? USUAL), 0);
}

/** A text cut to a width; the whole of it stands elsewhere. */
export function cutToWidth(text: string, width: number): string {
  if (textWidth(text) <= width) return text;
  const characters = [...text];
  while (characters.length > 0 && textWidth(`${characters.join('')}…`) > width) characters.pop();
  return `${characters.join('').trimEnd()}…`;
}

/** A text in bold in lines of at most a width. */
export function wrapBold(text: string, width: number): string[] {
  const room = width / BOLD;
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter((part) => part !== '')) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`) <= room) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(cutToWidth(word, room));
  }
  return lines;
}
