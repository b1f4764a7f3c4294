/**
 * Every kind of fault that tintladder reports, as a stable code that a program can branch on.
 *
 * One list for the package: a code means the same in every room.
 */
export type ErrorCode =
  // numbers and shapes
  | 'not-finite'
  | 'out-of-range'
  | 'wrong-length'
  | 'empty'
  | 'not-a-multiple'
  | 'invalid-option'
  // spectra and viewing
  | 'reflectance-out-of-range'
  | 'scale-mixed'
  | 'grid-invalid'
  | 'grid-mismatch'
  | 'unknown-illuminant'
  | 'unknown-observer'
  | 'illuminant-range'
  | 'conditions-mismatch'
  // Kubelka-Munk, surface and strength
  | 'zero-reflectance'
  | 'no-internal-reflectance'
  | 'film-opaque'
  | 'no-absorption'
  | 'no-solution'
  // repeated readings and evidence
  | 'repetition-unstated'
  | 'level-misplaced'
  | 'pattern-invalid'
  // fits
  | 'too-few-points'
  | 'ill-conditioned'
  | 'not-increasing'
  // rub-out and acceptance
  | 'kinds-mixed'
  | 'invalid-limit'
  | 'invalid-interval'
  // files
  | 'empty-file'
  | 'not-text'
  | 'unknown-format'
  | 'no-header'
  | 'wavelengths-uneven'
  | 'wavelength-repeated'
  | 'not-a-number'
  | 'row-length'
  | 'unsupported-quantity'
  | 'count-mismatch'
  | 'truncated'
  | 'file-too-large'
  | 'malformed'
  // studies
  | 'study-invalid'
  | 'unknown-sample'
  | 'reading-claimed-twice'
  | 'no-reference'
  | 'quantity-not-measured'
  | 'unit-mismatch';

/** The parts of a fault. `hint` says what the caller can do about it. */
export interface Fault {
  readonly path: string;
  readonly received: unknown;
  readonly expected: string;
  readonly hint?: string;
}

/**
 * The one error class of the package.
 *
 * The message is put together from the parts, so that people and programs read the same facts.
 *
 * @param code - what kind of fault
 * @param fault - where it is, the value seen, the value expected and, where there is one, a way to mend it
 * @example new TintladderError('not-finite', { path: 'sample.L', received: 'x', expected: 'a finite number' }).message
 * // 'sample.L is "x"; a finite number is expected.'
 */
export class TintladderError extends Error {
  override readonly name = 'TintladderError';
  readonly code: ErrorCode;
  readonly path: string;
  readonly received: unknown;
  readonly expected: string;
  readonly hint: string | undefined;

  constructor(code: ErrorCode, { path, received, expected, hint }: Fault) {
    super(`${path} is ${show(received)}; ${expected} is expected.${hint ? ` ${hint}` : ''}`);
    this.code = code;
    this.path = path;
    this.received = received;
    this.expected = expected;
    this.hint = hint;
  }
}

/** Long or nested values are cut: a message is for reading, `received` keeps the whole value. */
function show(value: unknown): string {
  if (typeof value === 'string') return JSON.stringify(value.length > 60 ? `${value.slice(0, 57)}...` : value);
  if (typeof value !== 'object' || value === null) return String(value);
  const text = asJson(value);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}

/** Rings and big integers have no JSON; a fault must not fail while it is being told. */
function asJson(value: object): string {
  try {
    return JSON.stringify(value) ?? 'an object';
  } catch {
    return 'an object';
  }
}
