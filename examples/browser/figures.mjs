// The page's three figures as SVG. Each reads as one image with a title and, in words, what it shows.
import { drawing } from './element.mjs';
import { fixed } from './words.mjs';

const WIDTH = 400;
const at = (value) => Math.round(value * 10) / 10;
const write = (x, y, text, attributes = {}) => drawing('text', { x: at(x), y: at(y), ...attributes }, text);
const line = (x1, y1, x2, y2, name) => drawing('line', { x1: at(x1), y1: at(y1), x2: at(x2), y2: at(y2), class: name });
const scale =
  ([from, to], [low, high]) =>
  (value) =>
    low + ((value - from) / (to - from)) * (high - low);

function figure({ id, title, description, height }, ...children) {
  return drawing(
    'svg',
    { viewBox: `0 0 ${WIDTH} ${height}`, role: 'img', 'aria-labelledby': `${id}-title ${id}-description` },
    drawing('title', { id: `${id}-title` }, title),
    drawing('desc', { id: `${id}-description` }, description),
    ...children,
  );
}

/** Round steps over a range, not many more than `count` of them. */
function ticksOf([low, high], count = 5) {
  const rough = (high - low) / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([10, 5, 2].find((factor) => rough / power > factor / 2) ?? 1);
  const first = Math.ceil(low / step - 1e-9);
  const length = Math.floor(high / step + 1e-9) - first + 1;
  return Array.from({ length }, (_, i) => Number(((first + i) * step).toPrecision(6)));
}

/** Heights moved apart so that labels don't cover each other. */
function spread(heights, gap) {
  const placed = [...heights];
  let last = Number.NEGATIVE_INFINITY;
  for (const i of heights.map((_, i) => i).sort((i, j) => heights[i] - heights[j])) {
    placed[i] = last = Math.max(heights[i], last + gap);
  }
  return placed;
}

/** Reflectance over wavelength; each curve is named at its end. */
export function reflectanceChart(curves) {
  const { start, interval, values } = curves[0].spectrum;
  const [left, right, top, bottom] = [38, 300, 22, 226];
  const xs = [start, start + interval * (values.length - 1)];
  const highest = Math.max(...curves.map(({ spectrum }) => Math.max(...spectrum.values)));
  const ys = [0, Math.ceil(highest * 10) * 10];
  const [x, y] = [scale(xs, [left, right]), scale(ys, [bottom, top])];
  const ends = curves.map(({ spectrum }) => y(100 * spectrum.values[spectrum.values.length - 1]));
  const labels = spread(ends, 14);
  return figure(
    {
      id: 'reflectance',
      title: 'Reflectance',
      description: curves
        .map(({ name, spectrum }) => {
          const lowest = spectrum.values.indexOf(Math.min(...spectrum.values));
          return `${name}: lowest with ${fixed(100 * spectrum.values[lowest], 1)} % at ${start + interval * lowest} nm.`;
        })
        .join(' '),
      height: 262,
    },
    ticksOf(xs).map((tick) => [
      line(x(tick), top, x(tick), bottom, 'grid'),
      write(x(tick), bottom + 15, String(tick), { 'text-anchor': 'middle', class: 'tick' }),
    ]),
    ticksOf(ys).map((tick) => [
      line(left, y(tick), right, y(tick), tick === 0 ? 'axis' : 'grid'),
      write(left - 5, y(tick) + 4, String(tick), { 'text-anchor': 'end', class: 'tick' }),
    ]),
    write((left + right) / 2, bottom + 31, 'Wavelength, nm', { 'text-anchor': 'middle' }),
    write(2, 11, 'Reflectance, %'),
    curves.map(({ name, spectrum, dash }, i) => {
      const points = Array.from(
        spectrum.values,
        (value, band) => `${at(x(start + interval * band))},${at(y(100 * value))}`,
      );
      return drawing(
        'g',
        { class: `series-${i}` },
        drawing('polyline', { class: 'curve', points: points.join(' '), 'stroke-dasharray': dash }),
        line(right + 2, ends[i], right + 12, labels[i], 'curve'),
        write(right + 15, labels[i] + 4, name, { class: 'name' }),
      );
    }),
  );
}

/** Strength by each criterion with its interval, against 100 %. */
export function strengthChart(rows) {
  const [left, right, top] = [196, 384, 20];
  const bottom = top + 26 * rows.length + 4;
  const ends = rows.flatMap(({ percent, interval }) => [percent, interval?.low ?? percent, interval?.high ?? percent]);
  const [low, high] = [Math.min(100, ...ends), Math.max(100, ...ends)];
  const margin = Math.max(1, 0.08 * (high - low));
  const domain = [low - margin, high + margin];
  const x = scale(domain, [left, right]);
  return figure(
    {
      id: 'strengths',
      title: 'Strength of the trial by every criterion, with its 95 % interval',
      description: rows.map(({ words, percent }) => `${words}: ${fixed(percent, 1)} %.`).join(' '),
      height: bottom + 36,
    },
    ticksOf(domain, 4).map((tick) => [
      line(x(tick), top, x(tick), bottom, 'grid'),
      write(x(tick), bottom + 15, String(tick), { 'text-anchor': 'middle', class: 'tick' }),
    ]),
    line(left, bottom, right, bottom, 'axis'),
    line(x(100), top - 4, x(100), bottom, 'level'),
    write(x(100), top - 8, 'reference', {
      'text-anchor': x(100) > right - 30 ? 'end' : x(100) < left + 30 ? 'start' : 'middle',
    }),
    write((left + right) / 2, bottom + 31, 'Strength, %', { 'text-anchor': 'middle' }),
    rows.map(({ words, percent, interval }, i) => {
      const y = top + 26 * (i + 0.5) + 2;
      return drawing(
        'g',
        { class: 'series-1' },
        write(0, y + 4, words),
        interval &&
          drawing('path', {
            class: 'curve',
            d: `M${at(x(interval.low))} ${y}H${at(x(interval.high))}M${at(x(interval.low))} ${y - 4}v8M${at(x(interval.high))} ${y - 4}v8`,
          }),
        drawing('circle', { class: 'dot', cx: at(x(percent)), cy: y, r: 4 }),
      );
    }),
  );
}

/** Rubbed less unrubbed: Δb* over Δa*, and ΔL* beside it on the same scale, with the limit around. */
export function rubOutChart(points, limit) {
  const side = 210;
  const [left, top] = [40, 24];
  const bottom = top + side;
  const strip = left + side + 30;
  const reach = 1.1 * Math.max(limit, ...points.flatMap(({ dL, da, db }) => [dL, da, db].map(Math.abs)));
  const x = scale([-reach, reach], [left, left + side]);
  const y = scale([-reach, reach], [bottom, top]);
  const labels = spread(
    points.map(({ dL }) => y(dL)),
    14,
  );
  const signed = (tick) => (tick > 0 ? `+${tick}` : fixed(tick, (String(tick).split('.')[1] ?? '').length));
  return figure(
    {
      id: 'rub-out',
      title: 'Rubbed less unrubbed area',
      description: `${points
        .map(({ name, dL, da, db }) => `${name}: ΔL* ${fixed(dL, 2)}, Δa* ${fixed(da, 2)}, Δb* ${fixed(db, 2)}.`)
        .join(' ')} The limit is ΔE*ab ${limit}.`,
      height: bottom + 38,
    },
    ticksOf([-reach, reach], 4).map((tick) => [
      line(x(tick), top, x(tick), bottom, tick === 0 ? 'axis' : 'grid'),
      line(left, y(tick), left + side, y(tick), tick === 0 ? 'axis' : 'grid'),
      line(strip, y(tick), strip + 24, y(tick), tick === 0 ? 'axis' : 'grid'),
      write(x(tick), bottom + 15, signed(tick), { 'text-anchor': 'middle', class: 'tick' }),
      write(left - 5, y(tick) + 4, signed(tick), { 'text-anchor': 'end', class: 'tick' }),
    ]),
    write(left + side / 2, bottom + 31, 'Δa*', { 'text-anchor': 'middle' }),
    write(2, top - 12, 'Δb*'),
    write(strip, top - 12, 'ΔL*'),
    drawing('circle', { class: 'limit', cx: at(x(0)), cy: at(y(0)), r: at(x(limit) - x(0)) }),
    [limit, -limit].map((value) => line(strip, y(value), strip + 24, y(value), 'limit')),
    points.map(({ name, dL, da, db }, i) => {
      const shape = i === 0 ? 'dot' : 'dot hollow';
      return drawing(
        'g',
        { class: `series-${i}` },
        drawing('circle', { class: shape, cx: at(x(da)), cy: at(y(db)), r: 5 }),
        drawing('circle', { class: shape, cx: strip + 12, cy: at(y(dL)), r: 5 }),
        write(strip + 32, labels[i] + 4, name, { class: 'name' }),
      );
    }),
  );
}
