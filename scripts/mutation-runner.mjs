// A test runner for Stryker that runs the tests of the numeric rooms inside Stryker's own process: see stryker.config.json.
//
// The runner that comes for vitest starts a fresh thread for every test file and every mutant, which makes hours of a room. The tests of these
// rooms are plain synchronous functions, so it is enough to bundle each file once and to execute the bundle anew for every mutant. That
// takes milliseconds, and nothing that a room keeps (weighting tables, observers) outlives the mutant that it was computed under.

import { readdir } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { format } from 'node:util';
import { Script } from 'node:vm';
import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  DryRunStatus,
  determineHitLimitReached,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  chai,
  GLOBAL_EXPECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
} from '@vitest/expect';
import { build } from 'esbuild';

/** Published values belong to all rooms. */
const ROOMS = (process.env.MUTATION_ROOMS ?? 'colorimetry,strength,rubout').split(',').concat('published');

/**
 * They take longer than all others together, and what they claim (coverage of intervals, recognition of causes in thousands of simulated
 * films) is about a method and not about one line of it.
 */
const SIMULATIONS = ['tests/strength/interval-coverage.test.ts', 'tests/rubout/simulation.test.ts'];

const expectation = makeExpect();

class RoomTestRunner {
  #require = createRequire(`${process.cwd()}/package.json`);
  #scripts = new Map();
  /** What the mutated code and this runner share. */
  #stryker = {};

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE] = this.#stryker;
    for (const file of await testFiles()) this.#scripts.set(file, await compile(file));
  }

  /** Every test in a load of its own, so that what is computed while a file loads, or once for it, counts for each of its tests. */
  async dryRun() {
    this.#stryker.activeMutant = undefined;
    const tests = [];
    for (const file of this.#scripts.keys()) {
      this.#stryker.currentTestId = 'listing the tests';
      for (const { id } of this.#load(file)) {
        this.#stryker.currentTestId = id;
        const started = performance.now();
        const result = await run(this.#load(file).find((test) => test.id === id));
        // With the load: what Stryker can't assign to a test it allows to every mutant, and an endless one takes all that it is allowed.
        tests.push({ ...result, timeSpentMs: performance.now() - started });
      }
    }
    delete this.#stryker.mutantCoverage?.perTest['listing the tests'];
    this.#stryker.currentTestId = undefined;
    return { status: DryRunStatus.Complete, tests, mutantCoverage: this.#stryker.mutantCoverage };
  }

  async mutantRun({ testFilter, activeMutant, hitLimit }) {
    const wanted = testFilter && new Set(testFilter);
    this.#stryker.hitCount = hitLimit === undefined ? undefined : 0;
    this.#stryker.hitLimit = hitLimit;
    this.#stryker.activeMutant = activeMutant.id;
    const tests = [];
    try {
      for (const file of this.#nearestFirst(activeMutant.fileName)) {
        if (wanted && ![...wanted].some((id) => id.startsWith(`${file} `))) continue;
        for (const test of this.#load(file)) {
          if (wanted && !wanted.has(test.id)) continue;
          tests.push(await run(test));
          if (tests.at(-1).status === TestStatus.Failed) return this.#result(tests, hitLimit);
        }
      }
    } catch (error) {
      // A room that no longer loads is noticed too.
      tests.push({ id: 'load', name: 'load', timeSpentMs: 0, status: TestStatus.Failed, failureMessage: `${error}` });
    } finally {
      this.#stryker.activeMutant = undefined;
    }
    return this.#result(tests, hitLimit);
  }

  #result(tests, hitLimit) {
    const endless = determineHitLimitReached(this.#stryker.hitCount, hitLimit);
    return toMutantRunResult(endless ?? { status: DryRunStatus.Complete, tests });
  }

  /** The tests of a file's own room are the likeliest to notice. */
  #nearestFirst(mutated) {
    const room = /src\/(\w+)\//.exec(mutated)?.[1];
    const name = /([\w-]+)\.ts$/.exec(mutated)?.[1];
    const distance = (file) => (file.includes(`/${name}.test`) ? 0 : file.startsWith(`tests/${room}/`) ? 1 : 2);
    return [...this.#scripts.keys()].sort((one, other) => distance(one) - distance(other));
  }

  #load(file) {
    const { tests, api } = collector(file);
    const require = (name) => (name === 'vitest' ? api : this.#require(name));
    const module = { exports: {} };
    this.#scripts.get(file).runInThisContext()(require, module, module.exports);
    return tests;
  }
}

async function testFiles() {
  const found = await Promise.all(
    ROOMS.map(async (room) => {
      const entries = await readdir(`tests/${room}`, { recursive: true });
      return entries.filter((entry) => entry.endsWith('.test.ts')).map((entry) => `tests/${room}/${entry}`);
    }),
  );
  return found.flat().filter((file) => !SIMULATIONS.includes(file));
}

async function compile(file) {
  const { outputFiles } = await build({
    entryPoints: [file],
    // Stryker changes to its copy of the sources after this file was loaded, and esbuild remembers where it was.
    absWorkingDir: process.cwd(),
    bundle: true,
    write: false,
    format: 'cjs',
    platform: 'node',
    target: 'node20',
    packages: 'external',
    logLevel: 'silent',
  });
  return new Script(`(function (require, module, exports) {${outputFiles[0].text}\n})`, { filename: file });
}

/** `describe`, `test` and `expect` as the test files import them, and the tests that they then make. */
function collector(file) {
  const tests = [];
  const path = [];
  const each = (register) => (cases) => (name, body) => {
    cases.forEach((one) => {
      const values = Array.isArray(one) ? one : [one];
      register(format(name, ...values), () => body(...values));
    });
  };
  const describe = (name, body) => {
    path.push(name);
    body();
    path.pop();
  };
  const test = (name, body) => {
    const title = [...path, name].join(' > ');
    // Not by its title: a mutant that changes a value in a table of cases must not hide the case that notices.
    tests.push({ id: `${file} ${tests.length}`, name: title, fileName: file, body });
  };
  const api = {
    describe: Object.assign(describe, { each: each(describe) }),
    test: Object.assign(test, { each: each(test) }),
    expect: expectation,
  };
  return { tests, api };
}

async function run({ id, name, fileName, body }) {
  const started = performance.now();
  const result = (rest) => ({ id, name, fileName, timeSpentMs: performance.now() - started, ...rest });
  try {
    await body();
    return result({ status: TestStatus.Success });
  } catch (error) {
    return result({ status: TestStatus.Failed, failureMessage: `${error}` });
  }
}

function makeExpect() {
  for (const plugin of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(plugin);
  const expect = (value, message) => chai.expect(value, message);
  Object.assign(expect, chai.expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT]);
  globalThis[GLOBAL_EXPECT] = expect;
  return expect;
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'rooms', RoomTestRunner)];
