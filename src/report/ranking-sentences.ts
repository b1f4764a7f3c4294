import { quantityName, type StudyResult } from '../study/index.js';
import { formatList } from './format.js';
import { namesOf } from './names.js';

/** The order of the packages in sentences: who meets every criterion, who is undecided, who fails, who is unbeaten. */
export function rankingSentences(result: StudyResult): string[] {
  const { by, best, meeting, undecided, failing, unbeaten } = result.ranking;
  const names = namesOf(result);
  const all = (ids: readonly string[]) => formatList(ids.map(names.package));
  const order = `${quantityName(by)}, ${best} first`;
  const sentences = [
    meeting.length > 0
      ? `Meets every criterion, ordered by ${order}: ${all(meeting)}.`
      : 'No package is proven to meet every criterion.',
  ];
  if (undecided.length > 0) sentences.push(`Undecided: ${all(undecided)}.`);
  if (failing.length > 0) sentences.push(`Fails a criterion: ${all(failing)}.`);
  if (unbeaten.length > 0) sentences.push(`Beaten by no other package in every respect: ${all(unbeaten)}.`);
  return sentences;
}
