import type { Spectrum } from '../colorimetry/index.js';
import { TintladderError } from '../core/index.js';
import type { Measurement } from '../exchange/index.js';
import { compilePattern } from './sample-pattern.js';
import type { SeriesPlace } from './series-kinds.js';
import type { ReadingPlace, ReadingRule, Study } from './study.js';

/** A reading with its place in the study. */
export interface AssignedReading extends Required<Pick<ReadingPlace, 'role' | 'area' | 'storage'>>, SeriesPlace {
  readonly name: string;
  readonly spectrum: Spectrum;
  /** Line of the file at which it starts. */
  readonly line?: number;
  readonly package?: string;
  readonly paint: string;
}

/** Every reading that a rule claims, and the names of those that none does. */
export interface Assignment {
  readonly readings: readonly AssignedReading[];
  readonly unused: readonly string[];
}

/**
 * Gives each measurement its place by the rules of the study.
 *
 * @throws TintladderError `unknown-sample` for a name that no measurement has, or a pattern that fits none;
 * `reading-claimed-twice` listing the readings that two rules claim; `kinds-mixed` for a claimed measurement without a spectrum
 */
export function assignReadings(study: Study, measurements: readonly Measurement[]): Assignment {
  const claims = measurements.map((): { rule: number; path: ReadingPlace }[] => []);
  study.readings.forEach((rule, r) => {
    const read = readerOf(rule, study);
    let fits = 0;
    measurements.forEach(({ name }, m) => {
      const found = read(name);
      if (!found) return;
      fits++;
      claims[m].push({ rule: r, path: found });
    });
    if (fits === 0) {
      throw new TintladderError('unknown-sample', {
        path: `readings[${r}]`,
        received: rule.pattern ?? rule.names,
        expected: 'the name of a sample in the measurements',
        hint: nearby(measurements),
      });
    }
    for (const name of rule.names ?? []) {
      if (measurements.some((measurement) => measurement.name === name)) continue;
      throw new TintladderError('unknown-sample', {
        path: `readings[${r}].names`,
        received: name,
        expected: 'the name of a sample in the measurements',
        hint: nearby(measurements),
      });
    }
  });
  refuseDoubleClaims(measurements, claims);
  const readings = measurements.flatMap((measurement, m) => claims[m].map(({ path }) => assigned(measurement, path)));
  const unused = measurements.filter((_, m) => claims[m].length === 0).map(({ name }) => name);
  return { readings, unused };
}

function readerOf(rule: ReadingRule, study: Study): (name: string) => ReadingPlace | undefined {
  const { names, pattern, ...fixed } = rule;
  if (pattern === undefined) return (name) => (names?.includes(name) ? fixed : undefined);
  const match = compilePattern(pattern, study);
  return (name) => {
    const found = match(name);
    // what the pattern doesn't hold is undefined and must not hide what the rule fixes
    return (
      found && { ...Object.fromEntries(Object.entries(found).filter(([, value]) => value !== undefined)), ...fixed }
    );
  };
}

function refuseDoubleClaims(
  measurements: readonly Measurement[],
  claims: readonly (readonly { rule: number }[])[],
): void {
  const twice = measurements.filter((_, m) => claims[m].length > 1).map(({ name }) => name);
  if (twice.length === 0) return;
  const first = claims.find((claim) => claim.length > 1) ?? [];
  throw new TintladderError('reading-claimed-twice', {
    path: first.map(({ rule }) => `readings[${rule}]`).join(' and '),
    received: twice,
    expected: 'each reading in one rule only',
  });
}

function assigned(measurement: Measurement, path: ReadingPlace): AssignedReading {
  const { name, spectrum, line } = measurement;
  if (!spectrum) {
    throw new TintladderError('kinds-mixed', {
      path: `measurement ${JSON.stringify(name)}`,
      received: spectrum,
      expected: 'a reflectance spectrum',
      hint: 'A study is evaluated from spectra; compare Lab readings with relativeTintingStrengthFromLab and assessRubOut.',
    });
  }
  const { role = 'tint', area = 'unrubbed', storage = 'fresh', paint = '', ...rest } = path;
  return { ...rest, name, spectrum, ...(line !== undefined && { line }), role, area, storage, paint };
}

function nearby(measurements: readonly Measurement[]): string {
  const names = [...new Set(measurements.map(({ name }) => name))];
  return `The measurements hold ${names.slice(0, 5).join(', ')}${names.length > 5 ? ' and others' : ''}.`;
}
