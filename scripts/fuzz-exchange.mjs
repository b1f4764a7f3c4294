// Damages the example files of tests/fixtures, and files written from them, and reads each: every outcome must be readings without a number that is
// none, or a TintladderError with a place, in no more than ten times the undamaged file's time (or 1 ms).
// Run it after a build: node scripts/fuzz-exchange.mjs [cases] [seed]
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { readMeasurements, TintladderError, writeMeasurements } from '../dist/exchange.js';

const mutation = fileURLToPath(new URL('../tests/exchange/mutation.ts', import.meta.url));
const { outputFiles } = await build({ entryPoints: [mutation], format: 'esm', write: false });
const { mutate, randomFrom } = await import(`data:text/javascript,${encodeURIComponent(outputFiles[0].text)}`);

const cases = Number(process.argv[2] ?? 200_000);
const seed = Number(process.argv[3] ?? 1);
const random = randomFrom(seed);
const folder = new URL('../tests/fixtures/', import.meta.url);

const corpus = readdirSync(folder).flatMap((name) => {
  const bytes = new Uint8Array(readFileSync(new URL(name, folder)));
  const { measurements } = readMeasurements(bytes);
  const written = ['delimited-text', 'iso-28178'].map((format) => ({
    name: `${name} as ${format}`,
    bytes: new TextEncoder().encode(writeMeasurements(measurements, { format })),
  }));
  return [{ name, bytes }, ...written];
});
const transposed = 'Wavelength;a;b\n400;45,5;5\n410;46,5;6\n420;47,5;7\n';
const long = 'sample,replicate,wavelength,value\na,1,400,45\na,1,410,46\na,2,400,47\na,2,410,48\n';
corpus.push(
  { name: 'transposed', bytes: new TextEncoder().encode(transposed) },
  { name: 'long', bytes: new TextEncoder().encode(long) },
);

const prototype = JSON.stringify(Reflect.ownKeys(Object.prototype).map(String));
const codes = new Map();

function outcomeOf(bytes) {
  try {
    return readMeasurements(bytes);
  } catch (error) {
    return error;
  }
}

function time(bytes) {
  const start = performance.now();
  outcomeOf(bytes);
  return performance.now() - start;
}

/** The least of several runs: what a garbage collection adds is no property of the file. */
function leastTime(bytes, runs) {
  return Math.min(...Array.from({ length: runs }, () => time(bytes)));
}

for (let i = 0; i < 300; i++) for (const { bytes } of corpus) outcomeOf(bytes);
for (const file of corpus) file.time = leastTime(file.bytes, 20);
let slowest = { ratio: 0 };
console.log(`${cases} cases, seed ${seed}`);
for (let i = 0; i < cases; i++) {
  const file = corpus[i % corpus.length];
  const mutated = mutate(file.bytes, random);
  const fail = (reason) => {
    console.error(`case ${i} (${file.name}):`, reason, JSON.stringify(new TextDecoder().decode(mutated)));
    process.exit(1);
  };
  const start = performance.now();
  const outcome = outcomeOf(mutated);
  const took = performance.now() - start;
  if (took > 10 * file.time) {
    const least = leastTime(mutated, 20);
    const ratio = least / leastTime(file.bytes, 20);
    if (ratio > slowest.ratio) slowest = { ratio, name: file.name, case: i };
    if (ratio > 10 && least > 1) fail(`${ratio.toFixed(1)} times the time of the undamaged file`);
  }
  let code = 'readings';
  if (outcome instanceof TintladderError) {
    if (!/\b(line|byte) \d+|^the file$/.test(outcome.path)) fail(outcome);
    code = outcome.code;
  } else if (outcome instanceof Error) fail(outcome);
  else {
    for (const { name, spectrum, lab, xyz } of outcome.measurements) {
      const numbers = [...(spectrum?.values ?? []), ...Object.values(lab ?? {}), ...Object.values(xyz ?? {})];
      if (name === '' || numbers.length === 0 || !numbers.every(Number.isFinite)) fail(`unsound reading ${name}`);
    }
  }
  codes.set(code, (codes.get(code) ?? 0) + 1);
}
if (prototype !== JSON.stringify(Reflect.ownKeys(Object.prototype).map(String)))
  throw new Error('Object.prototype was changed');
console.log(Object.fromEntries([...codes].sort((a, b) => b[1] - a[1])));
console.log(`slowest: ${slowest.ratio.toFixed(1)} times the undamaged file (case ${slowest.case} of ${slowest.name})`);
