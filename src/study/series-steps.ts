import type { Repeated } from '../evidence/index.js';
import type { SeriesPoint } from './series-kind.js';

/** What a series found at one place of its axis, as it was repeated. */
export interface SeriesStep {
  readonly at: number;
  readonly value: Repeated<number>;
}

/** The points by their place on the axis, in its order; there by the units of a level, and below it averaged. */
export function stepsOf(points: readonly SeriesPoint[], level: 'grind' | 'weighing'): SeriesStep[] {
  return [...groupedBy(points, ({ at }) => at)].map(([at, here]) => {
    const units = [...groupedBy(here, (point) => point[level] ?? '').values()].map((unit) =>
      unit.length === 1 ? unit[0].value : { spot: unit.map(({ value }) => value) },
    );
    if (units.length === 1) return { at, value: units[0] };
    return { at, value: level === 'grind' ? { grind: units } : { weighing: units } };
  });
}

/** The points of each mill run; all of them where none was named. */
export function runsOf(points: readonly SeriesPoint[]): SeriesPoint[][] {
  return [...groupedBy(points, ({ grind }) => grind ?? '').values()];
}

/** What belongs together, in the order in which it comes. */
export function groupedBy<Item, Key>(items: readonly Item[], keyOf: (item: Item) => Key): Map<Key, Item[]> {
  const groups = new Map<Key, Item[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}
