import { TintladderError } from './tintladder-error.js';

/** Refuses the first value that is not a finite number, naming its place. */
export function assertFinite(values: Readonly<Record<string, number>>, path: string): void {
  for (const [name, value] of Object.entries(values)) refuseNonFinite(value, `${path}.${name}`);
}

/** The same for an array, naming the index. */
export function assertFiniteArray(values: ArrayLike<number>, path: string): void {
  for (let i = 0; i < values.length; i++) refuseNonFinite(values[i], `${path}[${i}]`);
}

/** The same for one value. */
export function refuseNonFinite(value: unknown, path: string): void {
  if (!Number.isFinite(value)) {
    throw new TintladderError('not-finite', { path, received: value, expected: 'a finite number' });
  }
}

/** Refuses the first option that is not a positive number. */
export function assertPositive(options: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(options)) {
    if (!(Number.isFinite(value) && value > 0)) {
      throw new TintladderError('invalid-option', {
        path: `options.${name}`,
        received: value,
        expected: 'a positive number',
      });
    }
  }
}
