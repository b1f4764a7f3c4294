import {
  deltaE2000,
  describeViewing,
  type Lab,
  labFromSpectrum,
  labFromXyz,
  type MeasuredColour,
  type Spectrum,
  whitePoint,
} from '../../colorimetry/index.js';
import type { Notes } from '../text/notes.js';

/** A file's own colour may differ from that of its spectrum by rounding and by the way of weighting; more is another condition, quantity or scale. */
const LARGEST_DIFFERENCE = 0.3;

const round = (value: number) => Math.round(value * 100) / 100;

function labOf({ lab, xyz, viewing }: MeasuredColour): Lab | undefined {
  return lab ?? (xyz && viewing && labFromXyz(xyz, whitePoint(viewing)));
}

/**
 * Compares the colour that a file gives with the one computed from the spectrum beside it, under the viewing that the file states; a difference
 * beyond 0.3 ΔE00 is noted with both values. Without a stated viewing there is nothing to compare under.
 *
 * @see ISO/CIE 11664-6 for ΔE00; the limit is common practice, no source
 */
export function checkColour(
  spectrum: Spectrum,
  colour: MeasuredColour,
  name: string,
  place: () => string,
  notes: Notes,
): void {
  const { viewing } = colour;
  const given = labOf(colour);
  if (!viewing || !given) return;
  const computed = labFromSpectrum(spectrum, viewing);
  const difference = deltaE2000(computed, given);
  if (difference <= LARGEST_DIFFERENCE) return;
  const show = ({ L, a, b }: Lab) => `${L.toFixed(2)}, ${a.toFixed(2)}, ${b.toFixed(2)}`;
  const message =
    `L*, a*, b* of ${JSON.stringify(name)} in the file are ${show(given)}; its spectrum gives ${show(computed)} under ` +
    `${describeViewing(viewing)} (ΔE00 ${difference.toFixed(1)}). Conditions, quantity or scale may not be what they were taken for.`;
  notes.add('colour-disagrees', message, place(), {
    given: [given.L, given.a, given.b].map(round),
    computed: [computed.L, computed.a, computed.b].map(round),
    deltaE2000: round(difference),
    viewing: describeViewing(viewing),
  });
}
