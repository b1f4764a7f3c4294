import type { ReflectanceScale } from '../measurement/measurement.js';

/** A heading that names a wavelength, such as `400`, `400 nm`, `R400`, `400,0` or `%R 400`. */
export interface WavelengthLabel {
  readonly wavelength: number;
  /** Number of decimals printed. */
  readonly decimals: number;
  /** The scale that the heading states. */
  readonly scale?: ReflectanceScale;
  /** A quantity the heading names that is not reflectance. */
  readonly unsupported?: string;
}

const REFLECTANCE_WORDS =
  /^(?:r|refl|reflectance|reflectancefactor|remission|spec|spectral|spectrum|nm|wl|w|wavelength|lambda|λ|spectralnm|spectralpct|spectraldec|pct)?$/;
const UNSUPPORTED_WORDS: ReadonlyMap<string, string> = new Map([
  ['k/s', 'K/S'],
  ['ks', 'K/S'],
  ['abs', 'absorbance'],
  ['absorbance', 'absorbance'],
  ['a', 'absorbance'],
  ['t', 'transmittance'],
  ['trans', 'transmittance'],
  ['transmittance', 'transmittance'],
  ['od', 'optical density'],
  ['density', 'optical density'],
  ['log1/r', 'log 1/R'],
  ['log(1/r', 'log 1/R'],
  ['power', 'spectral power'],
  ['spd', 'spectral power'],
  ['radiance', 'radiance'],
  ['irradiance', 'irradiance'],
]);

const SHAPE = /^(.*?)(\d{3,4})(?:[.,](\d{1,17}))?([^\d]*)$/;

/** Whether a number can be a wavelength in nm, from the ultraviolet to the near infrared. */
export function isWavelength(value: number): boolean {
  return value >= 200 && value <= 2500;
}

/** Reads a heading as a wavelength, or gives `undefined`. */
export function parseWavelengthLabel(text: string): WavelengthLabel | undefined {
  if (text.length > 40) return undefined;
  const shape = SHAPE.exec(text.trim());
  if (!shape) return undefined;
  const [, before, whole, fraction = '', after] = shape;
  const wavelength = Number(`${whole}.${fraction}`);
  if (!isWavelength(wavelength)) return undefined;
  const prefix = before.toLowerCase().replace(/[\s_\-.:[\]()]/g, '');
  const suffix = after.toLowerCase().replace(/[\s_\-.:[\]()]/g, '');
  const unsupported = UNSUPPORTED_WORDS.get(prefix.replace('%', ''));
  const words = prefix.replace('%', '');
  if (unsupported === undefined && !REFLECTANCE_WORDS.test(words)) return undefined;
  if (!/^(?:nm)?(?:%|pct)?(?:r|refl|reflectance)?$/.test(suffix)) return undefined;
  const percent = prefix.includes('%') || prefix.includes('pct') || suffix.includes('%') || suffix.includes('pct');
  return {
    wavelength,
    decimals: fraction.length,
    ...(percent ? { scale: 'percent' as const } : prefix === 'spectraldec' ? { scale: 'fraction' as const } : {}),
    ...(unsupported === undefined ? {} : { unsupported }),
  };
}
