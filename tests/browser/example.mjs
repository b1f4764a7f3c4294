// Drives the browser example in a real browser: numbers against the same computed in Node, faults and hostile names,
// accessibility, no sideways scrolling, nothing loaded from elsewhere; and the published checks inside the browser.
// Run after a build. CHROMIUM_PATH names the browser.
import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { build } from 'esbuild';
import { D65_10 } from 'tintladder/colorimetry';
import { readMeasurements } from 'tintladder/exchange';
import { assessRubOut } from 'tintladder/rubout';
import { compareStrengthCriteria } from 'tintladder/strength';
import { launchChromium } from './launch-chromium.mjs';

const WIDTHS = [390, 1280];
const SCHEMES = ['light', 'dark'];
const HOSTILE = '<img src=x onerror="window.harmed = 1">';
const SURFACE = { external: 0.04, internal: 0.6, specular: 'included' };

const root = join(import.meta.dirname, '..', '..');
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const csv = readFileSync(join(root, 'examples', 'dispersant-screening', 'readings.csv'), 'utf8');
const { measurements } = readMeasurements(csv);
const out = join(tmpdir(), 'tintladder-example-check');
mkdirSync(out, { recursive: true });
const faults = [];
let checks = 0;

console.log(
  execFileSync(process.execPath, [join(root, 'scripts', 'build-browser-example.mjs')], { encoding: 'utf8' }).trim(),
);
const server = await serve(join(root, 'examples', 'browser', 'dist'));
const origin = `http://127.0.0.1:${server.address().port}`;
const browser = await launchChromium();
try {
  for (const colorScheme of SCHEMES) {
    for (const width of WIDTHS) {
      const visit = { colorScheme, width };
      await usingPage(visit, emptyPage);
      await usingPage(visit, droppedFile);
    }
  }
  const visit = { colorScheme: 'light', width: 1280 };
  await usingPage(visit, bundledSample);
  await usingPage(visit, wrongFiles);
  await usingPage(visit, hostileNames);
  await usingPage(visit, publishedChecks);
} finally {
  await browser.close();
  server.close();
}

for (const fault of faults) console.error(fault);
console.log(`${checks} checks, ${faults.length === 0 ? 'no fault' : `${faults.length} faults`}; screenshots in ${out}`);
process.exitCode = faults.length === 0 ? 0 : 1;

/** A page of its own for each step; whatever it asks of another host, or reports as an error, is a fault. */
async function usingPage({ colorScheme, width }, step) {
  const place = `${step.name}, ${colorScheme}, ${width} px`;
  const page = await browser.newPage({ viewport: { width, height: 900 }, colorScheme });
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(`${origin}/`) && !url.startsWith('data:')) faults.push(`${place}: asks for ${url}`);
  });
  page.on('pageerror', (error) => faults.push(`${place}: ${error}`));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(`${place}: ${message.text()}`);
  });
  try {
    await page.goto(`${origin}/`);
    await step(page, (what, seen, expected) => same(`${place}: ${what}`, seen, expected));
    await page.screenshot({ path: join(out, `${step.name}-${colorScheme}-${width}.png`), fullPage: true });
  } finally {
    await page.close();
  }
}

async function emptyPage(page, check) {
  check(
    'results',
    (await page.locator('#results').textContent()).trim(),
    'The answer appears here as soon as reference and trial are chosen.',
  );
  await checkLayout(page, check);
}

/** The water-borne pair: chosen by pattern, then one replicate less by its tick. */
async function droppedFile(page, check) {
  await drop(page, 'readings.csv', csv);
  check('file note', (await page.locator('#file-note').textContent()).split('.')[0], '134 spectra from readings');
  check('white guessed', await page.inputValue('#pattern-white'), 'WB white *');
  for (const [role, pattern] of Object.entries({
    reference: 'WB R unrubbed *',
    referenceRubbed: 'WB R rubbed *',
    trial: 'WB A unrubbed *',
    trialRubbed: 'WB A rubbed *',
  })) {
    await page.fill(`#pattern-${role}`, pattern);
  }
  await checkNumbers(page, check, 'WB R', 'WB A', 'WB white');
  check('figures', await page.locator('#results svg[role="img"]').count(), 3);
  check('figures with NaN', /NaN|undefined|Infinity/.test(await page.locator('#results').innerHTML()), false);

  await page
    .locator('.role', { has: page.locator('#pattern-trial') })
    .locator('summary')
    .click();
  await checkLayout(page, check);
  await page.locator('label', { hasText: 'WB A unrubbed 4-2' }).locator('input[name="trial"]').uncheck();
  check('trial readings', await page.locator('tr[data-role="trial"] td').first().textContent(), '7');
  const expected = compareStrengthCriteria(spots(named('WB R unrubbed')), spots(named('WB A unrubbed').slice(0, 7)), {
    viewing: D65_10,
    surface: SURFACE,
    white: spots(named('WB white')),
  });
  check('one replicate less', await criteriaOf(page), expected.results.map(rowOf));
  await page.selectOption('#criterion', 'tristimulus-y');
  const byY = expected.results.find(({ criterion }) => criterion === 'tristimulus-y');
  check(
    'answer by Y',
    (await page.locator('#answer').textContent()).includes(`${minus(byY.percent, 1)} % of the strength`),
    true,
  );
}

/** The button's own choice: the package that flocculates. */
async function bundledSample(page, check) {
  await page.click('#sample');
  await checkNumbers(page, check, 'SB R', 'SB B', 'SB white');
  check(
    'direction',
    await page.locator('[data-rub-out="trial"] .direction').textContent(),
    'Rubbing: more colour by rubbing, proven.',
  );
  await page.fill('#limit', '5');
  check('outcome at limit 5', await page.locator('[data-rub-out="trial"] .outcome').textContent(), 'meets');
}

async function wrongFiles(page, check) {
  await page.click('#sample');
  await page.locator('#answer').waitFor();
  for (const text of ['Sample,400,410\nwhite,92.1,0.924\n', 'nothing to be read\n', '']) {
    await drop(page, 'wrong.csv', text);
    let message = '';
    try {
      readMeasurements(new TextEncoder().encode(text));
    } catch (error) {
      message = error.message;
    }
    check('an error in Node', message !== '', true);
    check('message', (await page.locator('#fault').textContent()).trim(), message.trim());
    check('old results', await page.locator('#results').textContent(), '');
  }
  await drop(page, 'lab.csv', 'Sample,L*,a*,b*\none,50,1,2\ntwo,51,1,2\n');
  check('Lab alone', /colour values without spectra/.test(await page.locator('#fault').textContent()), true);
  await drop(page, 'readings.csv', csv);
  check('message gone', await page.locator('#fault').textContent(), '');
}

async function hostileNames(page, check) {
  await drop(page, `${HOSTILE}.csv`, csv.replaceAll('WB A unrubbed', HOSTILE));
  await page.fill('#pattern-reference', 'WB R unrubbed *');
  await page.fill('#pattern-trial', `${HOSTILE} *`);
  await page.locator('#answer').waitFor();
  check('named in full', (await page.locator('#matched-trial').textContent()).includes(HOSTILE), true);
  check('images', await page.locator('img').count(), 0);
  check('harm', await page.evaluate('window.harmed'), undefined);
}

async function publishedChecks(page, check) {
  const { outputFiles } = await build({
    entryPoints: [join(import.meta.dirname, 'published-checks.mjs')],
    bundle: true,
    format: 'iife',
    globalName: 'published',
    write: false,
    logOverride: { 'ignored-bare-import': 'silent' },
  });
  await page.addScriptTag({ content: outputFiles[0].text });
  check('published pairs', await page.evaluate('published.checkPublished()'), { pairs: 44, faults: [] });
}

/** Every criterion, the answer and both rub-outs as the page writes them, against Node. */
async function checkNumbers(page, check, reference, trial, white) {
  const options = { viewing: D65_10, surface: SURFACE, white: spots(named(white)) };
  const [first, second] = [reference, trial].map((id) => spots(named(`${id} unrubbed`)));
  const { results } = compareStrengthCriteria(first, second, options);
  await page.locator('#answer').waitFor();
  check('criteria', await criteriaOf(page), results.map(rowOf));
  const [{ percent, interval, residual }] = results;
  const answer = await page.locator('#answer').textContent();
  for (const part of [
    `${minus(percent, 1)} % of the strength`,
    `${minus(interval.low, 1)} to ${minus(interval.high, 1)} %`,
    `ΔE*ab ${minus(residual.dEab, 2)}`,
  ]) {
    check(`answer says ${part}`, answer.includes(part), true);
  }
  for (const [role, start] of [
    ['reference', reference],
    ['trial', trial],
  ]) {
    const { outcome, evidence, next } = assessRubOut(
      { spot: named(`${start} unrubbed`) },
      { spot: named(`${start} rubbed`) },
      { ...options, white: { spot: named(white) } },
    );
    const article = page.locator(`[data-rub-out="${role}"]`);
    check(`${role} outcome`, await article.locator('.outcome').textContent(), outcome);
    check(
      `${role} evidence`,
      await article.locator('.evidence li').allTextContents(),
      evidence.map(({ statement }) => statement),
    );
    check(`${role} next`, await article.locator('.next li').allTextContents(), [...next]);
  }
}

function named(start) {
  return measurements.filter(({ name }) => name.startsWith(`${start} `)).map(({ spectrum }) => spectrum);
}

function minus(value, decimals) {
  return value.toFixed(decimals).replace(/^-/, '\u2212');
}

function rowOf({ criterion, percent, interval, residual }) {
  return [
    criterion,
    minus(percent, 1),
    `${minus(interval.low, 1)} to ${minus(interval.high, 1)}`,
    minus(residual.dEab, 2),
    minus(residual.dE2000, 2),
  ];
}

function criteriaOf(page) {
  return page
    .locator('tr[data-criterion]')
    .evaluateAll((rows) =>
      rows.map((row) => [row.dataset.criterion, ...[...row.querySelectorAll('td')].map((cell) => cell.textContent)]),
    );
}

/** Drops a file on the page as the system would, and waits until it was read or refused. */
async function drop(page, name, text) {
  const transfer = await page.evaluateHandle(
    ([fileName, content]) => {
      const data = new DataTransfer();
      data.items.add(new File([content], fileName, { type: 'text/csv' }));
      document.getElementById('file-note').textContent = '';
      document.getElementById('fault').textContent = '';
      return data;
    },
    [name, text],
  );
  await page.dispatchEvent('#drop', 'drop', { dataTransfer: transfer });
  await page.waitForFunction(
    () => document.getElementById('file-note').textContent + document.getElementById('fault').textContent !== '',
  );
}

async function checkLayout(page, check) {
  const { width, view } = await page.evaluate(() => ({
    width: document.documentElement.scrollWidth,
    view: window.innerWidth,
  }));
  check('scrolls sideways', width > view, false);
  await page.evaluate(axe);
  const { violations, passes } = await page.evaluate(() => window.axe.run());
  check(
    'accessibility',
    violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`),
    [],
  );
  check('accessibility rules applied', passes.length > 10, true);
}

function same(place, seen, expected) {
  checks += 1;
  if (JSON.stringify(seen) !== JSON.stringify(expected))
    faults.push(`${place} is ${JSON.stringify(seen)}, not ${JSON.stringify(expected)}`);
}

/** The files of a folder on a free port of this machine alone. */
function serve(folder) {
  const types = { '.html': 'text/html', '.css': 'text/css', '.js': 'text/javascript' };
  const listener = createServer((request, response) => {
    const name = request.url === '/' ? 'index.html' : request.url.slice(1);
    if (!/^[\w-]+\.\w+$/.test(name)) return response.writeHead(404).end();
    try {
      const body = readFileSync(join(folder, name));
      response.writeHead(200, { 'content-type': `${types[extname(name)]}; charset=utf-8` }).end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  return new Promise((resolve) => listener.listen(0, '127.0.0.1', () => resolve(listener)));
}

/** What the page takes an area's readings for unless told otherwise. */
function spots(spectra) {
  return { spot: spectra };
}
