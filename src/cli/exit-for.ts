import type { Study, StudyResult } from '../study/index.js';
import { CommandProblem } from './command-problem.js';
import { EXIT, EXIT_OF_OUTCOME } from './exit-codes.js';

/** Whose outcome the exit code tells: of all packages, of the recommended one, or of one by its id. */
export type ExitFor = 'all' | 'recommended' | (string & {});

/** Refuses the id of a package that the study does not have, before any export is read. */
export function assertExitFor(choice: ExitFor, { packages }: Pick<Study, 'packages'>): void {
  const ids = packages.map(({ id }) => id);
  if (choice === 'all' || choice === 'recommended' || ids.includes(choice)) return;
  throw new CommandProblem(`--exit-for ${choice}: the study has the packages ${ids.join(', ')}.`, EXIT.usage);
}

/**
 * The exit code of a comparison.
 *
 * A screening nearly always has a loser, so a script may ask for the recommended package, or for one by its id, instead of all. Where no
 * package is recommended none meets every criterion, and the code is that of the best outcome there is.
 */
export function exitCodeFor({ outcome, packages, recommendation }: StudyResult, choice: ExitFor): number {
  if (choice === 'all') return EXIT_OF_OUTCOME[outcome];
  const id = choice === 'recommended' ? recommendation.package : choice;
  const found = packages.find((one) => one.package.id === id);
  if (found) return EXIT_OF_OUTCOME[found.outcome];
  return packages.some((one) => one.outcome !== 'fails') ? EXIT_OF_OUTCOME.undecided : EXIT_OF_OUTCOME.fails;
}
