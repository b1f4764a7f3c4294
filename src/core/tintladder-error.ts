import { ERROR_CODES, type ErrorCode, FAULT_KINDS, type FaultKind, kindOfCode } from './error-codes.js';
import { plainValue } from './plain-value.js';

/** The parts of a fault. */
export interface Fault {
  /** Where it is: an argument or a property of it, a place in a file, a wavelength. */
  readonly path: string;
  /** The value that was found there, not words about it. */
  readonly received: unknown;
  /** What is expected there: a noun phrase without punctuation at its end. */
  readonly expected: string;
  /** What the caller can do about it: a sentence. */
  readonly hint?: string | undefined;
  /** @default the kind that the code stands for */
  readonly kind?: FaultKind | undefined;
}

/** A fault as plain data, for JSON and for messages between threads. */
export interface PlainError {
  readonly name: 'TintladderError';
  readonly code: ErrorCode;
  readonly kind: FaultKind;
  readonly path: string;
  readonly received?: unknown;
  readonly expected: string;
  readonly hint?: string;
  readonly message: string;
}

/**
 * The one error class of the package.
 *
 * The message is put together from the parts, so that people and programs read the same facts. `received` is the value that was found, as
 * plain data of at most 200 characters.
 *
 * @param code - what kind of fault
 * @param fault - where it is, the value seen, the value expected and, where there is one, a way to mend it
 * @example new TintladderError('not-finite', { path: 'sample.L', received: 'x', expected: 'a finite number' }).message
 * // 'sample.L: expected a finite number, got "x".'
 */
export class TintladderError extends Error {
  override readonly name = 'TintladderError';
  readonly code: ErrorCode;
  readonly kind: FaultKind;
  readonly path: string;
  readonly received: unknown;
  readonly expected: string;
  declare readonly hint?: string;

  constructor(code: ErrorCode, { path, received, expected, hint, kind = kindOfCode(code) }: Fault) {
    const found = plainValue(received);
    super(`${path}: expected ${expected}, got ${show(found)}.${hint ? ` ${hint}` : ''}`);
    this.code = code;
    this.kind = kind;
    this.path = path;
    this.received = found;
    this.expected = expected;
    if (hint !== undefined) this.hint = hint;
  }

  /** The fault as plain data: what `JSON.stringify` writes, and what to post from a worker, where a copy of an error loses its fields. */
  toJSON(): PlainError {
    const { name, code, kind, path, received, expected, hint, message } = this;
    return {
      name,
      code,
      kind,
      path,
      ...(received !== undefined && { received: inJson(received) }),
      expected,
      ...(hint !== undefined && { hint }),
      message,
    };
  }

  /**
   * Brings a fault back from {@link toJSON} after JSON or a structured clone.
   *
   * @param plain - what `toJSON` gave
   * @returns an error with the same parts and message
   * @throws TintladderError `wrong-type` if it is no fault of this package
   */
  static from(plain: unknown): TintladderError {
    if (!isPlainError(plain)) {
      throw new TintladderError('wrong-type', {
        path: 'plain',
        received: plain,
        expected: 'what toJSON of a TintladderError gave',
      });
    }
    const error = new TintladderError(plain.code, { ...plain, received: plain.received });
    // The message is kept as it was told: the text of a number that JSON has not, such as NaN, comes back as a string.
    error.message = plain.message;
    return error;
  }
}

/** JSON has numbers that are finite only; the others go as their names. */
function inJson(received: unknown): unknown {
  return typeof received === 'number' && !Number.isFinite(received) ? String(received) : received;
}

function isPlainError(plain: unknown): plain is PlainError {
  if (typeof plain !== 'object' || plain === null) return false;
  const { name, code, kind, path, expected, hint, message }: { [Part in keyof PlainError]?: unknown } = plain;
  return (
    name === 'TintladderError' &&
    ERROR_CODES.some((known) => known === code) &&
    FAULT_KINDS.some((known) => known === kind) &&
    (hint === undefined || typeof hint === 'string') &&
    [path, expected, message].every((part) => typeof part === 'string')
  );
}

/** The value as the message shows it: shorter than it is kept. */
function show(value: unknown): string {
  if (typeof value === 'string') return JSON.stringify(value.length > 60 ? `${value.slice(0, 57)}...` : value);
  if (typeof value !== 'object' || value === null) return String(value);
  const text = JSON.stringify(value);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}
