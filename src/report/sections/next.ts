import { levelNoun } from '../../evidence/index.js';
import type { Judgement } from '../../study/index.js';
import { quantityName } from '../../study/index.js';
import { list } from '../document/report-document.js';
import { missingWhereRead } from '../subject/missing.js';
import { inOrder } from '../subject/package-order.js';
import type { ReportContext } from '../subject/report-context.js';
import type { SectionBuilder } from './section-builder.js';

/** What to make or look at next: readings that would decide, and checks that would confirm a cause. */
export const nextSection: SectionBuilder = (context) => {
  const { cells } = context.result;
  const items = inOrder(context.result).flatMap((item) => [
    ...context.rows
      .filter(({ cell }) => cell.package === item.package.id)
      .flatMap(({ cell, package: name, paint }) =>
        [...cell.judgements.flatMap(toDecide), ...(cell.rubOut?.next ?? [])].map(
          (step) => `${name} in ${paint}: ${step}`,
        ),
      ),
    ...item.judgements.flatMap(toDecide).map((step) => `${item.package.name}: ${step}`),
    ...missingWhereRead(item, cells).map(({ quantity, paint }) => {
      const where = paint === undefined ? '' : ` in ${context.names.paint(paint)}`;
      return `${item.package.name}${where}: the ${quantityName(quantity)} is missing; read or supply it.`;
    }),
  ]);
  const steps = [...items, ...notRead(context)];
  return steps.length === 0 ? undefined : { id: 'next', heading: 'What to make next', blocks: [list(steps)] };
};

function toDecide({ outcome, quantity, interval, readingsNeeded, readingsOf, remedy }: Judgement): string[] {
  if (outcome !== 'undecided') return [];
  const name = quantityName(quantity);
  if (remedy !== undefined) return [`the ${name} is that of a film only. ${remedy}`];
  if (readingsNeeded !== undefined) {
    const units = readingsOf ? levelNoun(readingsOf, readingsNeeded) : `${readingsNeeded} readings`;
    return [`about ${units} per side would decide the ${name}.`];
  }
  return interval
    ? [`the ${name} lies so close to its limit that no reasonable number of readings decides it.`]
    : [`the ${name} has no interval: repeat the readings, since one shows no scatter.`];
}

function notRead({ result: { packages, paints, cells } }: ReportContext): string[] {
  return packages.flatMap(({ package: { id, name } }) =>
    paints
      .filter((paint) => !cells.some((cell) => cell.package === id && cell.paint === paint.id))
      .map((paint) => `${name} was not read in ${paint.name}.`),
  );
}
