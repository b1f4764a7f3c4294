import { TintladderError, type Warning } from '../core/index.js';
import { assertNonEmptyArray } from '../core/internal.js';
import { worstOutcome } from '../decision/index.js';
import type { Measurement } from '../exchange/index.js';
import { asMeasurement } from '../exchange/internal.js';
import { assignReadings } from './assign-readings.js';
import { bestPackages } from './best-packages.js';
import { checkConditions } from './check-conditions.js';
import { evaluateCell } from './evaluate-cell.js';
import { evaluateSeries, withSeriesFigures } from './evaluate-series.js';
import { gatherEvidence, type JudgedReadings } from './gather-evidence.js';
import { methodStatements } from './method-statements.js';
import { type PaintColours, paintColours } from './paint-colours.js';
import { parseStudy } from './parse-study.js';
import { quantityName } from './quantities.js';
import { type Contender, rankPackages } from './rank-packages.js';
import { groupReadings, type ReadingGroups, tintsOf, whitesOf } from './reading-groups.js';
import { recommend } from './recommend.js';
import type { Cell, StudyResult } from './result.js';
import { assertReferenceRead, judgedAt } from './select-readings.js';
import type { Series } from './series.js';
import type { Study, StudyPackage } from './study.js';
import { summarisePackages } from './summarise-packages.js';

/**
 * Evaluates a whole comparison: strength and rub-out of every package in every paint with intervals, outcomes against the
 * criteria, the worst outcome of each package over its paints, a ranking without invented weights, and what to do.
 *
 * Asynchronous because the curve fits are loaded only when a study holds a series.
 *
 * @param study - as `parseStudy` gives it
 * @param measurements - readings of all its exports, in any order
 * @returns plain data, ready for JSON and for the report
 * @throws TintladderError `unknown-sample`, `reading-claimed-twice`, `reading-repeated`, `no-reference`, `quantity-not-measured`, `kinds-mixed`, `conditions-mismatch`,
 * what `parseStudy` throws for a study that it did not give, `wrong-type` and `not-finite` for what is no measurement, and what strength and rub-out
 * throw for readings that can't be compared
 */
export async function evaluateStudy(study: Study, measurements: readonly Measurement[]): Promise<StudyResult> {
  parseStudy(study);
  assertNonEmptyArray(measurements, 'measurements');
  const given = measurements.map((measurement, i) => asMeasurement(measurement, `measurements[${i}]`));
  const { readings, unused, warnings } = assignReadings(study, given);
  const conditions = checkConditions(study, readings);
  const groups = groupReadings(readings);
  assertReferenceRead(study, groups);
  const series = await evaluateSeries(study, groups);
  const { evidence, judged } = gatherEvidence(study, groups);
  const colours = new Map<string, PaintColours>();
  const cells = judged.map((one) => {
    const shared = colours.get(one.paint) ?? paintColours(study, one);
    colours.set(one.paint, shared);
    return cellOf(study, one, shared, series);
  });
  const contenders = summarisePackages(study, cells, (item) => judgedTime(study, item, groups));
  assertMeasured(study, contenders);
  const order = rankPackages(study, contenders);
  const ranking = { ...order, notProvenWorse: bestPackages(study, order.meeting, contenders, evidence) };
  const recommendation = recommend(study, ranking, contenders, cells, evidence);
  return {
    kind: 'study',
    version: 1,
    title: study.title,
    ...(study.note !== undefined && { note: study.note }),
    outcome: worstOutcome(contenders.map(({ result }) => result.outcome)),
    recommendation,
    ranking,
    reference: study.reference,
    paints: study.paints,
    packages: contenders.map(({ result }) => result),
    cells,
    evidence,
    series,
    method: {
      viewing: study.viewing,
      surface: study.surface,
      strengthCriterion: study.strengthCriterion,
      whiteSubtracted: study.paints.every(({ id }) => whitesOf(groups, id) !== undefined),
      grid: cells[0].spectra.grid,
      statements: methodStatements(study, conditions),
    },
    unusedReadings: unused,
    warnings: [
      ...unusedWarning(unused),
      ...warnings,
      ...conditions.warnings,
      ...cellWarnings(cells),
      ...evidence.paints.flatMap((paint) => paint.warnings),
      ...seriesWarnings(series),
      ...missingCells(study, cells),
      ...missingWarnings(study, contenders),
    ],
  };
}

function cellOf(
  study: Study,
  { package: id, paint: at, ...readings }: JudgedReadings,
  colours: PaintColours,
  series: readonly Series[],
): Cell {
  const item = study.packages.find((one) => one.id === id) ?? study.packages[0];
  const paint = study.paints.find((one) => one.id === at) ?? study.paints[0];
  return withSeriesFigures(study, evaluateCell(study, { item, paint, colours, ...readings }), series);
}

function judgedTime({ paints }: Study, item: StudyPackage, groups: ReadingGroups): number | undefined {
  const readings = paints.flatMap(({ id }) => tintsOf(groups, item.id, id));
  return judgedAt('grindTime', item, readings);
}

/** Refuses a criterion or a ranking on a quantity that was found for no package at all. */
function assertMeasured({ criteria, rankBy }: Study, contenders: readonly Contender[]): void {
  const found = [...new Set(contenders.flatMap(({ figures }) => figures.map(({ quantity }) => quantity)))];
  const asked = [
    ...criteria.map(({ quantity }, i) => [`criteria[${i}].quantity`, quantity]),
    ['rankBy.quantity', rankBy.quantity],
  ];
  for (const [path, quantity] of asked) {
    if (found.includes(quantity)) continue;
    throw new TintladderError('quantity-not-measured', {
      path,
      received: quantity,
      expected: `a quantity that was computed or supplied (${found.join(', ')})`,
    });
  }
}

function unusedWarning(unused: readonly string[]): Warning[] {
  if (unused.length === 0) return [];
  const message = `No rule of the study claims ${unused.length} of the readings: ${unused.slice(0, 10).join(', ')}${unused.length > 10 ? ', …' : ''}.`;
  return [{ code: 'readings-unused', message }];
}

function cellWarnings(cells: readonly Cell[]): Warning[] {
  return cells.flatMap((cell) => {
    const found = [...(cell.strength?.warnings ?? []), ...(cell.rubOut?.warnings ?? [])];
    const unique = found.filter(({ message }, i) => found.findIndex((other) => other.message === message) === i);
    return unique.map(({ code, message, path }) => ({
      code,
      message,
      path: `${cell.package} in ${cell.paint}${path ? `, ${path}` : ''}`,
    }));
  });
}

function seriesWarnings(series: readonly Series[]): Warning[] {
  return series.flatMap(({ curves }) =>
    curves.flatMap(({ package: id, paint, warnings, reason }) => {
      const path = `${id} in ${paint}`;
      const notes: Warning[] =
        reason === undefined ? [] : [{ code: 'no-fit', message: `There is no curve: ${reason}`, path }];
      const placed = warnings.map((warning) => ({
        ...warning,
        path: warning.path === undefined ? path : `${path}, ${warning.path}`,
      }));
      return [...notes, ...placed];
    }),
  );
}

function missingCells({ packages, paints }: Study, cells: readonly Cell[]): Warning[] {
  return packages.flatMap(({ id, name }) =>
    paints
      .filter((paint) => !cells.some((cell) => cell.package === id && cell.paint === paint.id))
      .map((paint) => ({
        code: 'not-read',
        message: `${name} was not read in ${paint.name}.`,
        path: `${id} in ${paint.id}`,
      })),
  );
}

/** What is missing in a cell that was read; a cell that was not read at all is told as such. */
function missingWarnings({ paints }: Study, contenders: readonly Contender[]): Warning[] {
  return contenders.flatMap(({ result: { package: item, missing }, read }) =>
    missing
      .filter(({ paint }) => paint === undefined || read.includes(paint))
      .map(({ quantity, paint }) => {
        const where = paint === undefined ? '' : ` in ${paints.find(({ id }) => id === paint)?.name ?? paint}`;
        return {
          code: 'figure-missing',
          message: `The ${quantityName(quantity)} of ${item.name}${where} is missing, so nothing is proven for it.`,
          path: paint === undefined ? item.id : `${item.id} in ${paint}`,
        };
      }),
  );
}
