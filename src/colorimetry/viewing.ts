import { TintladderError } from '../core/index.js';
import { assertObject } from '../core/internal.js';
import type { Illuminant } from './illuminant.js';
import type { IlluminantName } from './illuminants.js';

/** CIE standard colorimetric observer: `'2'` degrees (CIE 1931) or `'10'` degrees (CIE 1964). */
export type Observer = '2' | '10';

/** Illuminant and observer. Always stated, never defaulted: a colour without them has no meaning. */
export interface Viewing {
  readonly illuminant: IlluminantName | Illuminant;
  readonly observer: Observer;
}

/**
 * Refuses what is no viewing: an object with the name or the table of an illuminant and one of the observers. Whether there is an illuminant of
 * that name shows where its figures are taken.
 *
 * @throws TintladderError `wrong-type`, `unknown-illuminant`, `unknown-observer`
 */
export function assertViewing(viewing: Viewing, path: string): void {
  assertObject(viewing, path, 'an illuminant and an observer');
  const { illuminant, observer } = viewing;
  if (typeof (typeof illuminant === 'object' && illuminant !== null ? illuminant.name : illuminant) !== 'string') {
    throw new TintladderError('unknown-illuminant', {
      path: `${path}.illuminant`,
      received: illuminant,
      expected: 'the name of an illuminant, or a table of your own with its name',
    });
  }
  if (observer === '2' || observer === '10') return;
  throw new TintladderError('unknown-observer', {
    path: `${path}.observer`,
    received: observer,
    expected: "'2' (CIE 1931) or '10' (CIE 1964)",
  });
}

/** Daylight D65, 10 degree observer: the usual pair for paint. */
export const D65_10: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'D65', observer: '10' });
/** Daylight D65, 2 degree observer. */
export const D65_2: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'D65', observer: '2' });
/** Daylight D50, 10 degree observer. */
export const D50_10: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'D50', observer: '10' });
/** Daylight D50, 2 degree observer: the graphic-arts pair. */
export const D50_2: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'D50', observer: '2' });
/** Daylight D55, 10 degree observer. */
export const D55_10: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'D55', observer: '10' });
/** Daylight D55, 2 degree observer. */
export const D55_2: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'D55', observer: '2' });
/** Daylight D75, 10 degree observer. */
export const D75_10: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'D75', observer: '10' });
/** Daylight D75, 2 degree observer. */
export const D75_2: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'D75', observer: '2' });
/** Incandescent light A, 10 degree observer. */
export const A_10: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'A', observer: '10' });
/** Incandescent light A, 2 degree observer. */
export const A_2: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'A', observer: '2' });
/** Illuminant C, 10 degree observer. */
export const C_10: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'C', observer: '10' });
/** Illuminant C, 2 degree observer. */
export const C_2: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'C', observer: '2' });
/** Cool white fluorescent lamp FL2, 10 degree observer. */
export const FL2_10: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'FL2', observer: '10' });
/** Cool white fluorescent lamp FL2, 2 degree observer. */
export const FL2_2: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'FL2', observer: '2' });
/** Daylight fluorescent lamp FL7, 10 degree observer. */
export const FL7_10: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'FL7', observer: '10' });
/** Daylight fluorescent lamp FL7, 2 degree observer. */
export const FL7_2: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'FL7', observer: '2' });
/** Narrow-band fluorescent lamp FL11, 10 degree observer. */
export const FL11_10: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'FL11', observer: '10' });
/** Narrow-band fluorescent lamp FL11, 2 degree observer. */
export const FL11_2: Viewing = /* @__PURE__ */ Object.freeze({ illuminant: 'FL11', observer: '2' });

/**
 * A short text for a viewing condition, as the trade writes it.
 *
 * @throws TintladderError `wrong-type`, `unknown-illuminant`, `unknown-observer`
 * @example describeViewing(D65_10) // 'D65/10°'
 */
export function describeViewing(viewing: Viewing): string {
  assertViewing(viewing, 'viewing');
  const { illuminant, observer } = viewing;
  return `${typeof illuminant === 'string' ? illuminant : illuminant.name}/${observer}°`;
}
