import { expect, test } from 'vitest';
import { geometriesAgree } from '../../src/colorimetry/internal.js';

// CIE 015:2018 names the recommended geometries: di:8°, de:8°, 8°:di, 8°:de, d:d, 45°a:0°, 45°x:0°, 45°c:0°, 0°:45°a, ...

test.each([
  ['di:8°', 'd:8°', true],
  ['di:8°', 'D/8', true],
  ['di:8°', 'de:8°', false],
  ['d:8°', '8°:d', false],
  ['45°a:0°', '45/0', true],
  ['45°a:0°', '45°c:0°', false],
  ['45°a:0°', '0°:45°a', false],
  ['45°:0°', '45°:8°', false],
  ['sphere', ' sphere', true],
  ['sphere', 'd:8°', false],
])('%s and %s: %s', (one, other, expected) => {
  expect(geometriesAgree(one, other)).toBe(expected);
  expect(geometriesAgree(other, one)).toBe(expected);
});
