import type { Conditions, IlluminantName, Observer, Viewing } from '../../colorimetry/index.js';

const ILLUMINANT = /(?:^|[^a-z0-9])(?:(D(?:50|55|65|75))|(?:CIE\s?)?F(?:L)?(1[0-2]|[1-9])|(A|C|E))(?![a-z0-9])/i;
const OBSERVER = /(?:^|[^0-9.])(2|10)(?![0-9.])|\b(1931|1964)\b/;

/** Name of an illuminant as files write it (`D65`, `F11`, `FL11`, `Illuminant A`), or `undefined`. */
export function parseIlluminant(text: string): IlluminantName | undefined {
  const found = ILLUMINANT.exec(text);
  if (!found) return undefined;
  const [, daylight, lamp, letter] = found;
  if (lamp !== undefined) return `FL${lamp}` as IlluminantName;
  return (daylight ?? letter).toUpperCase() as IlluminantName;
}

/** Observer as files write it (`10`, `2°`, `10 degrees`, `CIE 1964`), or `undefined`. */
export function parseObserver(text: string): Observer | undefined {
  const found = OBSERVER.exec(text);
  if (!found) return undefined;
  if (found[2] !== undefined) return found[2] === '1964' ? '10' : '2';
  return found[1] as Observer;
}

/** Illuminant and observer in one text, in either order: `D65/10`, `10° D65`. */
export function parseViewing(text: string): Viewing | undefined {
  const illuminant = parseIlluminant(text);
  const observer = parseObserver(text);
  return illuminant !== undefined && observer !== undefined ? { illuminant, observer } : undefined;
}

/** Specular component as files write it. */
export function parseSpecular(text: string): Conditions['specular'] {
  const word = text.trim().toLowerCase();
  if (/^(included|specular included|sci|spin|rsin)$/.test(word)) return 'included';
  if (/^(excluded|specular excluded|sce|spex|rsex)$/.test(word)) return 'excluded';
  return undefined;
}

/** What a file says of the conditions, in its own words; each part on its own. */
export interface StatedConditions {
  illuminant?: string;
  observer?: string;
  specular?: string;
  geometry?: string;
  instrument?: string;
}

/** Conditions from their parts; a part that can't be understood is left out. */
export function toConditions({ illuminant, observer, specular, geometry, instrument }: StatedConditions): Conditions {
  const viewing = parseViewing(`${illuminant ?? ''} / ${observer ?? ''}`);
  const specularMode = specular === undefined ? undefined : parseSpecular(specular);
  return {
    ...(viewing ? { viewing } : {}),
    ...(specularMode ? { specular: specularMode } : {}),
    ...(geometry ? { geometry } : {}),
    ...(instrument ? { instrument } : {}),
  };
}
