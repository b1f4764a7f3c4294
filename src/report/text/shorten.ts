/** Cuts a name to the room there is for it, in characters; the whole name stands elsewhere on the page. */
export function shorten(name: string, length: number): string {
  const characters = [...name];
  return characters.length <= length ? name : `${characters.slice(0, length - 1).join('')}…`;
}
