/** The cosine of 140 degrees: farther than that from 275 degrees the rotation term is below 1e-13 of the difference. */
export const NO_ROTATION = -0.766;

/**
 * Sine of the angle Δθ, doubled, by which CIEDE2000 turns hue differences against chroma differences among the blues:
 * `sin(60° exp(-((h - 275°) / 25°)²))`, for hues no farther than 140 degrees from 275.
 *
 * Only + - * / and the square root are used, which every engine rounds alike; cosines, exponentials and sines differ in the last bit from
 * one to the next. With u = 1 - cos(θ/2) the sixteenth root of the exponential is a smooth function of u, here its minimax-like (Chebyshev)
 * polynomial of degree 10; four squarings give the exponential, an odd polynomial its sine.
 *
 * @param cosine - of the angle θ between the mean hue and 275 degrees, above {@link NO_ROTATION}
 * @returns the sine, within 1e-13
 * @see Sharma, Wu & Dalal (2005), Color Res. Appl. 30, equations 17 and 21; coefficients computed with 50 digits from these
 */
export function rotationSine(cosine: number): number {
  const u = 1 - Math.sqrt((1 + Math.min(cosine, 1)) / 2);
  const root =
    1 +
    u *
      (-2.6262450800093933 +
        u *
          (3.0108740968013343 +
            u *
              (-1.9861349623606472 +
                u *
                  (0.8374658396514193 +
                    u *
                      (-0.23751571427965185 +
                        u *
                          (0.04652073374395805 +
                            u *
                              (-0.006375965074259841 +
                                u *
                                  (0.0006146220874656645 +
                                    u * (-4.145719052706968e-5 + u * 1.782302626801865e-6)))))))));
  const r2 = root * root;
  const r4 = r2 * r2;
  const r8 = r4 * r4;
  const w = r8 * r8;
  const z = w * w;
  return (
    w *
    (1.0471975511965976 +
      z *
        (-0.19139676963146235 +
          z *
            (0.010494502221429157 +
              z *
                (-0.0002740121287315694 +
                  z * (4.173438460309034e-6 + z * (-4.159903120924146e-8 + z * 2.871769358174674e-10))))))
  );
}
