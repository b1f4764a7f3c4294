import type { StatedParts } from '../conditions/stated-parts.js';
import { parseStatement } from '../conditions/statement.js';

export const COORDINATES = ['L', 'a', 'b', 'X', 'Y', 'Z'] as const;
export type Coordinate = (typeof COORDINATES)[number];

/** A heading of a colour coordinate, with what it says of the conditions. */
export interface CoordinateHeading {
  readonly coordinate: Coordinate;
  readonly stated: StatedParts;
  /** The Y of the white that it says X, Y, Z belong to. */
  readonly white?: number;
  /** What else stands in it, which tells sets of coordinates apart. */
  readonly unknown: string;
  /** Whether it says that the coordinate is CIELAB's: by a star, or by name. */
  readonly certain: boolean;
  /** Hunter's L, a, b, which are no CIELAB. */
  readonly hunter: boolean;
}

const EDGE = String.raw`(?![\p{L}\p{N}*'’])`;
const STARRED = new RegExp(
  String.raw`(?<![\p{L}\p{N}ΔΣ*])(?:CIE(?:LAB)?[\s_]*|LAB[\s_]+)?([Lab])\s?\*(?:10(?!\d))?${EDGE}`,
  'u',
);
const NAMED = new RegExp(String.raw`(?<![\p{L}\p{N}Δ*])(?:CIE[\s_]*)?LAB[\s_]*([LABab])${EDGE}`, 'iu');
const CIE = new RegExp(String.raw`(?<![\p{L}\p{N}Δ*])CIE[\s_]*([Lab])${EDGE}`, 'u');
const PLAIN = new RegExp(String.raw`^\s*([LabAB])${EDGE}`, 'u');
const HUNTER = /hunter/iu;
const TRISTIMULUS = new RegExp(
  String.raw`(?<![\p{L}\p{N}Δ*])(?:CIE(?:XYZ)?[\s_]*|XYZ[\s_]*)?([XYZ])(?:10(?!\d))?${EDGE}`,
  'u',
);

/** Reads a heading as a colour coordinate with its conditions in any order: `L*(F2/10)`, `D65/10° a*`, `LAB_B`, `X SCI`. */
export function parseCoordinate(heading: string): CoordinateHeading | undefined {
  if (heading.length > 60 || heading.trim() === '') return undefined;
  const hunter = HUNTER.test(heading);
  const text = heading.replace(/hunter\s*(?:lab)?/giu, ' ');
  const certain = STARRED.exec(text) ?? NAMED.exec(text) ?? CIE.exec(text);
  const found = certain ?? TRISTIMULUS.exec(text) ?? PLAIN.exec(text);
  if (!found) return undefined;
  const [whole, letter] = found;
  // X10, Y10, Z10 and L*10 are the CIE's way of writing those of the 10 degree observer
  const tenDegrees = whole.endsWith('10');
  const around = `${text.slice(0, found.index)} ${text.slice(found.index + whole.length)}`;
  const scale = found === certain ? undefined : parseScale(around);
  const { parts, rest, contradictory } = parseStatement(scale?.rest ?? around);
  if (contradictory || (tenDegrees && parts.observer === '2')) return undefined;
  // words that are no condition are passed over only beside a star or a standard's name
  if (rest.length > 0 && !certain) return undefined;
  if (rest.some((word) => OTHER_KINDS.test(word))) return undefined;
  return {
    coordinate: coordinateOf(letter),
    stated: tenDegrees && !parts.observer ? { ...parts, observer: '10' } : parts,
    ...(scale?.white === undefined ? {} : { white: scale.white }),
    unknown: rest.join(' '),
    certain: certain !== null,
    hunter,
  };
}

function parseScale(around: string): { readonly rest: string; readonly white?: number } {
  const found = /\(\s*0\s*(?:-|–|to|\.\.)\s*(100|1)\s*\)/.exec(around);
  return found ? { rest: around.replace(found[0], ' '), white: Number(found[1]) } : { rest: around };
}

/** Words of figures that are no colour: differences, scatter, limits. */
const OTHER_KINDS =
  /^(?:d|Δ|delta|diff|difference|std|sd|stdev|stdv|dev|deviation|cv|min|max|range|tol|tolerance|limit|target|mean|avg|average|%|±)$/iu;

function coordinateOf(letter: string): Coordinate {
  switch (letter) {
    case 'l':
    case 'L':
      return 'L';
    case 'A':
    case 'a':
      return 'a';
    case 'B':
    case 'b':
      return 'b';
    case 'X':
      return 'X';
    case 'Y':
      return 'Y';
    default:
      return 'Z';
  }
}
