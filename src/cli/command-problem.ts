import { EXIT } from './exit-codes.js';

/** What the command can't do, as one plain sentence and an exit code: a file that can't be opened, a package that the study lacks. */
export class CommandProblem extends Error {
  override readonly name = 'CommandProblem';
  readonly exitCode: number;

  constructor(sentence: string, exitCode: number) {
    super(sentence);
    this.exitCode = exitCode;
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  EACCES: 'this user may not open it',
  EPERM: 'this user may not open it',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of its path is a file and no folder',
  EEXIST: 'a file of that name is in the way',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  EROFS: 'the disk is read-only',
  ENAMETOOLONG: 'the name is too long',
  EIO: 'the disk reports an error',
};

/** Faults of the medium, which may pass; all others lie in the path that was given. */
const OF_THE_MEDIUM = ['ENOSPC', 'EDQUOT', 'EIO'];

/** Runs `action` and turns a refusal of the operating system into a sentence about `path`. */
export function onFile<T>(aim: 'read' | 'write', path: string, action: () => T): T {
  try {
    return action();
  } catch (error) {
    throw fileProblem(aim, path, error);
  }
}

/** The sentence for an error of the operating system; anything else is passed through. */
export function fileProblem(aim: 'read' | 'write', path: string, error: unknown): unknown {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (!/^E[A-Z0-9]+$/.test(code)) return error;
  const reason = REASONS[code] ?? `the system answers ${code}`;
  const exitCode = OF_THE_MEDIUM.includes(code) ? EXIT.io : aim === 'read' ? EXIT.noInput : EXIT.cantCreate;
  return new CommandProblem(`${path} can't be ${aim === 'read' ? 'read' : 'written'}: ${reason}.`, exitCode);
}
