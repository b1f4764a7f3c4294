/** A layer through which its substrate shows, at one wavelength. */
export interface Layer {
  /** 1 + K/S */
  readonly a: number;
  /** √(a² - 1) */
  readonly b: number;
  /** S X */
  readonly depth: number;
  readonly substrate: number;
}

/**
 * The layer of two internal reflectances, over white and over black: over a substrate G, `a (R + G) + c (R - G) = 1 + R G` with `a = 1 + K/S` and
 * `c = b coth bSX`, so two readings are two linear equations.
 *
 * @returns undefined where the film hides or no film reads so
 * @see Kubelka (1948), J. Opt. Soc. Am. 38, 448-457
 */
export function layerOf(overWhite: number, overBlack: number, white: number, black: number): Layer | undefined {
  if (!(overWhite > overBlack && white > black)) return undefined;
  const [p, q, r] = [overWhite + white, overWhite - white, 1 + overWhite * white];
  const [s, t, u] = [overBlack + black, overBlack - black, 1 + overBlack * black];
  const determinant = p * t - q * s;
  const a = (r * t - q * u) / determinant;
  const c = (p * u - r * s) / determinant;
  const b = Math.sqrt(a * a - 1);
  if (!(a > 1 && c > b)) return undefined;
  return { a, b, depth: Math.atanh(b / c) / b, substrate: white };
}

/** Internal reflectance of the layer over its white, at another S X. */
export function reflectanceOfLayer({ a, b, substrate }: Layer, depth: number): number {
  const c = b / Math.tanh(b * depth);
  return (1 - substrate * (a - c)) / (a - substrate + c);
}
