// The published checks, a strength, a rub-out and a file once in Deno, against the package as packed from dist/.
import { execFileSync } from 'node:child_process';
import { copyFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { createDenoProject } from './deno-project.mjs';

const root = join(import.meta.dirname, '..');

const USE = `
import { D65_10 } from 'npm:tintladder/colorimetry';
import { readMeasurements } from 'npm:tintladder/exchange';
import { fitGrindCurve } from 'npm:tintladder/fits';
import { renderHtml } from 'npm:tintladder/report';
import { groupReadings } from 'npm:tintladder/evidence';
import { assessRubOut } from 'npm:tintladder/rubout';
import { relativeTintingStrength } from 'npm:tintladder/strength';
import { evaluateStudy, parseStudy } from 'npm:tintladder/study';
import { checkPublished } from './published-checks.mjs';

const { pairs, faults } = checkPublished();
if (pairs !== 44) faults.push(pairs + ' published pairs instead of 44');

const truth = JSON.parse(await Deno.readTextFile('truth.json'));
const { measurements } = readMeasurements(await Deno.readFile('readings.csv'));
const named = (start) => measurements.filter(({ name }) => name.startsWith(start)).map(({ spectrum }) => spectrum);
const surface = { external: 0.04, internal: 0.6, specular: 'included' };
const read = (pattern) => groupReadings(measurements, pattern).groups.map(({ readings }) => readings);
const [white] = read('WB white {drawdown}');
const options = { viewing: D65_10, white, surface, criterion: 'absorption-maximum' };
const [reference, trial] = read('WB {package} unrubbed {weighing}-{spot}');
const { percent, interval } = relativeTintingStrength(reference, trial, options);
if (!(interval.low < truth.A.strength && truth.A.strength < interval.high)) faults.push('strength ' + percent);
const { direction } = assessRubOut({ spot: named('SB B unrubbed') }, { spot: named('SB B rubbed') }, { viewing: D65_10, surface });
if (direction?.towards !== 'more-colour') faults.push('rub-out: ' + direction?.towards);
const study = parseStudy(JSON.parse(await Deno.readTextFile('study.json')));
const html = renderHtml(await evaluateStudy(study, measurements));
if (!html.includes('<svg')) faults.push('report without figures');
const grind = [1, 2, 4, 8, 16].map((time) => ({ time, strength: (120 * time) / (time + 2) }));
if (typeof fitGrindCurve(grind) !== 'object') faults.push('no grind curve');

if (faults.length > 0) throw new Error(faults.join('\\n'));
console.log(pairs + ' published pairs hold; strength ' + percent.toFixed(1) + ' %, rub-out ' + direction?.towards + ', report ' + html.length + ' characters');
`;

const { folder, deno, env, remove } = createDenoProject('deno');
try {
  await build({
    entryPoints: [join(root, 'tests', 'browser', 'published-checks.mjs')],
    outfile: join(folder, 'published-checks.mjs'),
    bundle: true,
    format: 'esm',
    external: ['tintladder/*'],
    logLevel: 'warning',
  });
  for (const file of ['readings.csv', 'study.json', 'truth.json']) {
    copyFileSync(join(root, 'examples', 'dispersant-screening', file), join(folder, file));
  }
  writeFileSync(join(folder, 'use.mjs'), USE);
  // no network and no environment but NODE_ENV, which colorjs.io reads when it loads
  const args = ['run', '--no-prompt', `--allow-read=${folder}`, '--allow-env=NODE_ENV', 'use.mjs'];
  console.log(execFileSync(deno, args, { cwd: folder, env, encoding: 'utf8' }).trim());
  console.log(execFileSync(deno, ['--version'], { env, encoding: 'utf8' }).split('\n')[0]);
} finally {
  remove();
}
