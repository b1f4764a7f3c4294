import { TintladderError } from '../core/index.js';
import {
  assertFiniteArray,
  assertFloat64Array,
  assertOptions,
  assertPositive,
  assertRows,
  rowsOutput,
} from '../core/internal.js';
import { ciede2000 } from './ciede2000-kernel.js';
import type { Lab } from './cielab.js';
import { assertLabs, finiteDifference } from './finite-lab.js';

/** Parametric factors of CIEDE2000; 1 under reference conditions, kL = 2 in textile practice. */
export interface DeltaE2000Options {
  /** @default 1 */
  readonly kL?: number | undefined;
  /** @default 1 */
  readonly kC?: number | undefined;
  /** @default 1 */
  readonly kH?: number | undefined;
}

const REFERENCE_CONDITIONS: DeltaE2000Options = {};
const UNIT = { kL: 1, kC: 1, kH: 1 };

function factorsOf(options: DeltaE2000Options): typeof UNIT {
  assertOptions(options, Object.keys(UNIT));
  const { kL = 1, kC = 1, kH = 1 } = options;
  assertPositive({ kL, kC, kH });
  return { kL, kC, kH };
}

/**
 * CIEDE2000 colour difference.
 *
 * Both colours must come from one illuminant and observer; nothing is adapted here. Neither colour is privileged: the formula is
 * symmetric. It was fitted to differences up to about 5; larger ones are ordered well but are no equal steps. Where the hues are exactly
 * 180 degrees apart the mean hue is half the sum of the two angles, as in Sharma et al.
 *
 * @param reference - CIELAB; L* 0 to 100
 * @param sample - CIELAB under the same white
 * @param options - parametric factors, each > 0
 * @returns ΔE00 >= 0, the same to the bit in either order
 * @throws TintladderError `not-finite` if a coordinate is no finite number; `invalid-option` for a factor that is not positive
 * @example deltaE2000({ L: 50, a: 2.6772, b: -79.7751 }, { L: 50, a: 0, b: -82.7485 }) // 2.0425
 * @see Sharma, Wu & Dalal (2005), Color Res. Appl. 30, equations 2 to 22; ISO/CIE 11664-6
 */
export function deltaE2000(reference: Lab, sample: Lab, options = REFERENCE_CONDITIONS): number {
  assertLabs(reference, sample);
  const { kL, kC, kH } = options === REFERENCE_CONDITIONS ? UNIT : factorsOf(options);
  const difference = ciede2000(reference.L, reference.a, reference.b, sample.L, sample.a, sample.b, kL, kC, kH);
  return finiteDifference(difference);
}

/**
 * CIEDE2000 of many pairs: what {@link deltaE2000} gives for each, to the bit, without an object for each.
 *
 * @param references - L*, a*, b* of each reference, one after the other (n x 3)
 * @param samples - L*, a*, b* of each sample, as many
 * @param out - where the n differences go; may not overlap the inputs
 * @default out a new array
 * @param options - parametric factors, each > 0
 * @returns `out`
 * @throws TintladderError `empty`, `not-a-multiple` and `wrong-length` for the arrays; `not-finite` naming the
 * index; `invalid-option` for a factor that is not positive
 * @example
 * const references = Float64Array.of(50, 2.6772, -79.7751, 50, 2.5, 0);
 * const samples = Float64Array.of(50, 0, -82.7485, 58, 24, 15);
 * deltaE2000Rows(references, samples)[1] // 19.4535
 * @see ISO/CIE 11664-6
 */
export function deltaE2000Rows(
  references: Float64Array,
  samples: Float64Array,
  out?: Float64Array,
  options = REFERENCE_CONDITIONS,
): Float64Array {
  const pairs = assertRows(references, 3, 'references');
  assertFloat64Array(samples, 'samples');
  if (samples.length !== references.length) {
    throw new TintladderError('wrong-length', {
      path: 'samples.length',
      received: samples.length,
      expected: `the length of the references, ${references.length}`,
    });
  }
  const differences = rowsOutput(out, pairs);
  const { kL, kC, kH } = factorsOf(options);
  let sound = true;
  for (let i = 0, j = 0; i < pairs; i++, j += 3) {
    const difference = ciede2000(
      references[j],
      references[j + 1],
      references[j + 2],
      samples[j],
      samples[j + 1],
      samples[j + 2],
      kL,
      kC,
      kH,
    );
    differences[i] = difference;
    sound &&= difference - difference === 0;
  }
  if (!sound) {
    assertFiniteArray(references, 'references');
    assertFiniteArray(samples, 'samples');
    assertFiniteArray(differences, 'differences');
  }
  return differences;
}
