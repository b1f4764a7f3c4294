import { CommanderError } from 'commander';
import { TintladderError } from '../core/index.js';
import { CommandProblem, fileProblem } from './command-problem.js';
import { EXIT } from './exit-codes.js';

/** Ends the command with one sentence on the error stream and the exit code that belongs to the error. */
export function endWith(error: unknown): void {
  if (error instanceof CommanderError) {
    // commander has printed it already
    process.exitCode = error.exitCode === 0 ? 0 : EXIT.usage;
    return;
  }
  if (error instanceof Error && 'code' in error && error.code === 'EPIPE') process.exit();
  const known = fileProblem('write', 'standard output', error);
  if (error instanceof TintladderError) say(`${error.message} [${error.code}]`, EXIT.data);
  else if (known instanceof CommandProblem) say(known.message, known.exitCode);
  else {
    const what = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
    say(
      `this should not have happened: ${what}. Please report it, with the files if you can share them.`,
      EXIT.internal,
    );
  }
}

function say(sentence: string, exitCode: number): void {
  process.stderr.write(`tintladder: ${sentence}\n`);
  process.exitCode = exitCode;
}
