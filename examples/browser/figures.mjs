// The page's three figures, drawn by the package. Each comes as the text of an SVG and is parsed as XML.
import { CRITERION_WORDS, intervalChart, lineChart, rubOutPlane } from 'tintladder/report';
import { fixed } from './numbers.mjs';

const asElement = (svg) =>
  document.importNode(new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement, true);

/** Reflectance over wavelength; each curve is named at its end. */
export function reflectanceChart(curves) {
  const wavelength = ({ start, step }, band) => start + step * band;
  const described = curves.map(({ name, spectrum }) => {
    const lowest = spectrum.values.indexOf(Math.min(...spectrum.values));
    return `${name}: lowest with ${fixed(100 * spectrum.values[lowest], 1)} % at ${wavelength(spectrum, lowest)} nm.`;
  });
  const chart = {
    id: 'reflectance',
    title: 'Reflectance, means of the replicates',
    description: described.join(' '),
    xLabel: 'Wavelength, nm',
    yLabel: 'Reflectance, %',
    yRange: [0, 10],
    series: curves.map(({ name, spectrum }) => ({
      label: name,
      curve: Array.from(spectrum.values, (value, band) => [wavelength(spectrum, band), 100 * value]),
    })),
    width: 420,
  };
  return asElement(lineChart(chart));
}

/** Strength by each criterion with its interval, against 100 %. */
export function strengthChart(results) {
  const chart = {
    id: 'strengths',
    title: 'Strength of the trial by every criterion, with its 95 % interval',
    description: results
      .map(({ criterion, percent }) => `${CRITERION_WORDS[criterion]}: ${fixed(percent, 1)} %.`)
      .join(' '),
    axisLabel: 'Strength, %',
    // all rows are the trial's, so all have its mark
    rows: results.map(({ criterion, percent, interval }) => ({
      label: CRITERION_WORDS[criterion],
      value: percent,
      interval,
      style: 1,
    })),
    lines: [{ value: 100, label: 'reference', kind: 'reference' }],
    decimals: 1,
    width: 420,
  };
  return asElement(intervalChart(chart));
}

/** Rubbed less unrubbed, with the limit around. */
export function rubOutChart(points, limit) {
  const described = points.map(
    ({ label, dL, da, db }) => `${label}: ΔL* ${fixed(dL, 2)}, Δa* ${fixed(da, 2)}, Δb* ${fixed(db, 2)}.`,
  );
  const plane = {
    id: 'rub-out',
    title: `Rubbed less unrubbed area; dashed, the limit of ΔE*ab ${limit}, which all three coordinates share`,
    description: described.join(' '),
    points,
    limit,
  };
  return asElement(rubOutPlane(plane));
}
