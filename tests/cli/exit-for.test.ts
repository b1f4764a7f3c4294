import { describe, expect, test } from 'vitest';
import { assertExitFor, exitCodeFor } from '../../src/cli/exit-for.js';
import type { StudyResult } from '../../src/study/index.js';

const result = (outcomes: Record<string, 'meets' | 'fails' | 'undecided'>, recommended?: string) =>
  ({
    outcome: 'fails',
    packages: Object.entries(outcomes).map(([id, outcome]) => ({ package: { id }, outcome })),
    recommendation: { statement: '', ...(recommended && { package: recommended }) },
  }) as unknown as StudyResult;

describe('the exit code', () => {
  test.each([
    ['all', { A: 'meets', B: 'fails' }, 'A', 1],
    ['recommended', { A: 'meets', B: 'fails' }, 'A', 0],
    ['B', { A: 'meets', B: 'undecided' }, 'A', 2],
    ['recommended', { A: 'undecided', B: 'fails' }, undefined, 2],
    ['recommended', { A: 'fails', B: 'fails' }, undefined, 1],
  ] as const)('for %s of %j with %s recommended is %d', (choice, outcomes, recommended, code) => {
    expect(exitCodeFor(result(outcomes, recommended), choice)).toBe(code);
  });
});

test('a package that the study lacks is refused before any export is read', () => {
  expect(() => assertExitFor('Z', { packages: [{ id: 'A', name: 'A' }] })).toThrow(/A/);
  expect(() => assertExitFor('recommended', { packages: [] })).not.toThrow();
});
