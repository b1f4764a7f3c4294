import { TintladderError } from '../../core/index.js';
import type { Notes } from '../text/notes.js';
import { decodeAsdf } from './asdf.js';
import type { Block, LabelledRecord } from './records.js';

/** One point of a curve, in the units of its axes. */
export interface CurvePoint {
  readonly x: number;
  readonly y: number;
  readonly line: number;
}

/**
 * The points of a block's curve.
 *
 * The abscissae of `XYDATA` are evenly spaced from `FIRSTX` to `LASTX`; those written at the starts of the lines check that no line is missing.
 *
 * @throws TintladderError `unsupported-quantity` for data in another form; `no-header` for a missing record; `count-mismatch` with `NPOINTS`;
 * `malformed` for a line that is out of place; `not-a-number`
 */
export function readCurve(block: Block, notes: Notes): CurvePoint[] {
  const points = readPoints(block);
  checkCurve(block, points, notes);
  return points;
}

function readPoints(block: Block): CurvePoint[] {
  const data = block.records.get('XYDATA');
  const pairs = block.records.get('XYPOINTS');
  if (data && /^\(X\+\+\(Y\.\.Y\)\)/i.test(data.value.replace(/\s/g, ''))) return readEvenCurve(block, data);
  // some write pairs under the label of evenly spaced data
  for (const record of [pairs, data]) {
    if (record && /^\(XY\.\.XY\)/i.test(record.value.replace(/\s/g, ''))) return readPairs(block, record);
  }
  const other = data ?? pairs;
  throw new TintladderError('unsupported-quantity', {
    path: `line ${other?.line ?? block.line}, column 1`,
    received: other?.value ?? '',
    expected: 'XYDATA=(X++(Y..Y)) or XYPOINTS=(XY..XY)',
  });
}

function readEvenCurve(block: Block, data: LabelledRecord): CurvePoint[] {
  const first = numberOf(block, 'FIRSTX');
  const last = numberOf(block, 'LASTX');
  const count = numberOf(block, 'NPOINTS');
  const xFactor = numberOf(block, 'XFACTOR', 1);
  const yFactor = numberOf(block, 'YFACTOR', 1);
  if (!(Number.isInteger(count) && count >= 2)) {
    const path = `line ${block.records.get('NPOINTS')?.line ?? block.line}, column 1`;
    throw new TintladderError('grid-invalid', { path, received: count, expected: 'at least two readings' });
  }
  const decoded = decodeAsdf(data.lines);
  expectCount(
    block,
    decoded.reduce((sum, { ordinates }) => sum + ordinates.length, 0),
  );
  const step = (last - first) / (count - 1);
  const points: CurvePoint[] = [];
  for (const { abscissa, ordinates, line } of decoded) {
    // a line that repeats the last ordinate as a check may start at that ordinate or at the next
    const expected = first + points.length * step;
    const off = Math.min(Math.abs(abscissa * xFactor - expected), Math.abs(abscissa * xFactor - expected + step));
    if (!(off <= Math.abs(step) * 0.51)) {
      throw new TintladderError('malformed', {
        path: `line ${line}, column 1`,
        received: abscissa * xFactor,
        expected: `${Number(expected.toPrecision(8))}, where the line before ended`,
        hint: 'A line may be missing; export the file again.',
      });
    }
    for (const ordinate of ordinates) points.push({ x: first + points.length * step, y: ordinate * yFactor, line });
  }
  return points;
}

function readPairs(block: Block, data: LabelledRecord): CurvePoint[] {
  const xFactor = numberOf(block, 'XFACTOR', 1);
  const yFactor = numberOf(block, 'YFACTOR', 1);
  const numbers = data.lines.flatMap(({ text, line }) =>
    text
      .split(/[\s,;]+/)
      .filter((part) => part !== '')
      .map((part) => ({ value: toNumber(part, line), line })),
  );
  if (numbers.length % 2 === 1) {
    throw new TintladderError('count-mismatch', {
      path: `line ${numbers[numbers.length - 1].line}, column 1`,
      received: numbers.length,
      expected: 'pairs of an abscissa and an ordinate',
    });
  }
  const points: CurvePoint[] = [];
  for (let i = 0; i < numbers.length; i += 2) {
    points.push({ x: numbers[i].value * xFactor, y: numbers[i + 1].value * yFactor, line: numbers[i].line });
  }
  expectCount(block, points.length);
  return points;
}

/** Relative difference that the rounding of a printed ordinate explains. */
const ROUNDING = 1e-3;

/**
 * Compares the curve with `FIRSTY`, `MINY` and `MAXY`, which may be written with or without the factor. A first ordinate that is another is a damaged
 * or misread file; other limits are noted.
 *
 * @throws TintladderError `malformed`
 */
function checkCurve(block: Block, points: readonly CurvePoint[], notes: Notes): void {
  const factor = numberOf(block, 'YFACTOR', 1);
  const ordinates = points.map(({ y }) => y);
  const agrees = (label: string, found: number) => {
    const record = block.records.get(label);
    const stated = record ? Number(record.value) : Number.NaN;
    if (!Number.isFinite(stated)) return true;
    const near = (value: number) =>
      Math.abs(stated - value) <= ROUNDING * Math.max(Math.abs(value), Math.abs(stated)) + Math.abs(factor);
    return near(found) || near(found / factor);
  };
  if (points.length > 0 && !agrees('FIRSTY', ordinates[0])) {
    throw new TintladderError('malformed', {
      path: `line ${points[0].line}, column 1`,
      received: ordinates[0],
      expected: `${block.records.get('FIRSTY')?.value}, as FIRSTY says`,
      hint: 'The file may be damaged or edited; export it again.',
    });
  }
  for (const [label, found] of [
    ['MINY', Math.min(...ordinates)],
    ['MAXY', Math.max(...ordinates)],
  ] as const) {
    if (agrees(label, found)) continue;
    const message = `${label} differs from the data; the data were taken.`;
    const { line = block.line, value = '' } = block.records.get(label) ?? {};
    notes.add('limits-differ', message, `line ${line}, column 1`, { stated: value, found });
  }
}

function expectCount(block: Block, found: number): void {
  const record = block.records.get('NPOINTS');
  if (!record || Number(record.value) === found) return;
  throw new TintladderError('count-mismatch', {
    path: `line ${record.line}, column 1`,
    received: found,
    expected: `${record.value} points, as NPOINTS says`,
    hint: 'The file may be cut off or edited; export it again.',
  });
}

function toNumber(text: string, line: number): number {
  const value = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:E[+-]?\d+)?$/i.test(text) ? Number(text) : Number.NaN;
  if (Number.isFinite(value)) return value;
  throw new TintladderError('not-a-number', { path: `line ${line}, column 1`, received: text, expected: 'a number' });
}

function numberOf({ records, line }: Block, label: string, otherwise?: number): number {
  const record = records.get(label);
  if (record) return toNumber(record.value, record.line);
  if (otherwise !== undefined) return otherwise;
  throw new TintladderError('no-header', {
    path: `line ${line}, column 1`,
    received: '',
    expected: `##${label}=`,
  });
}
