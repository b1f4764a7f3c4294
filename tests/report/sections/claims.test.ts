import { expect, test } from 'vitest';
import { studyDocument } from '../../../src/report/sections/study-document.js';
import type { PaintEvidence, StrengthComparison } from '../../../src/study/index.js';
import { inventedStudy } from '../fixture/invented-study.js';

const comparison = (trial: string, percent: number): StrengthComparison => ({
  trial,
  reference: 'R',
  percent,
  claim: 'mill-base',
  finding: 'stronger',
  basis: 'pooled',
  fromHistory: [],
  statement: `This mill base of ${trial}: ${percent} %.`,
});

const WALL: PaintEvidence = {
  paint: 'wall',
  repetitions: {},
  scatter: [
    { level: 'weighing', standardDeviation: 1.32, degreesOfFreedom: 12, sides: ['R', 'A', 'B'], blocks: 2, wider: [] },
  ],
  againstReference: [comparison('A', 109.8), comparison('B', 104.1)],
  pairs: [],
  notProvenWorse: ['A', 'B'],
  leader: { package: 'A', percent: 109.8, expected: 109.2 },
  warnings: [],
};

const blocksOf = (paints: readonly PaintEvidence[]) =>
  studyDocument({ ...inventedStudy(), evidence: { rate: 0.05, paints } }).sections.find(({ id }) => id === 'claims')
    ?.blocks;

test('every claim stands with what it rests on, the set that holds the best, and what to expect of the leader', () => {
  const [scatter, claims] = blocksOf([WALL]) ?? [];
  expect(scatter).toMatchObject({
    kind: 'paragraph',
    text: expect.stringMatching(/weigh-up.* 1\.3 %.* 3 packages.* 12 degrees/),
  });
  const texts = claims?.kind === 'list' ? claims.items.map(({ text }) => text) : [];
  expect(texts.slice(0, 2)).toEqual(WALL.againstReference.map(({ statement }) => statement));
  expect(texts[2]).toContain('Package A and Package B');
  expect(texts[3]).toContain('109.2 %');
});

test('a study without trials claims nothing', () => {
  expect(blocksOf([{ ...WALL, againstReference: [] }])).toBeUndefined();
});
