import { expect, test } from 'vitest';
import * as words from '../../../src/report/words/words.js';

test('the words can’t be changed from outside', () => {
  const lists = [
    words.CERTAINTY_WORDS,
    words.CRITERION_WORDS,
    words.DIAGNOSIS_WORDS,
    words.FINDING_WORDS,
    words.OUTCOME_WORDS,
  ];
  for (const list of lists) expect(Object.isFrozen(list)).toBe(true);
});
