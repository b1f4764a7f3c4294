/**
 * Moves labels apart so that none covers another, each as near its own place as the order allows.
 *
 * @param positions - where each label would stand
 * @param gap - the least distance between two
 * @param low - no label stands below this
 * @param high - nor above this, unless there are too many to fit
 * @returns the new positions, in the order given
 */
export function spreadLabels(positions: readonly number[], gap: number, low: number, high: number): number[] {
  const order = positions.map((_, index) => index).sort((i, j) => positions[i] - positions[j] || i - j);
  const placed = new Array<number>(positions.length);
  let floor = low;
  for (const index of order) {
    placed[index] = Math.max(positions[index], floor);
    floor = placed[index] + gap;
  }
  let ceiling = Math.max(high, low + gap * (positions.length - 1));
  for (const index of order.reverse()) {
    placed[index] = Math.min(placed[index], ceiling);
    ceiling = placed[index] - gap;
  }
  return placed;
}
