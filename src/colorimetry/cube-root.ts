/**
 * Cube root, several times faster than `Math.cbrt` on the ratios that CIELAB meets.
 *
 * A rational start within 0.6 % for 0.0088 to 1.3, then two steps of Halley's method, each of which cubes the error; outside
 * that range `Math.cbrt`.
 */
export function cubeRoot(t: number): number {
  if (!(t > 0.0088 && t < 1.3)) return Math.cbrt(t);
  let root = (0.135 + t * (14.1038 + t * 41.4925)) / (1 + t * (29.7124 + t * 24.8583));
  let cube = root * root * root;
  root += (root * (t - cube)) / (2 * cube + t);
  cube = root * root * root;
  return root + (root * (t - cube)) / (2 * cube + t);
}
