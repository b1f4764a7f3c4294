import type { LevelScatter, Repeated } from '../evidence/index.js';
import type { Measurement } from '../exchange/index.js';
import { compareStrengths, type PaintReadings } from './compare-strengths.js';
import { type ReadingGroups, whitesOf } from './reading-groups.js';
import { type CellReadings, selectReadings } from './select-readings.js';
import { spectralBasis } from './strength-basis.js';
import type { StrengthComparison, StudyEvidence } from './strength-evidence.js';
import type { Study } from './study.js';

/** The readings by which a package is judged in a paint, with what the comparison of all packages says of them. */
export interface JudgedReadings {
  readonly package: string;
  readonly paint: string;
  readonly own: CellReadings & { readonly unrubbed: Repeated<Measurement> };
  readonly reference: Repeated<Measurement>;
  readonly white: Repeated<Measurement> | undefined;
  /** Absent for the reference, and where a reading alone has no strength. */
  readonly comparison: StrengthComparison | undefined;
  /** Stored against fresh; absent where nothing was stored. */
  readonly storage: StrengthComparison | undefined;
  /** Of the units that were made anew in this paint. */
  readonly scatter: LevelScatter | undefined;
}

/** Every strength of a study, compared at its one rate, and what each cell takes from that. */
export interface GatheredEvidence {
  readonly evidence: StudyEvidence;
  /** One for each package and paint that were read, packages in their order. */
  readonly judged: readonly JudgedReadings[];
}

/** Compares all packages in all paints, and each stored package with the same one fresh. */
export function gatherEvidence(study: Study, groups: ReadingGroups): GatheredEvidence {
  const places = study.packages.flatMap((item) =>
    study.paints.flatMap(({ id: paint }) => {
      const { unrubbed, ...rest } = selectReadings(groups, item, paint);
      return unrubbed === undefined ? [] : [{ package: item.id, paint, own: { ...rest, unrubbed } }];
    }),
  );
  const whites = new Map(study.paints.map(({ id }) => [id, whitesOf(groups, id)]));
  const basis = spectralBasis(study);
  const nameOf = (id: string) => study.packages.find((item) => item.id === id)?.name ?? id;
  const paints = study.paints.map(({ id: paint }): PaintReadings => {
    const there = places.filter((place) => place.paint === paint);
    return {
      paint,
      sides: new Map(there.map((place) => [place.package, place.own.unrubbed])),
      reference: study.reference,
      white: whites.get(paint),
    };
  });
  const fresh = compareStrengths(study, paints, basis, nameOf);
  const stored = compareStored(study, places, paints, nameOf);
  const source = study.precision?.strength?.source;
  return {
    evidence: { rate: fresh.rate, ...(source !== undefined && { history: source }), paints: fresh.paints },
    judged: places.flatMap((place): JudgedReadings[] => {
      const reference = places.find((other) => other.package === study.reference && other.paint === place.paint);
      const evidence = fresh.paints.find(({ paint }) => paint === place.paint);
      if (reference === undefined) return [];
      return [
        {
          ...place,
          reference: reference.own.unrubbed,
          white: whites.get(place.paint),
          comparison: evidence?.againstReference.find(({ trial }) => trial === place.package),
          storage: stored.get(keyOf(place.package, place.paint)),
          scatter: evidence?.scatter[0],
        },
      ];
    }),
  };
}

const keyOf = (id: string, paint: string) => JSON.stringify([id, paint]);

/**
 * Each stored package against the same one fresh. Stored and fresh readings of all packages of a paint pool their scatter; the joint intervals
 * are those of all pairs, which is more than is asked and so on the safe side.
 */
function compareStored(
  study: Study,
  places: readonly Pick<JudgedReadings, 'package' | 'paint' | 'own'>[],
  paints: readonly PaintReadings[],
  nameOf: (id: string) => string,
): Map<string, StrengthComparison> {
  const trialOf = (id: string) => `${id}, stored`;
  const names = new Map(study.packages.map(({ id, name }) => [trialOf(id), `${name}, stored`]));
  const groups = paints.flatMap((fresh): PaintReadings[] => {
    const stored = places.flatMap(({ package: id, paint, own: { storedUnrubbed } }) =>
      paint === fresh.paint && storedUnrubbed ? [[trialOf(id), storedUnrubbed] as const] : [],
    );
    return stored.length === 0 ? [] : [{ ...fresh, sides: new Map([...fresh.sides, ...stored]) }];
  });
  if (groups.length === 0) return new Map();
  const compared = compareStrengths(
    study,
    groups,
    spectralBasis(study),
    (id) => names.get(id) ?? `${nameOf(id)}, fresh`,
  );
  return new Map(
    compared.paints.flatMap(({ paint, againstReference, pairs }) =>
      [...againstReference, ...pairs]
        .filter(({ trial, reference }) => trial === trialOf(reference))
        .map((comparison) => [keyOf(comparison.reference, paint), comparison] as const),
    ),
  );
}
