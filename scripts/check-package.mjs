// Packs the package, installs it into an empty project and uses it there the ways people will: ESM, require, TypeScript with both
// module resolutions, and the command. Also runs publint and attw on the packed file, looks at the licences of everything that comes
// with it, and prints load times.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** The lowest that the types are promised for (README). */
const LOWEST_TYPESCRIPT = '5.0';

const root = join(import.meta.dirname, '..');
const folder = mkdtempSync(join(tmpdir(), 'tintladder-package-'));

function run(command, args, cwd = folder) {
  console.log(`> ${command} ${args.join(' ')}`);
  return execFileSync(command, args, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'] });
}

const IMPORTS = `import { labFromSpectrum, createSpectrum, D65_10, TintladderError } from 'tintladder/colorimetry';
import { relativeTintingStrength } from 'tintladder/strength';
import { fitGrindCurve } from 'tintladder/fits';
import { assessRubOut } from 'tintladder/rubout';
import { readMeasurements } from 'tintladder/exchange';
import { evaluateStudy } from 'tintladder/study';
import { renderMarkdown } from 'tintladder/report';
import * as all from 'tintladder';
`;

const USE = `
const tint = (amount) => createSpectrum({
  start: 400, step: 10, scale: 'fraction',
  values: Array.from({ length: 31 }, (_, i) => {
    const ratio = 0.01 + amount * Math.exp(-(((i - 20) / 6) ** 2));
    return 1 / (1 + ratio + Math.sqrt(ratio * ratio + 2 * ratio));
  }),
});
`;

const PERMISSIVE = /^\(?(MIT|ISC|0BSD|BSD-[23]-Clause|Apache-2\.0|CC0-1\.0)\b/;

/** Every package that comes with an installation must be free to use commercially. */
function checkLicences() {
  const packages = Object.entries(JSON.parse(readFileSync(join(folder, 'package-lock.json'), 'utf8')).packages);
  const installed = packages.filter(([path]) => path !== '').map(([path]) => join(folder, path, 'package.json'));
  for (const file of installed) {
    const { name, license } = JSON.parse(readFileSync(file, 'utf8'));
    if (!PERMISSIVE.test(license ?? '')) throw new Error(`${name} has the licence ${license}`);
  }
  console.log(`licences: ${installed.length} packages, all permissive`);
}

/** The README is shown beside the installed package too: what it links to must have come along. */
function checkLinks() {
  const installed = join(folder, 'node_modules/tintladder');
  const readme = readFileSync(join(installed, 'README.md'), 'utf8');
  const links = [...readme.matchAll(/\]\(([^)#]+)[^)]*\)/g)].map(([, target]) => target);
  const missing = links.filter((link) => !/^https?:/.test(link) && !existsSync(join(installed, link)));
  if (missing.length > 0) throw new Error(`the README links to what is not packed: ${missing.join(', ')}`);
  console.log(`README: ${links.length} links, all packed`);
}

/** What an installation takes on the disk, with everything that comes along. */
function checkSize() {
  const bytes = readdirSync(join(folder, 'node_modules'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .reduce((sum, entry) => sum + statSync(join(entry.parentPath ?? entry.path, entry.name)).size, 0);
  if (bytes > 5e6) throw new Error(`an installation takes ${(bytes / 1e6).toFixed(1)} MB`);
  console.log(`installation: ${(bytes / 1e6).toFixed(1)} MB`);
}

/** Best of five fresh processes a subpath; printed and not judged, since it depends on the machine and its load. */
function reportLoadTimes() {
  for (const subpath of ['colorimetry', 'strength', 'rubout', 'exchange', 'study', 'production', 'report', 'fits']) {
    const code = `const t = performance.now(); await import('tintladder/${subpath}'); console.log(performance.now() - t)`;
    const times = Array.from({ length: 5 }, () =>
      Number(execFileSync('node', ['--input-type=module', '-e', code], { cwd: folder, encoding: 'utf8' })),
    );
    console.log(`loading tintladder/${subpath}: ${Math.min(...times).toFixed(0)} ms`);
  }
}

try {
  run('npm', ['run', '--silent', 'build'], root);
  const [{ filename }] = JSON.parse(run('npm', ['pack', '--json', '--pack-destination', folder], root));
  const packed = join(folder, filename);
  console.log(run('npx', ['publint', '--strict', packed], root).trim());
  console.log(run('npx', ['attw', '--profile', 'esm-only', packed], root).trim());

  writeFileSync(join(folder, 'package.json'), JSON.stringify({ name: 'empty', private: true, type: 'module' }));
  run('npm', ['install', '--no-audit', '--no-fund', '--silent', packed]);

  writeFileSync(
    join(folder, 'use.mjs'),
    `${IMPORTS}${USE}
const { percent } = relativeTintingStrength(tint(0.5), tint(0.55), { criterion: 'absorption-maximum', viewing: D65_10, surface: 'none' });
if (!(percent > 105 && percent < 115)) throw new Error('strength is ' + percent);
if (all.TintladderError !== TintladderError) throw new Error('two error classes');
for (const f of [labFromSpectrum, fitGrindCurve, assessRubOut, readMeasurements, evaluateStudy, renderMarkdown])
  if (typeof f !== 'function') throw new Error('missing export');
console.log('ESM: strength', percent.toFixed(2), '%');
`,
  );
  console.log(run('node', ['use.mjs']).trim());

  writeFileSync(
    join(folder, 'use.cjs'),
    `const { deltaE2000 } = require('tintladder/colorimetry');
console.log('require: ΔE00', deltaE2000({ L: 50, a: 2.6772, b: -79.7751 }, { L: 50, a: 0, b: -82.7485 }).toFixed(4));
`,
  );
  console.log(run('node', ['--no-warnings', 'use.cjs']).trim());

  writeFileSync(
    join(folder, 'use.ts'),
    `${IMPORTS}
import { adjustBatch } from 'tintladder/production';
import { compareSides, type Repeated } from 'tintladder/evidence';
import type { Spectrum } from 'tintladder/colorimetry';
import type { StudyResult } from 'tintladder/study';
const white = createSpectrum({ start: 400, step: 10, values: [0.5, 0.6], scale: 'fraction' });
const side: Repeated<Spectrum> = { weighing: [white, white] };
const surface = { external: 0.04, internal: 0.6, specular: 'included' } as const;
export const rooms = {
  strength: relativeTintingStrength(side, side, { criterion: 'tristimulus-y', viewing: D65_10, surface }).statement,
  rubOut: assessRubOut({ spot: [white] }, { spot: [white] }, { viewing: D65_10, surface: 'none' }).outcome,
  batch: adjustBatch({ percent: 104 }, { kind: 'colorant', mass: 100, correction: 'vehicle' }).addition,
  evidence: compareSides([{ name: 'paint', reference: 'R', sides: { R: { weighing: [0, 0.01] }, A: { weighing: [0.1, 0.11] } } }]).kind,
  curve: fitGrindCurve([{ time: 10, strength: 50 }, { time: 20, strength: 70 }, { time: 40, strength: 85 }, { time: 80, strength: 94 }]).kind,
};
export async function service(upload: ArrayBuffer, study: unknown): Promise<StudyResult | all.PlainError> {
  try {
    return await evaluateStudy(all.parseStudy(study), readMeasurements(upload).measurements);
  } catch (error) {
    if (error instanceof TintladderError) return error.toJSON();
    throw error;
  }
}
const percent: number = relativeTintingStrength(white, { spot: [white, white] }, { criterion: 'absorption-maximum', viewing: D65_10, surface: 'none' }).percent;
const L: number = labFromSpectrum(white, D65_10).L;
export const used = [percent, L, fitGrindCurve, assessRubOut, readMeasurements, evaluateStudy, renderMarkdown, all, TintladderError];
`,
  );
  run('npm', ['install', '--no-audit', '--no-fund', '--silent', '--no-save', `typescript@${LOWEST_TYPESCRIPT}`]);
  const newest = join(root, 'node_modules/typescript/bin/tsc');
  const lowest = join(folder, 'node_modules/typescript/bin/tsc');
  for (const tsc of [newest, lowest]) {
    const version = run('node', [tsc, '--version']).trim();
    for (const [module, resolution] of [
      ['ESNext', 'bundler'],
      ['Node16', 'node16'],
    ]) {
      const strict = [
        '--noEmit',
        '--strict',
        '--exactOptionalPropertyTypes',
        '--target',
        'ES2022',
        '--lib',
        'ES2022,DOM',
      ];
      run('node', [tsc, ...strict, '--module', module, '--moduleResolution', resolution, 'use.ts']);
      console.log(`TypeScript ${version}, ${resolution} resolution: no error`);
    }
  }
  rmSync(join(folder, 'node_modules/typescript'), { recursive: true });
  console.log(run('npx', ['--no-install', 'tintladder', '--version']).trim());
  checkLicences();
  checkLinks();
  checkSize();
  reportLoadTimes();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
