import type { Outcome } from '../decision/index.js';

/** How the command ends. The codes from 64 on are those of sysexits. */
export const EXIT = {
  /** The command line is wrong. */
  usage: 64,
  /** A file or study says something that can't be right. */
  data: 65,
  /** An input is not there or can't be opened. */
  noInput: 66,
  /** A fault of the program itself. */
  internal: 70,
  /** An output can't be created. */
  cantCreate: 73,
  /** Reading or writing failed on the way. */
  io: 74,
} as const;

/** Exit code of an outcome: 0 to 2, never used for anything else. */
export const EXIT_OF_OUTCOME: Readonly<Record<Outcome, number>> = { meets: 0, fails: 1, undecided: 2 };
