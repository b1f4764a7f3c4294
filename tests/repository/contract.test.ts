import { describe, expect, test } from 'vitest';
import { TintladderError } from '../../src/core/index.js';
import { COLORIMETRY } from './contract/colorimetry.js';
import { EVIDENCE } from './contract/evidence.js';
import { EXCHANGE } from './contract/exchange.js';
import { FITS } from './contract/fits.js';
import { garbageCalls } from './contract/garbage.js';
import { PRODUCTION } from './contract/production.js';
import { REPORT } from './contract/report.js';
import { RUBOUT } from './contract/rubout.js';
import type { RoomContract } from './contract/sound-calls.js';
import { STRENGTH } from './contract/strength.js';
import { STUDY } from './contract/study.js';

// What is passed is checked: every exported function refuses null, missing arguments, texts, lists and flags in the wrong place, numbers that are
// none, and options it has not, with a TintladderError. Nothing else is thrown, and nothing is computed from garbage.

const ROOMS: Readonly<Record<string, { contract: RoomContract; load: () => Promise<object> }>> = {
  colorimetry: { contract: COLORIMETRY, load: () => import('../../src/colorimetry/index.js') },
  fits: { contract: FITS, load: () => import('../../src/fits/index.js') },
  rubout: { contract: RUBOUT, load: () => import('../../src/rubout/index.js') },
  exchange: { contract: EXCHANGE, load: () => import('../../src/exchange/index.js') },
  study: { contract: STUDY, load: () => import('../../src/study/index.js') },
  production: { contract: PRODUCTION, load: () => import('../../src/production/index.js') },
  report: { contract: REPORT, load: () => import('../../src/report/index.js') },
  strength: { contract: STRENGTH, load: () => import('../../src/strength/index.js') },
  evidence: { contract: EVIDENCE, load: () => import('../../src/evidence/index.js') },
};

type Callable = (...args: readonly unknown[]) => unknown;

/** What came of a call: refused as it should be, or what went wrong. */
async function outcomeOf(call: Callable, args: readonly unknown[]): Promise<string> {
  try {
    const result = await call(...args);
    if (typeof result === 'object' && result !== null && Symbol.asyncIterator in result) {
      for await (const _ of result as AsyncIterable<unknown>);
    }
    return `returned ${JSON.stringify(result)?.slice(0, 80)}`;
  } catch (error) {
    return error instanceof TintladderError ? 'refused' : `threw ${error}`;
  }
}

async function violations(call: Callable, make: () => Parameters<typeof garbageCalls>[0]): Promise<readonly string[]> {
  const found: string[] = [];
  for (const { what, args } of garbageCalls(make())) {
    const outcome = await outcomeOf(call, args);
    if (outcome !== 'refused') found.push(`${what}: ${outcome}`);
  }
  return found;
}

describe.each(Object.entries(ROOMS))('%s', async (_, { contract, load }) => {
  const exported = Object.entries(await load());
  const functions = exported.filter(
    (entry): entry is [string, Callable] => typeof entry[1] === 'function' && entry[0] !== 'TintladderError',
  );
  const { calls, notYet } = contract;

  test('has a sound call for every function that keeps the contract, and lists no other', () => {
    const names = functions.map(([name]) => name);
    expect(Object.keys(calls).filter((name) => !names.includes(name))).toEqual([]);
    expect(names.filter((name) => !(name in calls) && !notYet.includes(name))).toEqual([]);
    expect(notYet.filter((name) => !names.includes(name))).toEqual([]);
  });

  test.each(functions.filter(([name]) => name in calls))('%s takes its sound call', async (name, call) => {
    expect(await outcomeOf(call, calls[name]().args)).toMatch(/^returned/);
  });

  test.each(functions.filter(([name]) => name in calls && !notYet.includes(name)))(
    '%s refuses everything else',
    async (name, call) => {
      expect(await violations(call, calls[name])).toEqual([]);
    },
  );

  test.each(functions.filter(([name]) => name in calls && notYet.includes(name)))(
    '%s does not keep the contract yet',
    async (name, call) => {
      expect(await violations(call, calls[name]), `${name} keeps it now: take it out of notYet`).not.toEqual([]);
    },
  );
});
