/** Response at a dosage. */
export interface DosagePoint {
  /** Dosage, any unit, >= 0; mostly % on pigment */
  readonly dosage: number;
  /** What was read there, any unit, >= 0: strength, or the colour difference of a rub-out */
  readonly response: number;
}

/** `y = P - c (x0 - x)²` below the start x0 of the plateau, `y = P` from there on; both parts meet without a kink. */
export interface QuadraticPlateau {
  /** x0 */
  readonly start: number;
  /** P */
  readonly plateau: number;
  /** c; positive for a response that rises to its plateau */
  readonly curvature: number;
  readonly squares: number;
}

/** The least-squares plateau and curvature for a plateau that starts at `start`; linear in both. */
export function plateauFrom(start: number, points: readonly DosagePoint[]): QuadraticPlateau {
  const n = points.length;
  let [meanX, meanY, xx, xy] = [0, 0, 0, 0];
  for (const { dosage, response } of points) {
    meanX += shortfall(start, dosage) / n;
    meanY += response / n;
  }
  for (const { dosage, response } of points) {
    const x = shortfall(start, dosage) - meanX;
    xx += x * x;
    xy += x * (response - meanY);
  }
  const curvature = xx > 0 ? -xy / xx : 0;
  const plateau = meanY + curvature * meanX;
  return { start, plateau, curvature, squares: squaresOf(points, start, plateau, curvature) };
}

/** Response of the fitted curve at a dosage. */
export function responseAt({ start, plateau, curvature }: Omit<QuadraticPlateau, 'squares'>, dosage: number): number {
  return plateau - curvature * shortfall(start, dosage);
}

function shortfall(start: number, dosage: number): number {
  const missing = Math.max(0, start - dosage);
  return missing * missing;
}

function squaresOf(points: readonly DosagePoint[], start: number, plateau: number, curvature: number): number {
  let sum = 0;
  for (const { dosage, response } of points) {
    const rest = response - plateau + curvature * shortfall(start, dosage);
    sum += rest * rest;
  }
  return sum;
}
