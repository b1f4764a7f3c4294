import { TintladderError } from '../core/index.js';
import { assertObject, assertOneOf, assertOptions } from '../core/internal.js';
import { deltaE2000 } from './ciede2000.js';
import { type Lab, labFromXyz } from './cielab.js';
import { deltaEab } from './delta-eab.js';
import type { Spectrum } from './spectrum.js';
import { assertViewing, describeViewing, type Viewing } from './viewing.js';
import { whitePoint, type Xyz, xyzFromSpectrum } from './xyz-from-spectrum.js';

/** Under what the pair matches, under what it is tested, and how a match that is not exact is corrected. */
export interface MetamerismOptions {
  /** Where the pair matches, or should. */
  readonly match: Viewing;
  /** Where the mismatch is measured: another illuminant with the same observer, or another observer with the same illuminant. */
  readonly test: Viewing;
  /**
   * `multiplicative`: the sample's X, Y, Z under `test` are scaled by reference / sample under `match`. `additive`: the Lab
   * difference under `match` is subtracted from that under `test`.
   *
   * @default 'multiplicative'
   */
  readonly correction?: 'multiplicative' | 'additive' | undefined;
}

/** A metamerism index with the conditions it belongs to. */
export interface MetamerismIndex {
  readonly kind: 'metamerism-index';
  readonly version: 1;
  /** ΔE*ab under `test` after the correction: for a change of illuminant CIE's special index. */
  readonly index: number;
  /** The same as ΔE00. */
  readonly index2000: number;
  /** ΔE*ab left under `match` before the correction: 0 for an exact match. */
  readonly matchDifference: number;
  readonly change: 'illuminant' | 'observer';
  readonly correction: 'multiplicative' | 'additive';
  readonly match: Viewing;
  readonly test: Viewing;
}

/**
 * Metamerism index: how far a pair that matches under one condition comes apart under another. For a change of illuminant it is CIE's special
 * index; for a change of observer it compares the two standard observers.
 *
 * @param reference - reflectance factor
 * @param sample - reflectance factor, on any grid
 * @param options - the two viewing conditions, and the correction for a match that is not exact
 * @returns the index as ΔE*ab and ΔE00, with what was left under the first condition
 * @throws TintladderError `invalid-option` if not exactly one of illuminant and observer changes, or for an unknown correction;
 * `out-of-range` if the sample is so black that it can't be scaled; `unknown-illuminant`, `unknown-observer`, `illuminant-range`
 * @example
 * const grey = createSpectrum({ start: 400, step: 20, values: Array(16).fill(0.5), scale: 'fraction' });
 * metamerismIndex(grey, grey, { match: D65_10, test: A_10 }).index // 0
 * @see CIE 015:2018 and ISO 18314-4:2024, special metamerism index for a change of illuminant; a change from 2° to 10° is another comparison than
 * CIE's index for a change of observer, which has a standard deviate observer (CIE 80-1989); the additive correction is quoted from DIN 6172,
 * which could not be confirmed
 */
export function metamerismIndex(reference: Spectrum, sample: Spectrum, options: MetamerismOptions): MetamerismIndex {
  assertObject(options, 'options', 'the viewings match and test');
  assertOptions(options, ['match', 'test', 'correction']);
  const { match, test, correction = 'multiplicative' } = options;
  assertViewing(match, 'options.match');
  assertViewing(test, 'options.test');
  const otherIlluminant = match.illuminant !== test.illuminant;
  if (otherIlluminant === (match.observer !== test.observer)) {
    throw new TintladderError('invalid-option', {
      path: 'options.test',
      received: test,
      expected: `a change of either illuminant or observer from ${describeViewing(match)}`,
    });
  }
  assertOneOf(correction, ['multiplicative', 'additive'], 'options.correction');
  const matched = { reference: xyzFromSpectrum(reference, match), sample: xyzFromSpectrum(sample, match) };
  const tested = { reference: xyzFromSpectrum(reference, test), sample: xyzFromSpectrum(sample, test) };
  const first = labsOf(matched, match);
  const second =
    correction === 'multiplicative'
      ? labsOf({ reference: tested.reference, sample: scaled(tested.sample, matched) }, test)
      : shifted(labsOf(tested, test), first);
  return {
    kind: 'metamerism-index',
    version: 1,
    index: deltaEab(second.reference, second.sample),
    index2000: deltaE2000(second.reference, second.sample),
    matchDifference: deltaEab(first.reference, first.sample),
    change: otherIlluminant ? 'illuminant' : 'observer',
    correction,
    match,
    test,
  };
}

interface Pair<Colour> {
  readonly reference: Colour;
  readonly sample: Colour;
}

function labsOf({ reference, sample }: Pair<Xyz>, viewing: Viewing): Pair<Lab> {
  const white = whitePoint(viewing);
  return { reference: labFromXyz(reference, white), sample: labFromXyz(sample, white) };
}

function scaled({ X, Y, Z }: Xyz, { reference, sample }: Pair<Xyz>): Xyz {
  for (const axis of ['X', 'Y', 'Z'] as const) {
    if (!(sample[axis] > 0)) {
      throw new TintladderError('out-of-range', {
        path: `sample.${axis} under options.match`,
        received: sample[axis],
        expected: 'a tristimulus value above 0',
        hint: "Use correction: 'additive'.",
      });
    }
  }
  return {
    X: (X * reference.X) / sample.X,
    Y: (Y * reference.Y) / sample.Y,
    Z: (Z * reference.Z) / sample.Z,
  };
}

function shifted({ reference, sample }: Pair<Lab>, first: Pair<Lab>): Pair<Lab> {
  return {
    reference,
    sample: {
      L: sample.L - (first.sample.L - first.reference.L),
      a: sample.a - (first.sample.a - first.reference.a),
      b: sample.b - (first.sample.b - first.reference.b),
    },
  };
}
