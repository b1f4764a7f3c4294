import { expect, test } from 'vitest';
import { D65_10 } from '../../src/colorimetry/index.js';
import { bronzingWarnings, drawdownFilm } from '../../src/strength/index.js';
import { OIL_PAINTS } from './oil-paints.js';
import { PAIRS, readingOf, surfaceOf } from './single-constant.js';

// What the measured oil paints (source in oil-paints.txt) show of themselves. Which paints are named is a regression of our own run; that
// eosin fluoresces and Prussian blue bronzes is known of them.

test('of the mass tones only Prussian blue bronzes, in the red where it absorbs', () => {
  const bronzing = PAIRS.filter(({ colorant }) => !colorant.endsWith('pale')).flatMap((pair) => {
    const surface = surfaceOf(pair);
    const found = bronzingWarnings(readingOf(pair.masstone, surface), readingOf(pair.stronger, surface));
    return found.map(({ code, path }) => `${pair.colorant}: ${code} ${path}`);
  });
  expect(bronzing).toEqual(['prussian blue: bronzing 600-700 nm']);
});

test('of the paints only eosin without white sends back light at the edge of its absorption', () => {
  const fluorescent = [...OIL_PAINTS.values()].flatMap(({ name, parts, drawdown }) => {
    const surface = { external: 0.02, internal: 0.6, specular: 'included' } as const;
    const { warnings } = drawdownFilm(drawdown, { viewing: D65_10, surface });
    return warnings
      .filter(({ code }) => code === 'fluorescence')
      .map(({ path }) => `${name} ${[...parts.keys()]} ${path}`);
  });
  expect(fluorescent).toEqual([
    '01A eosin1-wax 570-610 nm',
    '02A eosin 570-610 nm',
    '03A eosin2-pb-wax 570-630 nm',
    '03D eosin2-pb-wax,bone-black 560-620 nm',
    '03E eosin2-pb-wax,bone-black 550-560 nm',
  ]);
});
