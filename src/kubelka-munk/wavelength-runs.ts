/** Wavelengths in ascending order as people write them, neighbours drawn together: `400-430 nm, 610 nm`. */
export function wavelengthRuns(wavelengths: readonly number[], step: number): string {
  const runs: [number, number][] = [];
  for (const wavelength of wavelengths) {
    const run = runs.at(-1);
    // Steps such as 10/3 nm add up with rounding.
    if (run && wavelength - run[1] < 1.5 * step) run[1] = wavelength;
    else runs.push([wavelength, wavelength]);
  }
  return runs.map(([from, to]) => (from === to ? `${from} nm` : `${from}-${to} nm`)).join(', ');
}
