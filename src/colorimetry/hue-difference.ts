/**
 * ΔH*ab without angles: 2 sqrt(C1 C2) sin(Δh / 2), signed as Δh from the first colour to the second, the short way round.
 *
 * At 180 degrees, where both ways are equally short, the sign is that of h2 - h1 with both angles in 0 to 360. Neither at
 * small nor at large hue differences does the form lose digits; 0 if either colour is neutral.
 *
 * @see Sève (1991), Color Res. Appl. 16; ISO/CIE 11664-4
 */
export function hueDifference(a1: number, b1: number, a2: number, b2: number): number {
  const cross = a1 * b2 - a2 * b1;
  const dot = a1 * a2 + b1 * b2;
  const product = Math.hypot(a1, b1) * Math.hypot(a2, b2);
  // Below this a colour is neutral for every purpose, and the quotient would overflow.
  if (product < 1e-200) return 0;
  if (dot >= 0) return cross * Math.sqrt(2 / (product + dot));
  const positive = cross === 0 ? b1 > b2 || (b1 === b2 && a1 > a2) : cross > 0;
  return (positive ? 1 : -1) * Math.sqrt(2 * (product - dot));
}
