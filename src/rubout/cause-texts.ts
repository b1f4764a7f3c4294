import type { RubOutCause } from './rub-out-cause.js';

/** What each cause does to a film, and what confirms it or tells it from the others. */
export const CAUSE_TEXTS: Readonly<Record<RubOutCause, { readonly because: string; readonly check: string }>> = {
  'coloured-pigment-flocculated': {
    because: 'Clusters of the coloured pigment absorb less than the same pigment apart, and rubbing takes them apart.',
    check:
      'Look at the wet paint under the microscope: clusters come apart under a sheared cover glass. Then cross-test: this base with a colorant known to be stable, and this colorant in a base known to be sound.',
  },
  'white-pigment-flocculated': {
    because: 'Clusters of the white scatter less than the same white apart, and rubbing takes them apart.',
    check:
      'Rub out over a chart, in a film that does not quite hide, and gauge its thickness: only scattering and absorption read apart tell the white from the coloured pigment.',
  },
  'both-flocculated': {
    because:
      'Clusters of both pigments come apart: absorption and scattering rise together and hide each other in an opaque film.',
    check: 'Rub out over a chart, in a film that does not quite hide, and gauge its thickness.',
  },
  'one-colorant-flocculated': {
    because: 'Clusters of one of several colorants come apart, which moves the shade towards it.',
    check: 'Resolve the tint into its colorants, or rub out each colorant in the same base by itself.',
  },
  'pigments-separated': {
    because:
      'Pigments that move at different speeds while the film dries leave too much of one and too little of another at the surface, the white among them; rubbing mixes them.',
    check:
      'Pour the paint beside a drawdown and let both dry: separation grows with film thickness and drying time, and the underside of a film drawn on glass shows the opposite shade.',
  },
  'surface-changed': {
    because: 'A finger changes the gloss of a film, which adds to or takes from every reading alike.',
    check: 'Measure the gloss of both areas, or read both with the specular reflection included and excluded.',
  },
  'thickness-changed': {
    because: 'Rubbing thins a film that does not quite hide, so more of the card shows through.',
    check: 'Read both areas over black and over white, or repeat over a thicker drawdown.',
  },
  'uneven-film': {
    because: 'Floating cells or an uneven drawdown change colour from spot to spot.',
    check:
      'Draw down again on an even substrate, look for cells with a magnifier, and read five spots of the unrubbed area.',
  },
};
