import { expect, test } from 'vitest';
import { fitGrindCurve } from '../../src/fits/index.js';

// D. M. Bates and D. G. Watts (1988), Nonlinear Regression Analysis and Its Applications, table A1.3: velocity of a reaction
// against substrate concentration, treated with puromycin. The Michaelis-Menten curve is the half-time form. Estimates as the
// book prints them (212.7, 0.0641, s = 10.93); the profile intervals are those in the manual page of R's confint.nls
// (197.30 to 229.29; 0.0469 to 0.0862). Figures quoted from memory; scipy's curve_fit gives 212.684, 0.064121 and s = 10.934.
const CONCENTRATION = [0.02, 0.02, 0.06, 0.06, 0.11, 0.11, 0.22, 0.22, 0.56, 0.56, 1.1, 1.1];
const VELOCITY = [76, 47, 97, 107, 123, 139, 159, 152, 191, 201, 207, 200];

test('Puromycin, treated', () => {
  const points = [...new Set(CONCENTRATION)].map((time) => ({
    time,
    strength: { weighing: VELOCITY.filter((_, i) => CONCENTRATION[i] === time) },
  }));
  const [fit] = fitGrindCurve(points, { form: 'half-time', scatter: 'constant' }).forms;
  expect(fit.finalStrength.value).toBeCloseTo(212.7, 1);
  expect(fit.halfTime.value).toBeCloseTo(0.0641, 4);
  expect(fit.residualDeviation).toBeCloseTo(10.93, 2);
  expect(fit.finalStrength.interval?.low).toBeCloseTo(197.3, 1);
  expect(fit.finalStrength.interval?.high).toBeCloseTo(229.29, 1);
  expect(fit.halfTime.interval?.low).toBeCloseTo(0.0469, 4);
  expect(fit.halfTime.interval?.high).toBeCloseTo(0.0862, 4);
});
