import { formatList } from '../../core/internal.js';
import { quantityName } from '../../study/index.js';
import { list } from '../document/report-document.js';
import type { SectionBuilder } from './section-builder.js';

/** The order of the packages: which meet every criterion, are undecided, fail, and which may be the best. */
export const orderSection: SectionBuilder = ({ result, names }) => {
  const { by, best, meeting, undecided, failing, notProvenWorse } = result.ranking;
  const all = (ids: readonly string[]) => formatList(ids.map(names.package));
  const sentences = [
    meeting.length > 0
      ? `Meets every criterion, ordered by ${quantityName(by)}, ${best} first: ${all(meeting)}.`
      : 'No package is proven to meet every criterion.',
  ];
  if (undecided.length > 0) sentences.push(`Undecided: ${all(undecided)}.`);
  if (failing.length > 0) sentences.push(`Fails a criterion: ${all(failing)}.`);
  if (notProvenWorse.length > 1) {
    sentences.push(`Best by ${quantityName(by)}, or not proven worse than the best: ${all(notProvenWorse)}.`);
  }
  return {
    id: 'order',
    heading: 'Order of the packages',
    blocks: [list(sentences)],
  };
};
