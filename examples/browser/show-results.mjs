// The results as elements of the page.
import { describeViewing, srgbSwatch } from 'tintladder/colorimetry';
import { CRITERION_WORDS, FINDING_WORDS, RUB_OUT_DIRECTION_WORDS, RUB_OUT_FINDING_WORDS } from 'tintladder/report';
import { ROLE_WORDS } from './choose-readings.mjs';
import { element } from './element.mjs';
import { reflectanceChart, rubOutChart, strengthChart } from './figures.mjs';
import { fixed, range } from './numbers.mjs';

/** Sections for strength, rub-out and colours, from what `evaluate` found. */
export function showResults(evaluation, conditions) {
  const { rubOuts } = evaluation;
  return [
    strengthSection(evaluation, conditions),
    rubOuts.length > 0 && rubOutSection(rubOuts, conditions),
    colourSection(evaluation, conditions),
  ].filter(Boolean);
}

function section(id, heading, ...children) {
  const title = element('h2', { id }, heading);
  return element('section', { 'aria-labelledby': id }, title, ...children);
}

function answerOf({ chosen, unsolved }) {
  if (!chosen) return `By ${CRITERION_WORDS[unsolved.criterion]} there is no strength: ${unsolved.reason}`;
  const { percent, interval, finding, criterion, wavelength, residual } = chosen;
  const certain = interval
    ? ` (95 % interval ${range(interval, 1)} %)`
    : ', with one reading a side and so without an interval';
  const place = wavelength === undefined ? '' : `, ${wavelength} nm`;
  return (
    `The trial has ${fixed(percent, 1)} % of the strength of the reference${certain} by ${CRITERION_WORDS[criterion]}${place}: ` +
    `it is ${FINDING_WORDS[finding]}. At equal strength ΔE*ab ${fixed(residual.dEab, 2)} is left (ΔE00 ${fixed(residual.dE2000, 2)}).`
  );
}

function strengthSection(evaluation, { viewing, surface }) {
  const { comparison, chosen, means } = evaluation;
  const { results, unsolved, shadeChange, spread } = comparison;
  const spectrumOf = (role) => means.find((mean) => mean.role === role)?.spectrum;
  const curves = [
    { name: 'reference', spectrum: spectrumOf('reference') },
    { name: 'trial', spectrum: spectrumOf('trial') },
    ...(chosen ? [{ name: 'trial, matched', spectrum: chosen.matched }] : []),
  ];
  const rows = results.map((result) =>
    element(
      'tr',
      { class: result === chosen ? 'chosen' : undefined, 'data-criterion': result.criterion },
      element('th', { scope: 'row' }, CRITERION_WORDS[result.criterion]),
      element('td', { class: 'number' }, fixed(result.percent, 1)),
      element('td', { class: 'number' }, range(result.interval, 1)),
      element('td', { class: 'number' }, fixed(result.residual.dEab, 2)),
      element('td', { class: 'number' }, fixed(result.residual.dE2000, 2)),
    ),
  );
  const warnings = new Set([...comparison.warnings, ...(chosen?.warnings ?? [])].map(({ message }) => message));
  return section(
    'strength-heading',
    'Strength',
    element('p', { class: 'answer', id: 'answer' }, answerOf(evaluation)),
    element(
      'p',
      {},
      shadeChange
        ? `The shades differ, so the criteria disagree by ${fixed(spread, 1)} % and no single figure should be quoted.`
        : `The shade is the same within ΔE00 ${comparison.shadeThreshold}; the criteria agree within ${fixed(spread, 1)} %.`,
    ),
    warnings.size > 0 &&
      element(
        'ul',
        {},
        [...warnings].map((message) => element('li', {}, message)),
      ),
    table(
      `Strength of the trial under ${describeViewing(viewing)}, ${surface !== 'none' ? `surface reflection taken off, specular ${surface.specular}` : 'surface reflection left in'}, and what is left at equal strength.`,
      ['Criterion', 'Strength, %', '95 % interval', 'ΔE*ab', 'ΔE00'],
      [...rows, ...unsolved.map(unsolvedRow)],
    ),
    element(
      'div',
      { class: 'figures' },
      element('figure', {}, reflectanceChart(curves)),
      element('figure', {}, strengthChart(results)),
    ),
  );
}

function unsolvedRow({ criterion, reason }) {
  return element(
    'tr',
    {},
    element('th', { scope: 'row' }, CRITERION_WORDS[criterion]),
    element('td', { colspan: 4 }, `No strength: ${reason}`),
  );
}

function rubOutSection(rubOuts, { limit }) {
  const findings = rubOuts.map(({ name, result }) => {
    const { difference, interval, outcome, direction, finding, evidence, causes, next, warnings } = result;
    const possible = causes.filter(({ standing }) => standing.startsWith('fits'));
    return element(
      'article',
      { 'aria-labelledby': `rub-out-${name}`, 'data-rub-out': name.toLowerCase() },
      element('h3', { id: `rub-out-${name}` }, name),
      element(
        'p',
        {},
        element('span', { class: `outcome ${outcome}` }, outcome),
        ` the limit of ΔE*ab ${limit}: ΔE*ab ${fixed(difference.dEab, 2)}${interval ? ` (95 % interval ${range(interval.dEab, 2)})` : ''}. `,
        element(
          'span',
          { class: 'direction' },
          direction
            ? `Rubbing: ${RUB_OUT_DIRECTION_WORDS[direction.towards]}, ${direction.certainty}.`
            : `Finding: ${RUB_OUT_FINDING_WORDS[finding]}.`,
        ),
      ),
      list(
        'Evidence',
        evidence.map(({ statement }) => statement),
        'evidence',
      ),
      list(
        'Possible causes',
        possible.map(({ because }) => because),
        'causes',
      ),
      list('What to do next', next, 'next'),
      list(
        'Notes',
        warnings.map(({ message }) => message),
        'notes',
      ),
    );
  });
  const points = rubOuts.map(({ name, result }) => ({ label: name.toLowerCase(), ...result.difference }));
  return section('rub-out-heading', 'Rub-out', ...findings, element('figure', {}, rubOutChart(points, limit)));
}

function colourSection({ means }, { viewing }) {
  const rows = means.map(({ role, count, lab }) => {
    const { hex, inGamut } = srgbSwatch(lab, viewing);
    return element(
      'tr',
      { 'data-role': role },
      element(
        'th',
        { scope: 'row' },
        element('span', { class: 'patch', style: `background:${hex}` }),
        ` ${ROLE_WORDS[role]}${inGamut ? '' : ' (outside the screen’s gamut)'}`,
      ),
      ...[String(count), fixed(lab.L, 2), fixed(lab.a, 2), fixed(lab.b, 2)].map((text) =>
        element('td', { class: 'number' }, text),
      ),
    );
  });
  return section(
    'colour-heading',
    'Colours',
    table(
      `Means under ${describeViewing(viewing)}. The swatches help to recognise a sample, not to judge it.`,
      ['Area', 'Readings', 'L*', 'a*', 'b*'],
      rows,
    ),
  );
}

function table(caption, headings, rows) {
  return element(
    'table',
    {},
    element('caption', {}, caption),
    element(
      'thead',
      {},
      element(
        'tr',
        {},
        headings.map((heading, i) => element('th', { scope: 'col', class: i === 0 ? undefined : 'number' }, heading)),
      ),
    ),
    element('tbody', {}, rows),
  );
}

function list(heading, texts, name) {
  if (texts.length === 0) return undefined;
  return element(
    'div',
    { class: name },
    element('h4', {}, heading),
    element(
      'ul',
      {},
      texts.map((text) => element('li', {}, text)),
    ),
  );
}
