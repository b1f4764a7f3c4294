/** What standard output can show; some terminals say that they are 0 wide. */
export const TERMINAL = {
  colour: Boolean(process.stdout.isTTY) && !process.env.NO_COLOR,
  width: process.stdout.columns || undefined,
};

/** A line that overwrites itself, on a terminal only. */
export function showProgress(line: string): void {
  if (process.stderr.isTTY) process.stderr.write(`\r${line}`);
}

/** Leaves the progress line behind. */
export function endProgress(): void {
  if (process.stderr.isTTY) process.stderr.write('\n');
}
