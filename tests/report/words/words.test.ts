import { expect, test } from 'vitest';
import * as words from '../../../src/report/words/words.js';

test('the words can’t be changed from outside', () => {
  const lists = [
    words.CAUSE_STANDING_WORDS,
    words.CRITERION_WORDS,
    words.RUB_OUT_CAUSE_WORDS,
    words.RUB_OUT_DIRECTION_WORDS,
    words.RUB_OUT_FINDING_WORDS,
    words.FINDING_WORDS,
    words.OUTCOME_WORDS,
  ];
  for (const list of lists) expect(Object.isFrozen(list)).toBe(true);
});
