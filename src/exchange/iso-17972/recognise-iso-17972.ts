/** XML: its first character that is no blank opens an element. */
export function recogniseIso17972(beginning: string): boolean {
  return beginning.trimStart().startsWith('<');
}
