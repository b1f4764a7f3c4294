// Simulated opaque paints: K/S curves of smooth bands and edges over a white, at any wavelength. Invented, not measured.

export interface Pigment {
  readonly name: string;
  reflectance(wavelength: number): number;
}

const band = (centre: number, width: number) => (nm: number) => Math.exp(-(((nm - centre) / width) ** 2));
const edge = (centre: number, width: number) => (nm: number) => 1 / (1 + Math.exp((nm - centre) / width));

function pigment(name: string, ratio: (nm: number) => number): Pigment {
  return {
    name,
    reflectance: (nm) => {
      // The white base absorbs towards the ultraviolet.
      const F = 0.005 + 0.4 * edge(395, 8)(nm) + ratio(nm);
      return 1 / (1 + F + Math.sqrt(F * F + 2 * F));
    },
  };
}

export const PIGMENTS: readonly Pigment[] = [
  pigment('white', () => 0),
  pigment('grey', () => 0.6),
  pigment('black', () => 8),
  pigment('yellow', (nm) => 3 * edge(490, 14)(nm)),
  pigment('red', (nm) => 4 * edge(575, 14)(nm)),
  pigment('ochre', (nm) => 2 * edge(540, 28)(nm)),
  pigment('violet', (nm) => 2 * band(550, 45)(nm)),
  pigment('blue', (nm) => 5 * band(620, 60)(nm) + 0.3 * edge(430, 20)(nm)),
  pigment('green', (nm) => 4 * band(650, 55)(nm) + 2.5 * edge(470, 18)(nm)),
  pigment('pale blue', (nm) => 0.3 * band(620, 60)(nm)),
  pigment('pale red', (nm) => 0.4 * edge(570, 20)(nm)),
];
