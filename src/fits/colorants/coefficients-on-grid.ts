import { gridOf, type Spectrum } from '../../colorimetry/index.js';
import { describeGrid } from '../../colorimetry/internal.js';
import { TintladderError } from '../../core/index.js';
import { assertFiniteArray, assertNumberList, assertObject } from '../../core/internal.js';
import type { ColorantCoefficients } from './colorant-coefficients.js';

/**
 * Coefficients that were passed with a tint: those of `fitColorantCoefficients`, or what JSON made of them.
 *
 * @throws TintladderError `wrong-type` for anything else; `grid-mismatch` where they are on another grid than the tint; `wrong-length`; `not-finite`
 */
export function coefficientsOnGrid(given: ColorantCoefficients, tint: Spectrum, path: string): ColorantCoefficients {
  const expected = 'coefficients, as fitColorantCoefficients gives them';
  assertObject(given, path, expected);
  if (given.kind !== 'colorant-coefficients' || given.version !== 1) {
    const { kind, version } = given;
    throw new TintladderError('wrong-type', { path, received: { kind, version }, expected });
  }
  const { start, step, absorption, scattering, white, amounts } = given;
  for (const [name, values] of Object.entries({ absorption, scattering, white, amounts })) {
    assertNumberList(values, `${path}.${name}`);
    assertFiniteArray(values, `${path}.${name}`);
  }
  const count = white.length;
  if (start !== tint.start || step !== tint.step || count !== tint.values.length) {
    throw new TintladderError('grid-mismatch', {
      path,
      received: { start, step, count },
      expected: `the grid of the tint, ${describeGrid(gridOf(tint))}`,
    });
  }
  for (const [name, { length }] of Object.entries({ absorption, scattering })) {
    if (length === count) continue;
    const each = `one value for each wavelength, ${count}`;
    throw new TintladderError('wrong-length', { path: `${path}.${name}`, received: length, expected: each });
  }
  return given;
}
