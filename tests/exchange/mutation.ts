/** Numbers from 0 to 1 that follow from a seed. */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Tokens that mean something to a reader; over and over they must cost no more than their length. */
export const TOKENS = [
  '$$ ',
  '##',
  '##A=',
  '<a>',
  '<',
  '&amp;',
  'BEGIN_DATA\n',
  'KEYWORD "x"\n',
  '"',
  '""',
  "'",
  '# ',
  '//',
  ',',
  ';',
  '\t',
  '\n',
  '\r',
  ' ',
  '(',
  ')',
  '[',
  '{',
  '%',
  '°',
  ':',
  '=',
  'a:',
  'a=b,',
  '1',
  '0.',
  '1,',
  '400,',
  '400 nm ',
  'L*',
  'a*,',
  'D65/10 ',
  'F2',
  'SCI ',
  'specular ',
  'log(1/R) ',
  'R ',
  'K/S',
  '0-1',
  'mean ',
  '-',
  '+1',
  'e',
  'STUV',
  '%JK',
  '\u0000',
  '\ufeff',
  'ß',
];

const TELLING = new TextEncoder().encode('"\'#<>&;,\t\n\r=%@STUVsJjAa+-.eE0129 BEGIN_DATA__proto__nm');

/** Damages a file in one to four places: bytes changed, cut, doubled, moved or put in, or the end cut off. */
export function mutate(bytes: Uint8Array, random: () => number): Uint8Array {
  let mutated = Array.from(bytes);
  const below = (limit: number) => Math.floor(random() * limit);
  const times = 1 + below(4);
  for (let i = 0; i < times; i++) {
    const at = below(mutated.length + 1);
    const length = 1 + below(random() < 0.8 ? 8 : 200);
    const part = mutated.slice(at, at + length);
    switch (below(8)) {
      case 0:
        mutated[at] = below(256);
        break;
      case 1:
        mutated[at] = TELLING[below(TELLING.length)];
        break;
      case 2:
        mutated.splice(at, length);
        break;
      case 3:
        mutated.splice(at, 0, ...part);
        break;
      case 4:
        mutated.splice(below(mutated.length + 1), 0, ...mutated.splice(at, length));
        break;
      case 6: {
        const token = new TextEncoder().encode(TOKENS[below(TOKENS.length)]);
        const times = 1 + below(random() < 0.9 ? 8 : 300);
        mutated.splice(at, 0, ...Array.from({ length: times }, () => [...token]).flat());
        break;
      }
      case 5:
        mutated.splice(at, 0, ...Array.from({ length: 1 + below(6) }, () => TELLING[below(TELLING.length)]));
        break;
      default:
        mutated = mutated.slice(0, at);
    }
    mutated = mutated.map((byte) => byte ?? 0x20);
  }
  return Uint8Array.from(mutated);
}
