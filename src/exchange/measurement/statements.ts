import type { Viewing } from '../../colorimetry/index.js';
import type { MeasurementBlock } from './measurement-blocks.js';

/** The parts of the conditions that stand before a table, in the order in which they are written. */
export const STATEMENTS = [
  'illuminant',
  'observer',
  'specular',
  'geometry',
  'instrument',
  'session',
  'bandPass',
] as const;

/** One of {@link STATEMENTS}. */
export type StatementPart = (typeof STATEMENTS)[number];

/** What ends the statement of an earlier table. */
const NOT_STATED = 'not stated';

/**
 * The statements that stand before each block's table. A part that an earlier table states and a later one does not is said not to be stated; a part
 * that none states is left out.
 *
 * @param viewingOf - the viewing that is to stand before a block's table, rather than in its headings
 */
export function statementsOf(
  blocks: readonly MeasurementBlock[],
  viewingOf: (block: MeasurementBlock) => Viewing | undefined,
): (readonly (readonly [StatementPart, string])[])[] {
  const stated = new Set<StatementPart>();
  return blocks.map((block) => {
    const values = valuesOf(block, viewingOf(block));
    return STATEMENTS.flatMap((part): (readonly [StatementPart, string])[] => {
      const value = values[part];
      if (value === undefined && !stated.has(part)) return [];
      if (value === undefined) stated.delete(part);
      else stated.add(part);
      return [[part, value ?? NOT_STATED]];
    });
  });
}

function valuesOf(
  { conditions: { specular, geometry, instrument, session, bandPass } }: MeasurementBlock,
  viewing: Viewing | undefined,
): Partial<Record<StatementPart, string | undefined>> {
  const illuminant = viewing && (typeof viewing.illuminant === 'string' ? viewing.illuminant : viewing.illuminant.name);
  return {
    illuminant,
    observer: viewing && `${viewing.observer} degree`,
    specular,
    geometry,
    instrument,
    session,
    bandPass: bandPass && (bandPass === 'corrected' ? 'corrected' : 'not corrected'),
  };
}
