import { BLOCKS, type Block, LEVELS, type Level, type Repeated } from '../evidence/index.js';
import { nestReadings, type ReadRepeated, readRepeated, type UnitTree } from '../evidence/internal.js';
import type { Measurement } from '../exchange/index.js';
import type { AssignedReading } from './assigned-reading.js';
import { SERIES_FIELDS } from './series-kinds.js';
import type { StrengthBasis } from './strength-basis.js';

/**
 * Readings of one place as they were repeated, by the labels of their units.
 *
 * A level counts where any of the readings names it; a day or session only where all of them do. A reading whose file states a session
 * belongs to it unless a rule says otherwise.
 *
 * @returns undefined for no readings at all
 */
export function nestAssigned(readings: readonly AssignedReading[]): Repeated<Measurement> | undefined {
  if (readings.length === 0) return undefined;
  const members = readings.map((assigned) => {
    const labels = labelsOf(assigned);
    const [outermost] = LEVELS.filter((level) => labels[level] !== undefined);
    return {
      measurement: assigned.reading,
      path: assigned.reading.name,
      labels,
      parts: Object.fromEntries(
        [...LEVELS, ...BLOCKS].map((name) => [
          name,
          `${labels[name] ?? ''}${name === outermost ? stepOf(assigned) : ''}`,
        ]),
      ),
    };
  });
  return nestReadings(members, {
    levels: LEVELS.filter((level) => members.some(({ labels }) => labels[level] !== undefined)),
    blocks: BLOCKS.filter((block) => members.every(({ labels }) => labels[block] !== undefined)),
    sameName: undefined,
  });
}

/** Units are numbered anew at each value of a series, so that the first of one is not the first of another. */
function stepOf(assigned: AssignedReading): string {
  return SERIES_FIELDS.flatMap((field) => (assigned[field] === undefined ? [] : ` ${field} ${assigned[field]}`)).join(
    '',
  );
}

function labelsOf(assigned: AssignedReading): Readonly<Partial<Record<Level | Block, string>>> {
  const { reading } = assigned;
  const { session = reading.conditions.session } = assigned;
  const stated = [...LEVELS, 'day' as const].flatMap((name) =>
    assigned[name] === undefined ? [] : [[name, assigned[name]]],
  );
  return { ...Object.fromEntries(stated), ...(session !== undefined && { session }) };
}

/** The mean colour of repeated readings: every unit counts as much as its neighbours, however often it was read itself. */
export function meanOfUnits<Colour>(
  given: Repeated<Measurement>,
  { colourOf, mean }: Pick<StrengthBasis<Colour>, 'colourOf' | 'mean'>,
): Colour {
  const read: ReadRepeated<Measurement> = readRepeated(given, 'readings');
  const meanOf = (tree: UnitTree<Measurement>): Colour =>
    'units' in tree ? mean(tree.units.map(meanOf)) : colourOf(tree.reading);
  return meanOf(read.tree);
}

/** All readings of a nest, in their order. */
export function readingsOf(given: Repeated<Measurement> | undefined): Measurement[] {
  return given === undefined ? [] : readRepeated(given, 'readings').readings.map(({ reading }) => reading);
}

/** The units of the outermost level that was repeated, each with what was repeated below it; the whole nest where nothing was. */
export function topUnitsOf(given: Repeated<Measurement>): Repeated<Measurement>[] {
  const units = LEVELS.flatMap((level) => unitsOf(given, level) ?? []);
  if (units.length === 0) return [given];
  return units.length > 1 ? units : topUnitsOf(units[0]);
}

function unitsOf(given: Repeated<Measurement>, level: Level): readonly Repeated<Measurement>[] | undefined {
  const nest: Readonly<Partial<Record<Level, readonly Repeated<Measurement>[]>>> = 'name' in given ? {} : given;
  return nest[level];
}
