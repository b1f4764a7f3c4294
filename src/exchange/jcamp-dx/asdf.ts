import { TintladderError } from '../../core/index.js';

/** One line of data: its abscissa and the ordinates that start there. */
export interface AsdfLine {
  readonly abscissa: number;
  readonly ordinates: readonly number[];
  readonly line: number;
}

/** A line of the data table as it stands. */
export interface DataLine {
  readonly text: string;
  readonly line: number;
}

const SQUEEZED = '@ABCDEFGHI';
const SQUEEZED_NEGATIVE = ' abcdefghi';
const DIFFERENCE = '%JKLMNOPQR';
const DIFFERENCE_NEGATIVE = ' jklmnopqr';
const DUPLICATE = ' STUVWXYZs';

// a number in free or packed form (its exponent needs a sign, since E alone is the squeezed 5), or a pseudo-digit with its digits
const TOKEN = /([+-]?(?:\d+\.?\d*|\.\d+)(?:E[+-]\d{1,3})?)|([@A-Ia-i%J-Rj-rS-Zs])(\d*)|([\s,;]+)|(.)/y;

/**
 * Decodes the ASCII squeezed difference form: free (AFFN), packed (PAC), squeezed (SQZ), difference (DIF) and duplicate-suppressed (DUP)
 * numbers, in any mixture.
 *
 * After a line that ends in difference form the next one starts with the last ordinate again, as a check; it is checked and left out.
 *
 * @throws TintladderError `malformed` for a character that is no number or a check that fails
 * @see McDonald & Wilks (1988), Appl. Spectrosc. 42, 151-162: JCAMP-DX 4.24, section on the ASDF forms
 */
export function decodeAsdf(lines: readonly DataLine[]): AsdfLine[] {
  const decoded: AsdfLine[] = [];
  let check: number | undefined;
  let room = MOST_READINGS;
  for (const data of lines) {
    const { values, endsInDifference } = decodeLine(data, room);
    room -= values.length;
    if (values.length === 0) continue;
    const [abscissa, ...ordinates] = values;
    if (check !== undefined) {
      if (ordinates[0] !== check) {
        throw new TintladderError('malformed', {
          path: `line ${data.line}`,
          received: ordinates[0] ?? '',
          expected: `${check}, the last ordinate of the line before`,
          hint: 'The file is damaged; export it again.',
        });
      }
      ordinates.shift();
    }
    check = endsInDifference ? (ordinates.at(-1) ?? check) : undefined;
    decoded.push({ abscissa, ordinates, line: data.line });
  }
  return decoded;
}

/** More readings than any reflectance spectrum has: a damaged repeat count must not fill the memory. */
const MOST_READINGS = 100_000;

function decodeLine({ text, line }: DataLine, room: number): { values: number[]; endsInDifference: boolean } {
  const values: number[] = [];
  let difference: number | undefined;
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < text.length) {
    const at = TOKEN.lastIndex;
    const [, plain, letter, digits, blank] = TOKEN.exec(text) ?? [];
    const fault = () =>
      new TintladderError('malformed', {
        path: `line ${line}, column ${at + 1}`,
        received: text[at],
        expected: 'a number in one of the ASDF forms',
      });
    if (plain !== undefined) {
      values.push(Number(plain));
      difference = undefined;
    } else if (letter !== undefined) {
      const last = values.at(-1);
      if (DUPLICATE.includes(letter)) {
        const run = Number(`${DUPLICATE.indexOf(letter)}${digits}`);
        // the first number is the abscissa, which is never repeated
        if (last === undefined || values.length < 2 || values.length + run > room) throw fault();
        for (let i = 1; i < run; i++) values.push((values.at(-1) ?? last) + (difference ?? 0));
      } else if (SQUEEZED.includes(letter) || SQUEEZED_NEGATIVE.includes(letter)) {
        values.push(signed(letter, digits, SQUEEZED, SQUEEZED_NEGATIVE));
        difference = undefined;
      } else {
        if (last === undefined || values.length < 2) throw fault();
        difference = signed(letter, digits, DIFFERENCE, DIFFERENCE_NEGATIVE);
        values.push(last + difference);
      }
    } else if (blank === undefined) throw fault();
  }
  return { values, endsInDifference: difference !== undefined };
}

function signed(letter: string, digits: string, positive: string, negative: string): number {
  const at = positive.indexOf(letter);
  return at >= 0 ? Number(`${at}${digits}`) : -Number(`${negative.indexOf(letter)}${digits}`);
}
