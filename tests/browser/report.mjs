// Checks the built report in a real browser: accessibility, no sideways scrolling, nothing loaded, hostile names as text, and
// figures kept whole in print. Run after a build. CHROMIUM_PATH names the browser; a result as JSON may be given as argument.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readMeasurements } from 'tintladder/exchange';
import { renderHtml } from 'tintladder/report';
import { evaluateStudy, parseStudy } from 'tintladder/study';
import { launchChromium } from './launch-chromium.mjs';

const WIDTHS = [360, 1280];
/** Width and height in px at 96 px an inch, less the margins of the page style (14 mm at the sides, 14 and 16 mm above and below). */
const PAPERS = { A4: [688, 1009], Letter: [710, 942] };
const SCHEMES = ['light', 'dark'];
const LARGEST = 400_000;
const HOSTILE = '<script>window.harmed = 1</script><img src=x onerror="window.harmed = 1">';

const require = createRequire(import.meta.url);
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
const out = join(tmpdir(), 'tintladder-report-check');
const example = join(import.meta.dirname, '..', '..', 'examples', 'dispersant-screening');
const faults = [];

const result = process.argv[2] ? JSON.parse(readFileSync(process.argv[2], 'utf8')) : await evaluateExample();
const pages = { report: result, hostile: withHostileNames(result) };

const browser = await launchChromium();
try {
  mkdirSync(out, { recursive: true });
  for (const [name, study] of Object.entries(pages)) {
    const html = renderHtml(study);
    const bytes = Buffer.byteLength(html);
    if (bytes >= LARGEST) faults.push(`${name}: ${bytes} bytes, ${LARGEST} are the most`);
    for (const colorScheme of SCHEMES) {
      for (const width of WIDTHS) await check(name, html, { colorScheme, width });
    }
    for (const paper of Object.keys(PAPERS)) await print(name, html, paper);
  }
} finally {
  await browser.close();
}

for (const fault of faults) console.error(fault);
console.log(`${faults.length === 0 ? 'no fault' : `${faults.length} faults`}; screenshots and PDF in ${out}`);
process.exitCode = faults.length === 0 ? 0 : 1;

async function evaluateExample() {
  const study = parseStudy(JSON.parse(readFileSync(join(example, 'study.json'), 'utf8')));
  const measurements = study.measurements.flatMap(
    (file) => readMeasurements(readFileSync(join(example, file))).measurements,
  );
  return evaluateStudy(study, measurements);
}

function withHostileNames(study) {
  return {
    ...study,
    title: HOSTILE,
    note: HOSTILE,
    paints: study.paints.map((paint) => ({ ...paint, name: HOSTILE })),
    packages: study.packages.map((one) => ({
      ...one,
      package: { ...one.package, name: HOSTILE, description: HOSTILE },
    })),
  };
}

async function check(name, html, { colorScheme, width }) {
  const place = `${name}, ${colorScheme}, ${width} px`;
  const page = await browser.newPage({ viewport: { width, height: 900 }, colorScheme });
  const requests = [];
  page.on('request', (request) => requests.push(request.url()));
  await page.setContent(html);
  const { scroll, wide, harmed, elements } = await page.evaluate(() => ({
    scroll: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    wide: [...document.querySelectorAll('body *')].filter(
      (element) => element.getBoundingClientRect().right > window.innerWidth + 0.5,
    ).length,
    harmed: 'harmed' in window,
    elements: document.querySelectorAll('script, img, iframe, object, link').length,
  }));
  if (scroll > 0) faults.push(`${place}: scrolls sideways by ${scroll} px`);
  if (wide > 0) faults.push(`${place}: ${wide} elements reach beyond the right edge`);
  if (harmed || elements > 0) faults.push(`${place}: a name became markup`);
  if (requests.length > 0) faults.push(`${place}: asks for ${requests.join(', ')}`);
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() => window.axe.run(document));
  for (const { id, help, nodes } of violations) {
    faults.push(`${place}: ${id} (${help}), ${nodes.length} times, first ${nodes[0].html.slice(0, 120)}`);
  }
  await page.screenshot({ path: join(out, `${name}-${colorScheme}-${width}.png`), fullPage: true });
  await page.close();
}

/** On either paper no drawing may be wider or taller than a page, and the first page holds the answer and the overview. */
async function print(name, html, paper) {
  const place = `${name}, ${paper}`;
  const [width, height] = PAPERS[paper];
  const page = await browser.newPage({ viewport: { width, height } });
  await page.setContent(html);
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  const { tall, ends, background } = await page.evaluate(
    ([right, bottom]) => ({
      tall: [...document.querySelectorAll('.panel, .plate')].filter((element) => {
        const box = element.getBoundingClientRect();
        return box.height > bottom || box.right > right + 0.5 || getComputedStyle(element).breakInside !== 'avoid';
      }).length,
      ends: document.querySelector('.matrix').getBoundingClientRect().bottom,
      background: getComputedStyle(document.documentElement).backgroundColor,
    }),
    [width, height],
  );
  if (tall > 0) faults.push(`${place}: ${tall} charts may break across pages`);
  if (name === 'report' && ends > height) faults.push(`${place}: the overview ends at ${ends} px of ${height}`);
  if (background !== 'rgb(255, 255, 255)') faults.push(`${place}: paper is ${background}`);
  writeFileSync(join(out, `${name}-${paper}.pdf`), await page.pdf({ format: paper, preferCSSPageSize: true }));
  await page.close();
}
