import { readFileSync } from 'node:fs';
import { all, create } from 'mathjs';
import { expect, test } from 'vitest';
import { NO_ROTATION, rotationSine } from '../../src/colorimetry/rotation-term.js';

const math = create(all, { number: 'BigNumber', precision: 50 });
const big = (value: number) => math.bignumber(value);
const PI = math.bignumber('3.14159265358979323846264338327950288419716939937510');

/** The term as the paper writes it, with 50 digits. */
function exact(cosine: number): number {
  const degrees = big(cosine).acos().mul(180).div(PI);
  return degrees.div(25).pow(2).neg().exp().mul(PI).div(3).sin().toNumber();
}

test('is sin(60° exp(-(θ/25°)²)) to within 4e-15 wherever it is asked for', () => {
  // one error of rounding (1.1e-16) a step of the longer polynomial, multiplied by 16 in the squarings
  const steps = 2000;
  for (let i = 0; i <= steps; i++) {
    const cosine = NO_ROTATION + ((1 - NO_ROTATION) * i) / steps;
    expect(Math.abs(rotationSine(cosine) - exact(cosine)), String(cosine)).toBeLessThan(4e-15);
  }
});

test('at 275 degrees, and where rounding carries the cosine beyond 1, is sin 60°', () => {
  for (const cosine of [1, 1 + 2e-16]) expect(rotationSine(cosine)).toBeCloseTo(Math.sqrt(3) / 2, 15);
});

test('beyond its range the term is below 1e-13', () => {
  expect(exact(NO_ROTATION)).toBeLessThan(1e-13);
});

test('CIEDE2000 needs nothing that engines round differently: + - * / and square roots', () => {
  for (const file of ['ciede2000-kernel', 'rotation-term']) {
    const code = readFileSync(`src/colorimetry/${file}.ts`, 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, '');
    expect(code.match(/Math\.(?!sqrt|abs|min)\w+|\*\*/g), file).toBeNull();
  }
});
