// Prints how far the strength from Lab values alone lies from the spectral figure, over simulated pigments by hue. Build first:
//   npm run build && node scripts/strength-from-lab-error.mjs
import { createSpectrum, D65_10, labFromSpectrum, lchFromLab } from 'tintladder/colorimetry';
import {
  measuredReflectance,
  reflectanceFromKOverS,
  relativeTintingStrength,
  relativeTintingStrengthFromLab,
} from 'tintladder/strength';

const surface = { external: 0.04, internal: 0.6, specular: 'included' };
const wavelengths = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);

// Invented curves: K/S that one amount adds, relative to its largest value.
const bell =
  (peak, width, height = 1) =>
  (w) =>
    height * Math.exp(-(((w - peak) / width) ** 2));
const below =
  (edge, softness, height = 1) =>
  (w) =>
    height / (1 + Math.exp((w - edge) / softness));
const sum =
  (...parts) =>
  (w) =>
    parts.reduce((total, part) => total + part(w), 0.01);
const pigments = {
  red: sum(bell(535, 45), bell(490, 60, 0.5)),
  orange: sum(below(545, 14)),
  brown: sum(below(560, 22), below(720, 60, 0.25)),
  yellow: sum(below(485, 12)),
  'greenish yellow': sum(below(465, 14)),
  green: sum(bell(430, 40, 0.6), bell(650, 55)),
  turquoise: sum(bell(670, 65), bell(610, 40, 0.5), bell(410, 30, 0.2)),
  blue: sum(bell(610, 50), bell(690, 50, 0.8)),
  violet: sum(bell(570, 45), bell(530, 30, 0.4)),
  magenta: sum(bell(550, 35), bell(515, 30, 0.7)),
  black: sum((w) => 550 / w),
};
const white = (w) => 0.003 + 0.06 / (1 + Math.exp((w - 405) / 6));

function reduction(pigment, amount) {
  const values = wavelengths.map((w) =>
    measuredReflectance(reflectanceFromKOverS(white(w) + amount * pigment(w)), surface),
  );
  return createSpectrum({ start: 400, step: 10, values, scale: 'fraction' });
}

/** Strength from Lab less the spectral figure by the same criterion, in points of %. */
function errorOf(pigment, depth, strength, criterion) {
  const spectra = [reduction(pigment, depth), reduction(pigment, depth * strength)];
  const base = reduction(pigment, 0);
  const options = { criterion, viewing: D65_10, surface };
  const lab = (spectrum) => labFromSpectrum(spectrum, D65_10);
  const spectral = relativeTintingStrength(...spectra, { ...options, white: base }).percent;
  return relativeTintingStrengthFromLab(...spectra.map(lab), { ...options, white: lab(base) }).percent - spectral;
}

// By Lab the absorption maximum is the band, X, Y or Z, with the largest added K/S.
const CRITERIA = ['absorption-maximum', 'tristimulus-y', 'smallest-difference'];
const DEPTHS = [0.1, 1];
const STRENGTHS = [0.8, 1.25];

console.log(
  `| pigment | K/S | L* | h | ${CRITERIA.map((name) => STRENGTHS.map((s) => `${name} ${100 * s}`).join(' | ')).join(' | ')} |`,
);
console.log(`|${' --- |'.repeat(4 + CRITERIA.length * STRENGTHS.length)}`);
const hueOf = (pigment) => lchFromLab(labFromSpectrum(reduction(pigment, 1), D65_10)).h;
const byHue = Object.entries(pigments).sort(([, one], [, other]) => hueOf(one) - hueOf(other));
for (const [name, pigment] of byHue) {
  for (const depth of DEPTHS) {
    const { L, h } = lchFromLab(labFromSpectrum(reduction(pigment, depth), D65_10));
    const errors = CRITERIA.flatMap((criterion) =>
      STRENGTHS.map((strength) =>
        errorOf(pigment, depth, strength, criterion)
          .toFixed(1)
          .replace(/^-0\.0$/, '0.0'),
      ),
    );
    console.log(`| ${[name, depth, L.toFixed(0), h.toFixed(0), ...errors].join(' | ')} |`);
  }
}
