/** The name that is most like the given one, if any is near enough to be meant: at most a third of its letters differ, or their case. */
export function nearestName(given: string, names: readonly string[]): string | undefined {
  const wanted = given.toLowerCase();
  const ranked = names
    .map((name) => ({ name, distance: editDistance(wanted, name.toLowerCase()) }))
    .sort((one, other) => one.distance - other.distance);
  return ranked.find(({ name, distance }) => distance <= Math.max(1, Math.max(name.length, wanted.length) / 3))?.name;
}

/**
 * The least number of letters to insert, delete or replace.
 *
 * @see Levenshtein (1966), Soviet Physics Doklady 10, 707
 */
function editDistance(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, i) => i);
  for (const [i, letter] of [...one].entries()) {
    const next = [i + 1];
    for (let j = 0; j < other.length; j++) {
      next.push(Math.min(next[j] + 1, row[j + 1] + 1, row[j] + (letter === other[j] ? 0 : 1)));
    }
    row = next;
  }
  return row[other.length];
}
