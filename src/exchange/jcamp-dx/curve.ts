import { TintladderError } from '../../core/index.js';
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
export function readCurve(block: Block): CurvePoint[] {
  const data = block.records.get('XYDATA');
  const points = block.records.get('XYPOINTS');
  if (data && /^\(X\+\+\(Y\.\.Y\)\)/i.test(data.value.replace(/\s/g, ''))) return readEvenCurve(block, data);
  if (points && /^\(XY\.\.XY\)/i.test(points.value.replace(/\s/g, ''))) return readPoints(block, points);
  const other = data ?? points;
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

function readPoints(block: Block, data: LabelledRecord): CurvePoint[] {
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
