// Damages the example files of tests/fixtures, files written from them, and others of every layout, and reads each: every outcome must be readings
// without a number that is none, or a TintladderError with a place, in no more than ten times the undamaged file's time (or 1 ms). Then reads texts
// of one token over and over, which must take no longer than ten times a good file of their length.
// npm run fuzz:exchange, or: node scripts/fuzz-exchange.mjs [cases] [seed]
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

async function bundled(path) {
  const entry = fileURLToPath(new URL(path, import.meta.url));
  const { outputFiles } = await build({
    entryPoints: [entry],
    bundle: true,
    format: 'esm',
    platform: 'node',
    write: false,
  });
  // a file, so that a stack trace is short
  const folder = mkdtempSync(join(tmpdir(), 'fuzz-exchange-'));
  const file = join(folder, 'bundle.mjs');
  writeFileSync(file, outputFiles[0].text);
  try {
    return await import(pathToFileURL(file).href);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const { MEASUREMENT_FORMATS, readMeasurements, TintladderError, writeMeasurements } =
  await bundled('../src/exchange/index.ts');
const { mutate, randomFrom, TOKENS } = await bundled('../tests/exchange/mutation.ts');

const cases = Number(process.argv[2] ?? 200_000);
const seed = Number(process.argv[3] ?? 1);
const random = randomFrom(seed);
const folder = new URL('../tests/fixtures/', import.meta.url);
const encode = (text) => new TextEncoder().encode(text);

const corpus = readdirSync(folder).flatMap((name) => {
  const bytes = new Uint8Array(readFileSync(new URL(name, folder)));
  const { measurements } = readMeasurements(bytes);
  const written = ['delimited-text', 'iso-28178', 'iso-17972'].map((format) => ({
    name: `${name} as ${format}`,
    bytes: encode(writeMeasurements(measurements, { format })),
  }));
  return [{ name, bytes }, ...written];
});
const TEXTS = {
  transposed: 'Wavelength;a;b\n400;45,5;5\n410;46,5;6\n420;47,5;7\n',
  long: 'sample,replicate,wavelength,value\na,1,400,45\na,1,410,46\na,2,400,47\na,2,410,48\n',
  modes:
    'Illuminant: D65\nName,400 SCI,410 SCI,400 SCE,410 SCE,L* (D65/10),a*,b*\nx,44,45,40,41,70,0,1\nMean,44,45,40,41,70,0,1\n',
  viewings: 'Name,L*(F2/10),a*,b*,X(D65/10),Y,Z\nx,45,1,2,14,15,16\nRemark: two coats\n',
  quantities: 'Sample name: x\n\nnm,R%,K/S\n400,40,0.45\n410,41,0.42\n',
};
for (const [name, text] of Object.entries(TEXTS)) corpus.push({ name, bytes: encode(text) });

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

/** What is unsound in an outcome, or nothing. */
function unsoundness(outcome) {
  if (outcome instanceof TintladderError)
    return /\b(line|byte) \d+|^the file$/.test(outcome.path) ? undefined : outcome;
  if (outcome instanceof Error) return outcome;
  for (const { name, spectrum, lab, xyz, colours = [] } of outcome.measurements) {
    const triples = [lab, xyz, ...colours.flatMap((colour) => [colour.lab, colour.xyz])];
    const numbers = [...(spectrum?.values ?? []), ...triples.flatMap((triple) => Object.values(triple ?? {}))];
    if (name === '' || numbers.length === 0 || !numbers.every(Number.isFinite)) return `unsound reading ${name}`;
  }
  return undefined;
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
  const allowed = file.time * Math.max(1, mutated.length / file.bytes.length);
  if (took > 10 * allowed) {
    const least = leastTime(mutated, 20);
    const ratio = (least * file.time) / (leastTime(file.bytes, 20) * allowed);
    if (ratio > slowest.ratio) slowest = { ratio, name: file.name, case: i };
    if (ratio > 10 && least > 1) fail(`${ratio.toFixed(1)} times the time of the undamaged file`);
  }
  const unsound = unsoundness(outcome);
  if (unsound) fail(unsound);
  const code = outcome instanceof TintladderError ? outcome.code : 'readings';
  codes.set(code, (codes.get(code) ?? 0) + 1);
}
if (prototype !== JSON.stringify(Reflect.ownKeys(Object.prototype).map(String)))
  throw new Error('Object.prototype was changed');
console.log(Object.fromEntries([...codes].sort((a, b) => b[1] - a[1])));
console.log(`slowest: ${slowest.ratio.toFixed(1)} times the undamaged file (case ${slowest.case} of ${slowest.name})`);

const LENGTH = 200_000;
const good = encode(`Sample,400,410\n${'white,92.45,93.17\n'.repeat(LENGTH / 18)}`);
const goodTime = leastTime(good, 5);
let worst = { ratio: 0 };
for (const token of TOKENS) {
  const run = token.repeat(Math.ceil(LENGTH / token.length));
  for (const text of [
    `${run}x`,
    `Sample,400,410\n${run}\nwhite,92,93\n`,
    `"${run}`,
    `Sample;${run};400\n`,
    `##TITLE=${run}`,
    `<CxF>${run}</CxF>`,
  ]) {
    const bytes = encode(text);
    const outcome = outcomeOf(bytes);
    const unsound = unsoundness(outcome);
    const ratio = leastTime(bytes, 2) / goodTime;
    if (ratio > worst.ratio) worst = { ratio, token, text: text.slice(0, 40) };
    if (!unsound && ratio <= 10) continue;
    console.error(
      'repeated',
      JSON.stringify(token),
      'in',
      JSON.stringify(text.slice(0, 40)),
      unsound ?? `${ratio.toFixed(1)} times a good file`,
    );
    process.exitCode = 1;
  }
}
console.log(
  `repeated tokens: at most ${worst.ratio.toFixed(1)} times a good file (${JSON.stringify(worst.token)} in ${JSON.stringify(worst.text)})`,
);
if (MEASUREMENT_FORMATS.length !== 4) throw new Error('a format has no file in the corpus');
