import { LEVELS, type Level } from '../readings/level.js';

/** How many units of each level every unit of the level above holds: `{ weighing: 3, drawdown: 1, spot: 2 }`. */
export type Design = Readonly<Partial<Record<Level, number>>>;

/** The levels of some figures by level, outermost first. */
export function levelsOf(figures: Readonly<Partial<Record<Level, number | undefined>>>): Level[] {
  return LEVELS.filter((level) => figures[level] !== undefined);
}

/** What a design costs for one side: every unit of every level at the cost of that level. */
export function costOf(design: Design, cost: Design): number {
  let units = 1;
  let sum = 0;
  for (const level of levelsOf(design)) {
    units *= design[level] ?? 1;
    sum += units * (cost[level] ?? 0);
  }
  return sum;
}

/** Variance of the mean of one side made by a design, from the standard deviation of each level. */
export function varianceOfDesign(design: Design, components: Design): number {
  let units = 1;
  let sum = 0;
  for (const level of levelsOf({ ...components, ...design })) {
    units *= design[level] ?? 1;
    sum += (components[level] ?? 0) ** 2 / units;
  }
  return sum;
}
