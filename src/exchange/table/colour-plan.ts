import type { Notes } from '../text/notes.js';
import type { Coordinate, CoordinateHeading } from './coordinate-heading.js';
import type { ColourPlan, Heading } from './heading.js';

interface Placed {
  readonly index: number;
  readonly heading: CoordinateHeading;
}

const SPACES = [
  ['lab', ['L', 'a', 'b']],
  ['xyz', ['X', 'Y', 'Z']],
] as const;

/**
 * The colours of a table: every complete L*, a*, b* and X, Y, Z, with what their headings state. What only the first of three states holds for
 * the two that follow. Hunter's L, a, b are no CIELAB and stay text.
 */
export function planColours({ columns, placeOf, context }: Heading, notes: Notes, used: Set<number>): ColourPlan[] {
  const all = columns.flatMap(({ role }, index): Placed[] =>
    role.kind === 'coordinate' ? [{ index, heading: role.heading }] : [],
  );
  const hunter = all.find(({ heading }) => isHunter(heading, context.hunter));
  if (hunter) {
    const message = "The file holds Hunter's L, a, b, which are no CIELAB coordinates; they are kept as text.";
    notes.add('hunter-lab-left-out', message, placeOf(hunter.index));
  }
  const placed = all.filter(({ heading }) => !isHunter(heading, context.hunter));
  const colours: ColourPlan[] = [];
  for (const [space, coordinates] of SPACES) {
    for (const first of placed.filter(({ heading }) => heading.coordinate === coordinates[0])) {
      const second = partner(first, coordinates[1], placed, used);
      const third = partner(first, coordinates[2], placed, used);
      if (!second || !third) continue;
      const triple = [first, second, third];
      for (const { index } of triple) used.add(index);
      const { stated, white = context.white } = first.heading;
      const indices = [first.index, second.index, third.index] as const;
      colours.push({ space, indices, stated, ...(white === undefined ? {} : { white }) });
      if (space === 'lab' && !triple.some(({ heading }) => heading.certain)) {
        const message = 'The file does not say whose L, a, b it holds; they were taken for CIELAB.';
        notes.add('cielab-assumed', message, placeOf(first.index));
      }
    }
  }
  return colours.sort((one, other) => one.indices[0] - other.indices[0]);
}

function isHunter({ coordinate, hunter }: CoordinateHeading, whole: boolean | undefined): boolean {
  return hunter || (whole === true && 'Lab'.includes(coordinate));
}

const keyOf = ({ stated, unknown }: CoordinateHeading) => JSON.stringify([stated, unknown]);

/** The column of another coordinate of the same colour: one that states the same, else the next one before the next colour if it states nothing. */
function partner(
  first: Placed,
  coordinate: Coordinate,
  placed: readonly Placed[],
  used: ReadonlySet<number>,
): Placed | undefined {
  const free = placed.filter(({ index, heading }) => heading.coordinate === coordinate && !used.has(index));
  const same = free.filter(({ heading }) => keyOf(heading) === keyOf(first.heading));
  const next = placed.find(
    ({ index, heading }) => index > first.index && heading.coordinate === first.heading.coordinate,
  );
  const silent = free.find(
    ({ index, heading }) =>
      index > first.index && (next === undefined || index < next.index) && keyOf(heading) === '[{},""]',
  );
  return same.find(({ index }) => index > first.index) ?? silent ?? same[0];
}
