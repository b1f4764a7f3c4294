import type { Grid, Lab, Viewing } from '../colorimetry/index.js';
import type { Warning } from '../core/index.js';
import type { Interval, Limit, Outcome } from '../decision/index.js';
import type { Claim, Level } from '../evidence/index.js';
import type { SurfaceCorrection } from '../kubelka-munk/index.js';
import type { RubOutResult } from '../rubout/index.js';
import type { StrengthCriterion, StrengthFinding, StrengthResult } from '../strength/index.js';
import type { Figure } from './figure.js';
import type { Series } from './series.js';
import type { StrengthComparison, StudyEvidence } from './strength-evidence.js';
import type { StudyPackage, StudyPaint } from './study.js';

/** A figure compared with its limit. */
export interface Judgement {
  readonly quantity: string;
  /** The paint it was found in; absent for a figure of the package as a whole. */
  readonly paint?: string;
  readonly limit: Limit;
  readonly unit: string;
  readonly reason: string;
  readonly value: number;
  /** 95 % by itself. */
  readonly interval?: Interval;
  /** Holds together with those of all packages; where it is there, the outcome rests on it. */
  readonly joint?: Interval;
  readonly outcome: Outcome;
  /** Probability that the true value lies within the limit, where its uncertainty is known. */
  readonly conformance?: number;
  /** True for a supplied figure without uncertainty, compared as if it were exact: half of what lies at its limit is accepted wrongly. */
  readonly simpleAcceptance?: boolean;
  /** What the figure speaks of, for a strength. */
  readonly claim?: Claim;
  /** Why nothing is decided though there is an interval: what has to be made anew first. */
  readonly remedy?: string;
  /** For an undecided figure: units per side that would decide it at the scatter found; absent if no number can. */
  readonly readingsNeeded?: number;
  /** What `readingsNeeded` counts; readings if absent. */
  readonly readingsOf?: Level;
}

/** Mean reflectance factors of a cell, as plain numbers, all on `grid`. */
export interface CellSpectra {
  readonly grid: Grid;
  readonly reference: readonly number[];
  readonly unrubbed: readonly number[];
  readonly rubbed?: readonly number[];
  /** The trial brought to the strength of the reference. */
  readonly matched?: readonly number[];
  readonly white?: readonly number[];
}

/** Colours of a cell under the study's viewing condition. */
export interface CellColours {
  readonly reference: Lab;
  readonly unrubbed: Lab;
  readonly rubbed?: Lab;
  readonly matched?: Lab;
}

/** Before and after storage, for one package in one paint. */
export interface StorageResult {
  /** Strength of the stored colorant against the fresh one, %. */
  readonly strength: StrengthSummary;
  readonly rubOut?: RubOutResult;
}

/**
 * The strength of the mean colours without its spectrum, which the cell holds as plain numbers; interval, claim and finding are those of the
 * comparison of all packages.
 */
export type StrengthSummary = Omit<StrengthResult, 'matched' | 'interval' | 'finding' | 'repetition'> &
  Partial<Omit<StrengthComparison, 'trial' | 'reference' | 'finding'>> & {
    readonly finding: StrengthFinding;
    /** 95 % interval of the residual ΔE00. */
    readonly residualInterval?: Interval;
  };

/** Everything found for one package in one paint. */
export interface Cell {
  readonly package: string;
  readonly paint: string;
  readonly replicates: { readonly unrubbed: number; readonly rubbed: number };
  /** Against the reference package; absent for the reference itself. */
  readonly strength?: StrengthSummary;
  /** The strength by each criterion that could be solved, %. */
  readonly strengthByCriterion?: Readonly<Partial<Record<StrengthCriterion, number>>>;
  /** True when the trial differs in shade so that no single strength figure should be quoted. */
  readonly shadeChange?: boolean;
  readonly rubOut?: RubOutResult;
  readonly storage?: StorageResult;
  readonly figures: readonly Figure[];
  readonly judgements: readonly Judgement[];
  readonly outcome: Outcome;
  readonly colours: CellColours;
  readonly spectra: CellSpectra;
}

/** Let-down from mill base to finished colorant. */
export interface LetDown {
  readonly package: string;
  /** Mass of finished colorant made from one mass of mill base. */
  readonly letDownFactor: number;
  /** Share of additive in the finished colorant, mass %. */
  readonly additiveShare?: number;
  /** Grinding time for each tonne of finished colorant, h. */
  readonly grindHoursPerTonne?: number;
  /** The same, reference minus this package, h; positive is time saved. */
  readonly hoursSavedPerTonne?: number;
}

/** A figure that a criterion or the ranking asks for and that was neither read nor supplied. */
export interface MissingFigure {
  readonly quantity: string;
  /** The paint it is missing in; absent where the package lacks it as a whole. */
  readonly paint?: string;
}

/** One package over all its paints. */
export interface PackageResult {
  readonly package: StudyPackage;
  readonly isReference: boolean;
  /** The worst outcome over its paints and its own figures. */
  readonly outcome: Outcome;
  /** Figures of the package as a whole: fits, dilution, supplied without a paint. */
  readonly figures: readonly Figure[];
  readonly judgements: readonly Judgement[];
  /** What it lacks; while anything is missing the package is undecided, unless it fails. */
  readonly missing: readonly MissingFigure[];
  /** The value that ranks it, the worst over its paints; absent if it was not measured. */
  readonly rankValue?: number;
  /** Most readings per side that any undecided figure needs. */
  readonly readingsNeeded?: number;
  readonly letDown?: LetDown;
}

/** The order of the packages, without invented weights. */
export interface Ranking {
  readonly by: string;
  readonly best: 'highest' | 'lowest';
  /** Packages that meet every criterion, best first. */
  readonly meeting: readonly string[];
  readonly undecided: readonly string[];
  readonly failing: readonly string[];
  /** Those of `meeting` that are the best by the quantity that ranks, or not proven worse than the best. */
  readonly notProvenWorse: readonly string[];
}

/** What to do: in one sentence, in one paragraph, and for programs. */
export interface Recommendation {
  readonly package?: string;
  /** Whether every other package that meets every criterion is proven worse. */
  readonly leadProven?: boolean;
  /** The answer in one sentence. */
  readonly headline: string;
  /** The answer with its figures, and what stands against the other packages. */
  readonly statement: string;
}

/** The result of a study: plain data, ready for JSON. */
export interface StudyResult {
  readonly kind: 'study';
  readonly version: 1;
  readonly title: string;
  readonly note?: string;
  /** The worst outcome of any package: `meets` only if every package meets every criterion. */
  readonly outcome: Outcome;
  readonly recommendation: Recommendation;
  readonly ranking: Ranking;
  readonly reference: string;
  readonly paints: readonly StudyPaint[];
  readonly packages: readonly PackageResult[];
  readonly cells: readonly Cell[];
  /** Every strength compared, paint by paint, at the one error rate of the study. */
  readonly evidence: StudyEvidence;
  /** One entry for each kind of series that the study holds. */
  readonly series: readonly Series[];
  readonly method: {
    readonly viewing: Viewing;
    readonly surface: SurfaceCorrection;
    readonly strengthCriterion: StrengthCriterion;
    readonly whiteSubtracted: boolean;
    readonly grid: Grid;
    readonly statements: readonly string[];
  };
  /** Names of readings that no rule of the study claims. */
  readonly unusedReadings: readonly string[];
  readonly warnings: readonly Warning[];
}
