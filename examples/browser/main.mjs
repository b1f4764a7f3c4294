// Wires the page: a file becomes readings, fields become a choice, and every change of the choice is evaluated anew.
import { A_10, C_2, D50_2, D65_2, D65_10, describeViewing, FL11_10, TintladderError } from 'tintladder/colorimetry';
import { readMeasurements } from 'tintladder/exchange';
import { CRITERION_WORDS } from 'tintladder/report';
import { STRENGTH_CRITERIA } from 'tintladder/strength';
import sample from '../dispersant-screening/readings.csv';
import { groupsOf, groupWith, matches, ROLE_WORDS } from './choose-readings.mjs';
import { element } from './element.mjs';
import { evaluate, SURFACES } from './evaluate.mjs';
import { showResults } from './show-results.mjs';

const VIEWINGS = [D65_10, D65_2, A_10, FL11_10, D50_2, C_2];
const SURFACE_WORDS = {
  included: 'taken off (n = 1.5), specular included',
  excluded: 'taken off (n = 1.5), specular excluded',
  none: 'left in the readings',
};
const REPEATED_WORDS = {
  spot: 'spots of one film',
  drawdown: 'drawdowns of one weigh-up',
  weighing: 'weigh-ups of one grind',
};
const REQUIRED = ['reference', 'trial'];
const HINTS = {
  referenceRubbed: 'optional',
  trialRubbed: 'optional',
  white: 'optional; pale tints need it',
};
/** The sample's own names: the package that flocculates in the solvent-borne paint. */
const SAMPLE_CHOICE = {
  reference: 'SB R unrubbed *',
  referenceRubbed: 'SB R rubbed *',
  trial: 'SB B unrubbed *',
  trialRubbed: 'SB B rubbed *',
  white: 'SB white *',
};

const $ = (id) => document.getElementById(id);
let readings = [];

fillSelect(
  'viewing',
  VIEWINGS.map((viewing, i) => [i, describeViewing(viewing)]),
);
fillSelect('surface', Object.entries(SURFACE_WORDS));
fillSelect('repeated', Object.entries(REPEATED_WORDS));
fillSelect(
  'criterion',
  STRENGTH_CRITERIA.map((criterion) => [criterion, CRITERION_WORDS[criterion]]),
);

$('sample').addEventListener('click', () => open(sample, 'the invented sample', SAMPLE_CHOICE));
$('file').addEventListener('change', ({ target }) => openFile(target.files[0]));
for (const type of ['dragenter', 'dragover']) {
  document.addEventListener(type, (event) => {
    event.preventDefault();
    document.body.classList.add('dragging');
  });
}
document.addEventListener('dragleave', ({ relatedTarget }) => {
  if (!relatedTarget) document.body.classList.remove('dragging');
});
document.addEventListener('drop', (event) => {
  event.preventDefault();
  document.body.classList.remove('dragging');
  openFile(event.dataTransfer?.files[0]);
});
$('choice').addEventListener('submit', (event) => event.preventDefault());
$('choice').addEventListener('input', ({ target }) => {
  if (target.dataset.pattern) tickMatching(target.dataset.pattern);
  if (target.id !== 'file') update();
});

async function openFile(file) {
  if (!file) return;
  // bytes, not text: the reader recognises the encoding itself
  open(new Uint8Array(await file.arrayBuffer()), file.name);
}

function open(content, name, choice) {
  attempt(() => {
    const { measurements, warnings } = readMeasurements(content);
    readings = measurements.filter(({ spectrum }) => spectrum !== undefined);
    if (readings.length === 0)
      throw new Error(
        'The file holds colour values without spectra; strength and rub-out are computed from spectra here.',
      );
    const { start, step, values } = readings[0].spectrum;
    const grid = `${start} to ${start + step * (values.length - 1)} nm in steps of ${step}`;
    const notes = warnings.map(({ message }) => ` ${message}`).join('');
    $('file-note').textContent = `${readings.length} spectra from ${name}, ${grid}.${notes}`;
    showRoles(choice);
  });
}

function showRoles(choice) {
  const groups = groupsOf(readings.map(({ name }) => name));
  const guess = choice ?? { white: groupWith(groups, 'white') };
  $('groups').replaceChildren(...groups.map((group) => element('option', { value: group })));
  $('role-fields').replaceChildren(...Object.keys(ROLE_WORDS).map((role) => roleField(role, guess[role] ?? '')));
  $('roles').hidden = false;
  for (const role of Object.keys(ROLE_WORDS)) tickMatching(role);
  update();
}

function roleField(role, pattern) {
  const id = `pattern-${role}`;
  const boxes = readings.map(({ name }, i) =>
    element('li', {}, element('label', {}, element('input', { type: 'checkbox', name: role, value: i }), name)),
  );
  const hint = HINTS[role] && element('small', {}, ` ${HINTS[role]}`);
  const field = {
    type: 'text',
    id,
    'data-pattern': role,
    list: 'groups',
    value: pattern,
    autocomplete: 'off',
    spellcheck: 'false',
    'aria-describedby': `matched-${role}`,
  };
  return element(
    'div',
    { class: 'role' },
    element('label', { for: id }, ROLE_WORDS[role], hint),
    element('input', field),
    element('output', { class: 'matched', id: `matched-${role}`, for: id }),
    element(
      'details',
      {},
      element('summary', {}, 'Choose one by one'),
      element('fieldset', {}, element('legend', {}, ROLE_WORDS[role]), element('ul', { class: 'names' }, boxes)),
    ),
  );
}

const boxesOf = (role) => [...document.querySelectorAll(`input[type="checkbox"][name="${role}"]`)];

function tickMatching(role) {
  const pattern = $(`pattern-${role}`).value;
  for (const box of boxesOf(role)) box.checked = matches(readings[Number(box.value)].name, pattern);
}

function chosen(role) {
  const taken = boxesOf(role)
    .filter(({ checked }) => checked)
    .map(({ value }) => readings[Number(value)]);
  $(`matched-${role}`).textContent =
    taken.length === 0
      ? 'no reading'
      : `${taken.length} of ${readings.length}: ${taken.map(({ name }) => name).join(', ')}`;
  return taken.map(({ spectrum }) => spectrum);
}

function update() {
  if (readings.length === 0) return;
  const spectra = Object.fromEntries(Object.keys(ROLE_WORDS).map((role) => [role, chosen(role)]));
  const missing = REQUIRED.filter((role) => spectra[role].length === 0);
  if (missing.length > 0) {
    const text = `Choose readings for: ${missing.map((role) => ROLE_WORDS[role].toLowerCase()).join('; ')}.`;
    $('fault').replaceChildren();
    $('results').replaceChildren(element('p', { class: 'hint' }, text));
    return;
  }
  const conditions = {
    viewing: VIEWINGS[Number($('viewing').value)],
    surface: SURFACES[$('surface').value],
    criterion: $('criterion').value,
    repeated: $('repeated').value,
    limit: $('limit').valueAsNumber,
  };
  attempt(() => $('results').replaceChildren(...showResults(evaluate(spectra, conditions), conditions)));
}

/** Runs a step; what goes wrong with the readings is said on the page, and no old result stays beside it. */
function attempt(step) {
  $('fault').replaceChildren();
  try {
    step();
  } catch (error) {
    $('results').replaceChildren();
    $('fault').replaceChildren(element('p', {}, error.message));
    if (!(error instanceof TintladderError) && error.constructor !== Error) throw error;
  }
}

function fillSelect(id, options) {
  $(id).replaceChildren(...options.map(([value, text]) => element('option', { value }, text)));
}
