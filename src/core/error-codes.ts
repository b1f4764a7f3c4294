/**
 * Every code of a fault, by what has to be mended: the arguments of a call, what was measured, a file, or a study. A code means the same
 * in every room.
 */
const CODES = {
  argument: [
    'wrong-type',
    'not-finite',
    'out-of-range',
    'wrong-length',
    'empty',
    'not-a-multiple',
    'invalid-option',
    'invalid-limit',
    'invalid-interval',
    'grid-invalid',
    'grid-mismatch',
    'unknown-illuminant',
    'unknown-observer',
    'not-increasing',
    'repetition-unstated',
    'level-misplaced',
    'pattern-invalid',
    'precision-invalid',
  ],
  data: [
    'reflectance-out-of-range',
    'scale-mixed',
    'illuminant-range',
    'conditions-mismatch',
    'kinds-mixed',
    'zero-reflectance',
    'no-internal-reflectance',
    'film-opaque',
    'no-absorption',
    'no-solution',
    'too-few-points',
    'ill-conditioned',
  ],
  file: [
    'empty-file',
    'not-text',
    'unknown-format',
    'no-header',
    'wavelengths-uneven',
    'wavelength-repeated',
    'not-a-number',
    'row-length',
    'unsupported-quantity',
    'count-mismatch',
    'truncated',
    'file-too-large',
    'malformed',
  ],
  study: [
    'study-invalid',
    'unknown-sample',
    'reading-claimed-twice',
    'reading-repeated',
    'no-reference',
    'quantity-not-measured',
    'unit-mismatch',
  ],
} as const;

/** What has to be mended: the arguments of a call, the data that was measured, a file, or a study. */
export type FaultKind = keyof typeof CODES;

/** Every kind of fault that tintladder reports, as a stable code that a program can branch on. */
export type ErrorCode = (typeof CODES)[FaultKind][number];

/** All of {@link ErrorCode}. */
export const ERROR_CODES: readonly ErrorCode[] = /* @__PURE__ */ Object.values(CODES).flat();

/** All of {@link FaultKind}. */
export const FAULT_KINDS: readonly FaultKind[] = ['argument', 'data', 'file', 'study'];

/** The kind of fault that a code stands for where nothing else is said. */
export function kindOfCode(code: ErrorCode): FaultKind {
  const codes: Readonly<Record<FaultKind, readonly string[]>> = CODES;
  return FAULT_KINDS.find((kind) => codes[kind].includes(code)) ?? 'argument';
}
