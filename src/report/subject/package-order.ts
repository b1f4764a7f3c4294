import type { PackageResult, StudyResult } from '../../study/index.js';

/** The packages as the study ranks them: those that meet every criterion, best first, then undecided, then failing. */
export function inOrder({ ranking, packages }: Pick<StudyResult, 'ranking' | 'packages'>): PackageResult[] {
  const ids = [...ranking.meeting, ...ranking.undecided, ...ranking.failing];
  const place = ({ package: { id } }: PackageResult) => (ids.includes(id) ? ids.indexOf(id) : ids.length);
  return [...packages].sort((a, b) => place(a) - place(b));
}
