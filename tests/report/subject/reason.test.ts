import { expect, test } from 'vitest';
import { reasonWords } from '../../../src/report/subject/reason.js';

const WITHOUT_INTERVAL = {
  quantity: 'strength',
  unit: '%',
  reason: '',
  value: 92,
  outcome: 'fails',
} as const;
const FAILED = { ...WITHOUT_INTERVAL, interval: { low: 91, high: 93 } } as const;

test.each([
  [{ ...FAILED, limit: { lower: 100 } }, /below 100\.0\u00a0%$/],
  [{ ...FAILED, limit: { lower: 80, upper: 90 } }, /above 90\.0\u00a0%$/],
  [{ ...FAILED, outcome: 'undecided', limit: { lower: 92.5 } } as const, /includes 92\.5\u00a0%$/],
  [{ ...FAILED, outcome: 'undecided', limit: { lower: 80, upper: 92.5 } } as const, /includes 92\.5\u00a0%$/],
  [{ ...WITHOUT_INTERVAL, outcome: 'undecided', limit: { lower: 90 } } as const, /no interval/],
])('a reason names the bound in question: %j', (judgement, expected) => {
  expect(reasonWords(judgement)).toMatch(expected);
});

test('a figure that no cell of the overview shows is quoted', () => {
  const viscosity = {
    ...WITHOUT_INTERVAL,
    quantity: 'viscosity',
    unit: 'mPa·s',
    value: 1104,
    limit: { upper: 1000 },
  };
  expect(reasonWords(viscosity)).toContain('1104\u00a0mPa·s');
  expect(reasonWords({ ...FAILED, limit: { lower: 100 } })).not.toContain('92');
});
