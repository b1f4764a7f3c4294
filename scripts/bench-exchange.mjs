// Reads 100,000 invented spectra of 31 bands beside the bare CSV parser splitting the same text, and weighs the memory in a process of its own.
// Run it after a build: node scripts/bench-exchange.mjs
import { execFileSync } from 'node:child_process';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const COUNT = 100_000;
const BANDS = 31;

function inventText() {
  let state = 20250101;
  const random = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  const lines = [`Sample,${Array.from({ length: BANDS }, (_, i) => 400 + 10 * i).join(',')}`];
  for (let n = 0; n < COUNT; n++) {
    const level = 10 + 80 * random();
    lines.push(`s${n},${Array.from({ length: BANDS }, () => (level * (0.9 + 0.1 * random())).toFixed(3)).join(',')}`);
  }
  return `${lines.join('\n')}\n`;
}

function median(values) {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}

function time(action) {
  const start = performance.now();
  action();
  return performance.now() - start;
}

async function compareTimes(text) {
  const { default: Papa } = await import('papaparse');
  const { readMeasurements } = await import('../dist/exchange.js');
  const bare = [];
  const read = [];
  for (let run = 0; run < 5; run++) {
    bare.push(time(() => Papa.parse(text, { delimiter: ',', newline: '\n' })));
    read.push(time(() => readMeasurements(text)));
  }
  console.log(
    `CSV parser ${median(bare).toFixed(0)} ms, readMeasurements ${median(read).toFixed(0)} ms, ratio ${(median(read) / median(bare)).toFixed(2)}`,
  );
}

/** Highest resident memory of a process that reads the file, less that of one that loads the same code and reads nothing. */
function peakMemory(path, code) {
  const script = `import { readFileSync } from 'node:fs';
    import { readMeasurements, readMeasurementStream } from ${JSON.stringify(new URL('../dist/exchange.js', import.meta.url).href)};
    readMeasurements('name,400,410\\na,50,51\\n');
    const path = ${JSON.stringify(path)};
    ${code}
    console.log(process.resourceUsage().maxRSS * 1024);`;
  return Number(execFileSync(process.execPath, ['--input-type=module', '-e', script], { encoding: 'utf8' }).trim());
}

const path = join(tmpdir(), `bench-exchange-${process.pid}.csv`);
try {
  writeFileSync(path, inventText());
  const size = readFileSync(path).length;
  await compareTimes(readFileSync(path, 'utf8'));
  const idle = peakMemory(path, '');
  const whole = peakMemory(
    path,
    'const read = readMeasurements(readFileSync(path)); if (read.measurements.length !== 100000) throw new Error();',
  );
  console.log(
    `file ${(size / 1e6).toFixed(1)} MB; whole-file reading takes ${((whole - idle) / size).toFixed(2)} times its size`,
  );
  const stream = `import('node:fs').then(async ({ createReadStream }) => {
      const { Readable } = await import('node:stream');
      let count = 0;
      for await (const { spectrum } of readMeasurementStream(Readable.toWeb(createReadStream(path)))) count += spectrum ? 1 : 0;
      if (count !== 100000) throw new Error();
    })`;
  const streamed = peakMemory(path, `await ${stream};`);
  console.log(
    `streaming takes ${((streamed - idle) / 1e6).toFixed(0)} MB, ${((streamed - idle) / size).toFixed(2)} times the file's size`,
  );
} finally {
  rmSync(path, { force: true });
}
