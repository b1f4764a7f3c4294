// Speed as ratios within one run, and load times; never part of the tests. Medians of several rounds in one process, the contestants
// taking turns in each round so that a slow moment of the machine meets them all.
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { diff } from 'color-diff';
import { deltaE2000 as colorJs, Lab as colorJsLab } from 'colorjs.io/fn';
import { differenceCiede2000 } from 'culori';
import deltaE from 'delta-e';

const folder = process.argv[2] ?? 'dist';
const entry = (name) => pathToFileURL(`${folder}/${name}.js`).href;
const { D65_10, createSpectrum, deltaE2000, deltaE2000Rows, labRows, labFromSpectrum } = await import(
  entry('colorimetry')
);

const ROUNDS = 51;

/** Seeded: the same numbers in every run. */
function generator(seed) {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

function median(values) {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)];
}

/** Median rate of each contestant, in items a second. */
function race(items, contestants) {
  const times = new Map(contestants.map(({ name }) => [name, []]));
  for (let round = -20; round < ROUNDS; round++) {
    for (const { name, run } of contestants) {
      const start = performance.now();
      run();
      if (round >= 0) times.get(name).push(performance.now() - start);
    }
  }
  return new Map([...times].map(([name, ms]) => [name, (1000 * items) / median(ms)]));
}

function table(title, header, rows) {
  const lines = [header, ...rows];
  const widths = header.map((_, column) => Math.max(...lines.map((line) => line[column].length)));
  console.log(`\n${title}`);
  for (const line of lines) {
    console.log(`  ${line.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]) : cell.padStart(widths[i]))).join('  ')}`);
  }
}

const millions = (rate) => (rate / 1e6).toFixed(2);

// CIEDE2000 on random pairs: half of them anywhere in CIELAB, half a few units apart.
const PAIRS = 10_000;
const random = generator(20001);
const references = Float64Array.from({ length: 3 * PAIRS }, (_, i) => (i % 3 ? 200 * random() - 100 : 100 * random()));
const samples = references.map((value, i) =>
  i % 6 < 3 ? value + 4 * random() - 2 : i % 3 ? 200 * random() - 100 : 100 * random(),
);
const out = new Float64Array(PAIRS);
const objects = (values, make) =>
  Array.from({ length: PAIRS }, (_, i) => make(values[3 * i], values[3 * i + 1], values[3 * i + 2]));
const single = (make, difference) => {
  const first = objects(references, make);
  const second = objects(samples, make);
  return () => {
    for (let i = 0; i < PAIRS; i++) out[i] = difference(first[i], second[i]);
  };
};
const culori = differenceCiede2000();
const differences = race(PAIRS, [
  { name: 'deltaE2000Rows', run: () => deltaE2000Rows(references, samples, out) },
  {
    name: 'deltaE2000',
    run: single(
      (L, a, b) => ({ L, a, b }),
      (r, s) => deltaE2000(r, s),
    ),
  },
  { name: 'color-diff', run: single((L, a, b) => ({ L, a, b }), diff) },
  { name: 'culori', run: single((l, a, b) => ({ mode: 'lab65', l, a, b }), culori) },
  {
    name: 'delta-e',
    run: single(
      (L, A, B) => ({ L, A, B }),
      (r, s) => deltaE.getDeltaE00(r, s),
    ),
  },
  { name: 'color.js', run: single((L, a, b) => ({ space: colorJsLab, coords: [L, a, b], alpha: 1 }), colorJs) },
]);
const fastestPeer = Math.max(...['color-diff', 'culori', 'delta-e', 'color.js'].map((name) => differences.get(name)));
table(
  'CIEDE2000',
  ['', 'million pairs/s', 'x fastest peer'],
  [...differences].map(([name, rate]) => [name, millions(rate), (rate / fastestPeer).toFixed(2)]),
);

// Spectra of 31 bands to CIELAB, against a plain sum over the same memory.
const BANDS = 31;
const SPECTRA = 5_000;
const values = Float64Array.from({ length: BANDS * SPECTRA }, () => 0.02 + 0.9 * random());
const labs = new Float64Array(3 * SPECTRA);
const spectra = Array.from({ length: SPECTRA }, (_, i) =>
  createSpectrum({ start: 400, step: 10, values: values.subarray(BANDS * i, BANDS * (i + 1)), scale: 'fraction' }),
);
let sink = 0;
const conversions = race(SPECTRA, [
  {
    name: 'plain sum',
    run: () => {
      let sum = 0;
      for (let i = 0; i < values.length; i++) sum += values[i];
      sink += sum;
    },
  },
  { name: 'labRows', run: () => labRows(values, { start: 400, step: 10, count: BANDS }, D65_10, labs) },
  {
    name: 'labFromSpectrum',
    run: () => {
      for (const spectrum of spectra) sink += labFromSpectrum(spectrum, D65_10).L;
    },
  },
]);
const plainSum = conversions.get('plain sum');
table(
  'Spectra of 31 bands to CIELAB',
  ['', 'million spectra/s', '% of plain sum'],
  [...conversions].map(([name, rate]) => [name, millions(rate), ((100 * rate) / plainSum).toFixed(0)]),
);
if (!Number.isFinite(sink)) throw new Error('the sums are not finite');

// Load time of each entry in a fresh process.
const entries = ['index', 'colorimetry', 'strength', 'rubout', 'exchange', 'study', 'report', 'fits'].filter((name) =>
  existsSync(`${folder}/${name}.js`),
);
const loadTime = (name) => {
  const script = `const t = performance.now(); await import(${JSON.stringify(entry(name))}); console.log(performance.now() - t)`;
  const run = () => Number(execFileSync(process.execPath, ['--input-type=module', '-e', script], { encoding: 'utf8' }));
  return median(Array.from({ length: 7 }, run));
};
table(
  'Load time (the aim is 60 ms for all but fits)',
  ['', 'ms'],
  entries.map((name) => [name, loadTime(name).toFixed(0)]),
);
