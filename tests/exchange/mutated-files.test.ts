import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { type MeasurementFile, readMeasurements, TintladderError } from '../../src/exchange/index.js';
import { mutate, randomFrom } from './mutation.js';

const SEED = 20250104;
const CASES = 1_500;
const FOLDER = 'tests/fixtures';
const ownKeys = Reflect.ownKeys(Object.prototype).length;

function outcomeOf(bytes: Uint8Array): MeasurementFile | TintladderError {
  try {
    return readMeasurements(bytes);
  } catch (error) {
    if (error instanceof TintladderError) return error;
    throw error;
  }
}

/** What every outcome must be: readings without a number that is none, or a fault with a path. */
function expectSound(outcome: MeasurementFile | TintladderError): void {
  if (outcome instanceof TintladderError) {
    if (!/\b(line|byte) \d+|^the file$/.test(outcome.path))
      throw new Error(`no path: ${outcome.path}: ${outcome.message}`);
    return;
  }
  for (const { name, spectrum, lab, xyz } of outcome.measurements) {
    const numbers = [...(spectrum?.values ?? []), ...Object.values(lab ?? {}), ...Object.values(xyz ?? {})];
    if (name === '' || numbers.length === 0 || !numbers.every(Number.isFinite))
      throw new Error(`unsound: ${name} ${numbers}`);
  }
}

test.each(readdirSync(FOLDER))(
  `${CASES} damaged variants of %s end in readings or in a fault with a place (seed ${SEED})`,
  (file) => {
    const bytes = readFileSync(join(FOLDER, file));
    const random = randomFrom(SEED);
    const outcomes = { readings: 0, fault: 0 };
    for (let i = 0; i < CASES; i++) {
      const outcome = outcomeOf(mutate(bytes, random));
      expectSound(outcome);
      outcomes[outcome instanceof TintladderError ? 'fault' : 'readings']++;
    }
    expect(outcomes.readings).toBeGreaterThan(0);
    expect(outcomes.fault).toBeGreaterThan(0);
  },
  60_000,
);

test.each(readdirSync(FOLDER))(
  '%s cut at any byte ends in readings or in a fault with a place',
  (file) => {
    const bytes = readFileSync(join(FOLDER, file));
    for (let length = 0; length < bytes.length; length++) expectSound(outcomeOf(bytes.subarray(0, length)));
  },
  60_000,
);

afterAll(() => {
  expect(Reflect.ownKeys(Object.prototype).length).toBe(ownKeys);
});
