import { expect, test } from 'vitest';
import { conformanceProbability } from '../../src/evidence/index.js';

// JCGM 106:2012, Evaluation of measurement data - The role of measurement uncertainty in conformity assessment, examples of 7.3 and 7.4,
// transcribed from memory; tests/decision checks the same function against a library.

test('7.3.2, example 1: breakdown voltage of a Zener diode, upper limit -5.40 V', () => {
  const probability = conformanceProbability({ value: -5.47, standardDeviation: 0.05 }, { upper: -5.4 });
  expect(Math.abs(probability - 0.92)).toBeLessThanOrEqual(0.005);
});

test('7.4, example: kinematic viscosity of a grade 40 motor oil, 12.5 to 16.3 mm²/s', () => {
  const probability = conformanceProbability({ value: 13.6, standardDeviation: 1.8 }, { lower: 12.5, upper: 16.3 });
  expect(Math.abs(probability - 0.66)).toBeLessThanOrEqual(0.005);
});
