import { inventedStudy } from '../../report/fixture/invented-study.js';
import { MEASUREMENT } from './exchange.js';
import type { RoomContract } from './sound-calls.js';

const RESULT = inventedStudy();
const OPTIONS = { report: 'short', identity: { date: '2026-01-01', inputs: [{ name: 'a.csv', digest: 'af' }] } };
const WORDS = { id: 'chart', title: 'Invented', description: 'A: 1.' };
const LINES = [{ value: 100, label: 'reference', kind: 'reference' }];
const FILE = {
  format: 'delimited-text',
  measurements: [MEASUREMENT],
  tables: [{ line: 1, count: 1, grid: { start: 400, step: 10, count: 31 }, scale: 'fraction', scaleFrom: 'stated' }],
  warnings: [{ code: 'names-numbered', message: 'Invented.' }],
};

export const REPORT: RoomContract = {
  notYet: [],
  calls: {
    intervalChart: () => ({
      args: [
        {
          ...WORDS,
          axisLabel: 'Strength, %',
          rows: [{ label: 'A', value: 104, interval: { low: 103, high: 105 }, style: 1 }],
          lines: LINES,
          range: [90, 110],
          decimals: 1,
          width: 360,
        },
      ],
      options: [0],
    }),
    lineChart: () => ({
      args: [
        {
          ...WORDS,
          xLabel: 'Parts',
          yLabel: 'K/S',
          series: [
            {
              label: 'A',
              curve: [
                [0, 0],
                [1, 1],
              ],
              points: [[1, 1]],
              intervals: [{ x: 1, low: 0, high: 2 }],
              style: 1,
            },
          ],
          lines: LINES,
          xRange: [0, 2],
          yRange: [0, 2],
          width: 360,
          height: 230,
        },
      ],
      options: [0],
    }),
    renderHtml: () => ({ args: [RESULT, OPTIONS], optional: [1], options: [1], results: [0] }),
    renderInspection: () => ({
      args: [FILE, { colour: true, most: 3 }],
      optional: [1],
      options: [1],
      infinite: ['most'],
    }),
    renderMarkdown: () => ({ args: [RESULT, OPTIONS], optional: [1], options: [1], results: [0] }),
    renderText: () => ({
      args: [RESULT, { ...OPTIONS, width: 80, colour: false }],
      optional: [1],
      options: [1],
      results: [0],
    }),
    rubOutPlane: () => ({
      args: [{ ...WORDS, points: [{ label: 'A', dL: 1, da: 0.5, db: -1, style: 1 }], limit: 1, reach: 2 }],
      options: [0],
    }),
    toCsv: () => ({ args: [RESULT], results: [0] }),
  },
};
