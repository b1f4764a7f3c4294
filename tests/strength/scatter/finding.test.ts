import { describe, expect, test } from 'vitest';
import { findingOf } from '../../../src/strength/scatter/finding.js';

describe('what an interval proves', () => {
  const between = (low: number, high: number) =>
    ({ low, high, standardDeviation: 1, level: 0.95, basis: 'replicates' }) as const;

  test.each([
    [100.1, 104, undefined, 'stronger'],
    [100, 104, undefined, 'undecided'],
    [96, 100, undefined, 'undecided'],
    [96, 99.9, undefined, 'weaker'],
    [98, 102, 2, 'equal-within-margin'],
    [97.9, 102, 2, 'undecided'],
    [98, 102.1, 2, 'undecided'],
    [101, 101.5, 2, 'equal-within-margin'],
    [103, 104, 2, 'stronger'],
  ] as const)('%d to %d %% with a margin of %s: %s', (low, high, margin, finding) => {
    expect(findingOf(between(low, high), margin)).toBe(finding);
  });

  test('nothing without one', () => {
    expect(findingOf(undefined, 2)).toBe('undecided');
  });
});
