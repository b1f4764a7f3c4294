import { TintladderError, type Warning } from '../core/index.js';
import { type Lab, labFromSpectrum, labFromXyz } from './cielab.js';
import type { MeasuredColour, Reading } from './reading.js';
import { sameViewing } from './same-viewing.js';
import { describeViewing, type Viewing } from './viewing.js';
import { whitePoint } from './xyz-from-spectrum.js';

/** The colour of a reading under a viewing, and what was assumed for it. */
export interface LabOfReading {
  readonly lab: Lab;
  readonly warnings: readonly Warning[];
}

/**
 * CIELAB of a reading under a viewing: of its spectrum where it has one, else the colour that it holds for that viewing.
 *
 * A colour that states no viewing is taken to belong to the one that is asked for, with a warning; one that states another is none of it.
 *
 * @param path - what messages call the reading: `sample`
 * @throws TintladderError `conditions-mismatch` if all its colours belong to other viewings; `empty` for a reading without a colour
 */
export function labOfReading(reading: Reading, viewing: Viewing, path: string): LabOfReading {
  if (reading.spectrum) return { lab: labFromSpectrum(reading.spectrum, viewing), warnings: [] };
  const colours = coloursOf(reading);
  const known = colours.find((colour) => colour.viewing && sameViewing(colour.viewing, viewing));
  if (known) return { lab: known.lab(viewing), warnings: [] };
  const unstated = colours.find((colour) => colour.viewing === undefined);
  if (unstated) return { lab: unstated.lab(viewing), warnings: [viewingNotStated(path, viewing)] };
  if (colours.length === 0) {
    throw new TintladderError('empty', { path, received: reading, expected: 'a spectrum, Lab or XYZ' });
  }
  throw new TintladderError('conditions-mismatch', {
    path: `${path}.conditions.viewing`,
    received: colours.flatMap((colour) => (colour.viewing ? describeViewing(colour.viewing) : [])).join(', '),
    expected: describeViewing(viewing),
    hint: 'Lab and XYZ can be compared only under the illuminant and observer they were computed for.',
  });
}

interface StatedColour {
  readonly viewing?: Viewing | undefined;
  readonly lab: (viewing: Viewing) => Lab;
}

/** All colours of a reading beside its spectrum. */
function coloursOf({ lab: ownLab, xyz: ownXyz, conditions, colours = [] }: Reading): readonly StatedColour[] {
  const own = { ...(ownLab && { lab: ownLab }), ...(ownXyz && { xyz: ownXyz }) };
  const measured: readonly MeasuredColour[] = [{ ...own, ...conditions }, ...colours];
  return measured.flatMap(({ lab, xyz, viewing }) => {
    if (lab) return { viewing, lab: () => lab };
    return xyz ? { viewing, lab: (under: Viewing) => labFromXyz(xyz, whitePoint(under)) } : [];
  });
}

function viewingNotStated(path: string, viewing: Viewing): Warning {
  return {
    code: 'condition-not-stated',
    message: `The colour of ${path} states no illuminant and observer; it is taken to belong to ${describeViewing(viewing)}.`,
    path: `${path}.conditions.viewing`,
  };
}
