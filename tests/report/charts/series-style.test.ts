import { expect, test } from 'vitest';
import { styleAt } from '../../../src/report/charts/series-style.js';
import { styleOf } from '../../../src/report/charts/style-name.js';

test('every package of many is drawn differently, without its colour', () => {
  const styles = Array.from({ length: 14 }, (_, place) => styleAt(place));
  const looks = styles.map(({ shape, filled, dash }) => [shape.draw.toString(), filled, dash].join());
  expect(new Set(looks).size).toBe(14);
});

test('the reference package and the tint of the reference are drawn alike', () => {
  expect(styleOf('reference')).toEqual(styleOf(0));
});
