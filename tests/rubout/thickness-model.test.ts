import { expect, test } from 'vitest';
import { filmReflectance } from '../../src/index.js';
import { spectralChange } from '../../src/rubout/spectral-change.js';
import { thicknessModel } from '../../src/rubout/thickness-model.js';

// The film's own function is another form of Kubelka's equations, checked against exact arithmetic in its own tests.
const wavelengths = [450, 550, 650];
const K = [0.05, 0.2, 0.6];
const at = (substrate: number, thickness: number) =>
  Float64Array.from(K, (absorption) => filmReflectance({ absorption, scattering: 1, thickness, substrate }));

test('a film that is 20 % thinner shows the card as the film itself would', () => {
  const [overWhite, overBlack, thinner] = [at(0.8, 3), at(0.05, 3), at(0.8, 2.4)];
  const found = spectralChange({ wavelengths, unrubbed: overWhite, rubbed: thinner }, 'none');
  if (!found) throw new Error('this film has a K/S');
  const film = { overBlack, white: Float64Array.of(0.8, 0.8, 0.8), black: Float64Array.of(0.05, 0.05, 0.05) };
  const curve = thicknessModel(found, film).curve([-0.2]);
  curve.forEach((value, i) => {
    expect(value).toBeCloseTo(thinner[i] - overWhite[i], 9);
  });
});

test('where the film hides no thickness shows', () => {
  const same = at(0.8, 3);
  const found = spectralChange({ wavelengths, unrubbed: same, rubbed: same }, 'none');
  if (!found) throw new Error('this film has a K/S');
  const film = { overBlack: same, white: Float64Array.of(0.8, 0.8, 0.8), black: Float64Array.of(0, 0, 0) };
  expect(Array.from(thicknessModel(found, film).curve([-0.5]))).toEqual([0, 0, 0]);
});
