/** A labelled data record, after any number of comments. Line by line: one pattern for all lines would try every way to divide them. */
export function recogniseJcampDx(beginning: string): boolean {
  for (const line of beginning.split(/\r\n?|\n/)) {
    const text = line.trim();
    if (text === '' || text.startsWith('$$')) continue;
    return /^##\s*[A-Z$]/i.test(text);
  }
  return false;
}
