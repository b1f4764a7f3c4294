import { TintladderError, type Warning } from '../core/index.js';
import { BLOCKS, LEVELS } from '../evidence/index.js';
import type { Measurement } from '../exchange/index.js';
import { type AssignedReading, placeText } from './assigned-reading.js';
import { noteEqualReadings } from './equal-readings.js';
import { compilePattern } from './sample-pattern.js';
import { SERIES_FIELDS } from './series-kinds.js';
import type { ReadingPlace, ReadingRule, Study } from './study.js';

/** Every reading that a rule claims, and the names of those that none does. */
export interface Assignment {
  readonly readings: readonly AssignedReading[];
  readonly unused: readonly string[];
  readonly warnings: readonly Warning[];
}

interface Claim {
  readonly rule: number;
  readonly place: ReadingPlace;
}

/**
 * Gives each measurement its place by the rules of the study.
 *
 * @throws TintladderError `unknown-sample` for a name that no measurement has, or a pattern that fits none;
 * `reading-claimed-twice` listing the readings that two rules claim; `kinds-mixed` for a claimed measurement without a spectrum;
 * `reading-repeated` for one that was given twice; `repetition-unstated` for readings that a rule doesn't tell apart
 */
export function assignReadings(study: Study, measurements: readonly Measurement[]): Assignment {
  const claims = measurements.map((): Claim[] => []);
  const names = new Set(measurements.map(({ name }) => name));
  study.readings.forEach((rule, r) => {
    const read = readerOf(rule, study);
    let fits = 0;
    measurements.forEach(({ name }, m) => {
      const found = read(name);
      if (!found) return;
      fits++;
      // Each reading that a rule takes is a unit of its own where the rule says what is repeated.
      const unit = rule.repeated === undefined ? {} : { [rule.repeated]: String(fits) };
      claims[m].push({ rule: r, place: { ...found, ...unit } });
    });
    if (fits === 0) throw unknownSample(`readings[${r}]`, rule.pattern ?? rule.names, measurements);
    for (const name of rule.names ?? []) {
      if (names.has(name)) continue;
      throw unknownSample(`readings[${r}].names`, name, measurements);
    }
  });
  refuseDoubleClaims(measurements, claims);
  const placed = measurements.flatMap((measurement, m) =>
    claims[m].map(({ rule, place }) => ({ rule, reading: assigned(measurement, place) })),
  );
  const readings = placed.map(({ reading }) => reading);
  const warnings = noteEqualReadings(readings);
  refuseUntold(placed);
  const unused = measurements.filter((_, m) => claims[m].length === 0).map(({ name }) => name);
  return { readings, unused, warnings };
}

function readerOf(rule: ReadingRule, study: Study): (name: string) => ReadingPlace | undefined {
  const { names, pattern, repeated: _, ...rest } = rule;
  const fixed = stated(rest);
  if (pattern === undefined) {
    const listed = new Set(names);
    return (name) => (listed.has(name) ? fixed : undefined);
  }
  const match = compilePattern(pattern, study);
  return (name) => {
    const found = match(name);
    return found && { ...found, ...fixed };
  };
}

/** Without fields that are undefined, which would hide what the pattern says. */
function stated(place: ReadingPlace): ReadingPlace {
  return Object.fromEntries(Object.entries(place).filter(([, value]) => value !== undefined));
}

function refuseDoubleClaims(measurements: readonly Measurement[], claims: readonly (readonly Claim[])[]): void {
  const twice = measurements.filter((_, m) => claims[m].length > 1).map(({ name }) => name);
  if (twice.length === 0) return;
  const first = claims.find((claim) => claim.length > 1) ?? [];
  throw new TintladderError('reading-claimed-twice', {
    path: first.map(({ rule }) => `readings[${rule}]`).join(' and '),
    received: twice,
    expected: 'each reading in one rule only',
  });
}

/** What two readings of one place share. */
const PLACE_FIELDS = ['role', 'package', 'paint', 'area', 'storage', ...SERIES_FIELDS, ...LEVELS, ...BLOCKS] as const;

/** Several readings in one place have to say what was made anew between them. */
function refuseUntold(placed: readonly { readonly rule: number; readonly reading: AssignedReading }[]): void {
  const taken = new Map<string, AssignedReading>();
  for (const { rule, reading } of placed) {
    const key = JSON.stringify(PLACE_FIELDS.map((field) => reading[field]));
    const other = taken.get(key);
    if (!other) {
      taken.set(key, reading);
      continue;
    }
    throw new TintladderError('repetition-unstated', {
      path: `readings[${rule}]`,
      received: [other, reading].map((one) => placeText(one.reading)),
      expected: 'what was made anew between these readings',
      hint: "Name it in the pattern ({weighing}, {drawdown} or {spot}), or say what several readings are: repeated: 'spot'.",
    });
  }
}

function assigned(measurement: Measurement, place: ReadingPlace): AssignedReading {
  if (!measurement.spectrum) {
    throw new TintladderError('kinds-mixed', {
      path: `spectrum of measurement ${JSON.stringify(measurement.name)}`,
      received: measurement.spectrum,
      expected: 'a reflectance spectrum',
      hint: 'A study is evaluated from spectra; compare Lab readings with relativeTintingStrengthFromLab and assessRubOut.',
    });
  }
  const { role = 'tint', area = 'unrubbed', storage = 'fresh', paint = '', ...rest } = place;
  return { ...rest, reading: measurement, role, area, storage, paint };
}

function unknownSample(path: string, received: unknown, measurements: readonly Measurement[]): TintladderError {
  const names = [...new Set(measurements.map(({ name }) => name))];
  return new TintladderError('unknown-sample', {
    path,
    received,
    expected: 'the name of a sample in the measurements',
    hint: `The measurements hold ${names.slice(0, 5).join(', ')}${names.length > 5 ? ' and others' : ''}.`,
  });
}
