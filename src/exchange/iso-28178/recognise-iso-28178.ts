/** A line that begins a block of data. */
export function recogniseIso28178(beginning: string): boolean {
  return beginning.includes('BEGIN_DATA') && /^[ \t]*BEGIN_DATA(?:_FORMAT)?[ \t]*$/m.test(beginning);
}
