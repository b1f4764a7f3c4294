import fc from 'fast-check';
import { expect, test } from 'vitest';
import { TintladderError } from '../../src/index.js';

test('the message is a sentence made of path, value received, value expected and mend', () => {
  const error = new TintladderError('reflectance-out-of-range', {
    path: 'reflectance at 430 nm (index 3)',
    received: 57.2,
    expected: 'a fraction from 0 to 2',
    hint: "Pass scale: 'percent'?",
  });
  expect(error.message).toBe(
    "reflectance at 430 nm (index 3) is 57.2; a fraction from 0 to 2 is expected. Pass scale: 'percent'?",
  );
  expect(error).toBeInstanceOf(Error);
  expect(error).toMatchObject({ name: 'TintladderError', code: 'reflectance-out-of-range', received: 57.2 });
});

test('a long value is cut in the message and kept whole in the field', () => {
  const received = 'x'.repeat(500);
  const error = new TintladderError('malformed', { path: 'line 3', received, expected: 'a number' });
  expect(error.message.length).toBeLessThan(120);
  expect(error.received).toBe(received);
});

test('whatever was received, saying so does not fail in its turn (seed 5)', () => {
  const circular: { self?: unknown } = {};
  circular.self = circular;
  for (const received of [circular, 10n, { big: 10n }, Symbol('s'), undefined, null, () => 1, new Map([[1, 2]])]) {
    const error = new TintladderError('malformed', { path: 'value', received, expected: 'a number' });
    expect(error.message).toMatch(/^value is .*; a number is expected\.$/);
  }
  fc.assert(
    fc.property(fc.anything(), (received) => {
      expect(new TintladderError('malformed', { path: 'p', received, expected: 'e' }).message).toContain('p is ');
    }),
    { seed: 5 },
  );
});
