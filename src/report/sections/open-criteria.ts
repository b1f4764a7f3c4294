import { formatLimit, quoteEstimate } from '../../decision/internal.js';
import type { ListItem } from '../document/report-document.js';
import type { SectionBuilder } from './section-builder.js';

/** The judgements that keep a package from being recommended, each with its figure and limit. */
export const openCriteriaSection: SectionBuilder = ({ criteria, names }) => {
  const items = criteria.flatMap(({ heading, limit, unit, bound, entries }) =>
    entries
      .filter(({ judgement }) => judgement.outcome !== 'meets')
      .map(({ package: id, judgement }): ListItem => {
        const { outcome, paint, readingsNeeded } = judgement;
        const where = paint === undefined ? '' : ` in ${names.paint(paint)}`;
        const what = `${heading} ${quoteEstimate(judgement, unit, bound)}, limit ${formatLimit(limit, unit)}`;
        const more = readingsNeeded === undefined ? '' : `; about ${readingsNeeded} readings per side would decide it`;
        return {
          text: `${names.package(id)}${where} ${outcome === 'fails' ? 'fails' : 'is undecided'}: ${what}${more}.`,
          outcome,
        };
      }),
  );
  if (items.length === 0) return undefined;
  return { id: 'open', heading: 'Not met or undecided', blocks: [{ kind: 'list', items }] };
};
