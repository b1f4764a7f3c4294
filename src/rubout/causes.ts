import type { ColorantChange } from './colorant-changes.js';
import { movementOf } from './colorant-changes.js';
import type { PossibleCause, RubOutCause } from './rub-out-result.js';

/** What each cause does to a film, and what confirms it or tells it from the others. */
const CAUSES: Readonly<Record<RubOutCause, { readonly because: string; readonly check: string }>> = {
  'coloured-pigment-flocculated': {
    because:
      'Flocculates of the coloured pigment absorb less than the same pigment apart, and rubbing takes them apart.',
    check:
      'Look at the wet paint under the microscope: flocculates show as clusters that come apart under a sheared cover glass.',
  },
  'white-pigment-flocculated': {
    because: 'Flocculates of the white scatter less than the same white apart, and rubbing takes them apart.',
    check:
      'Rub out the untinted white and compare its hiding over black before and after shear; look at it under the microscope.',
  },
  'pigments-separated': {
    because:
      'Pigments that move at different speeds while the film dries leave too much of one and too little of another at the surface, and rubbing mixes them.',
    check:
      'Pour the paint out beside a drawdown and let both dry: separation grows with film thickness and drying time, and the underside of a film drawn on glass shows the opposite shade.',
  },
  'uneven-film': {
    because: 'Floating cells or an uneven drawdown change colour from spot to spot.',
    check:
      'Draw down again on an even substrate, look for cells with a magnifier, and read five spots of the unrubbed area.',
  },
};

/** The causes that a rule names, with the pigments that moved where they are known. */
export function describeCauses(causes: readonly RubOutCause[], changes: readonly ColorantChange[]): PossibleCause[] {
  const named = (ways: readonly string[]) =>
    changes.filter((change) => ways.includes(movementOf(change))).map(({ name }) => name);
  return causes.map((cause) => ({
    cause,
    ...CAUSES[cause],
    pigments:
      cause === 'coloured-pigment-flocculated'
        ? named(['more'])
        : cause === 'pigments-separated'
          ? named(['more', 'less'])
          : [],
  }));
}
