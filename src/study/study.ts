import type { Illuminant, IlluminantName, Observer } from '../colorimetry/index.js';
import type { DecisionRule } from '../decision/index.js';
import type { Block, Claim, Level, Precision } from '../evidence/index.js';
import type { ReadOptions } from '../exchange/index.js';
import type { SurfaceCorrection } from '../kubelka-munk/index.js';
import type { StrengthCriterion } from '../strength/index.js';
import type { SeriesPlace } from './series-kinds.js';

/**
 * A package under comparison: one set of additives for the pigment, or the reference they are compared with. Where a study
 * holds series, it states at which value it is judged (`dosage`, `grindTime`).
 */
export interface StudyPackage extends SeriesPlace {
  /** Short text by which sample names and the rest of the study call it. */
  readonly id: string;
  readonly name: string;
  readonly description?: string | undefined;
  /** Share of pigment in the mill base, mass %. */
  readonly pigmentLoading?: number | undefined;
  /** Share of additive in the mill base, mass %. */
  readonly additiveShare?: number | undefined;
  /** Figures measured elsewhere. */
  readonly supplied?: readonly SuppliedFigure[] | undefined;
}

/** A figure that was not computed from the readings but measured elsewhere. */
export interface SuppliedFigure {
  readonly quantity: string;
  readonly value: number;
  readonly unit: string;
  /** Half the width of the 95 % interval, in the same unit; an exact figure if absent. */
  readonly uncertainty?: number | undefined;
  /** The paint it belongs to; all of them if absent. */
  readonly paint?: string | undefined;
}

/** A paint that is tinted. */
export interface StudyPaint {
  readonly id: string;
  readonly name: string;
}

/** A bound on a quantity, with its unit and the reason for it. */
export interface AcceptanceCriterion {
  /** A computed quantity (see `COMPUTED_QUANTITIES`) or the name of a supplied one. */
  readonly quantity: string;
  readonly lower?: number | undefined;
  readonly upper?: number | undefined;
  readonly unit: string;
  readonly reason: string;
  /** Ids of the paints it asks; all of them if absent. */
  readonly paints?: readonly string[] | undefined;
  /** Ids of the packages it asks; all of them if absent. */
  readonly packages?: readonly string[] | undefined;
}

/** What a reading is: a tint made with a package, or the untinted white base of a paint. */
export type ReadingRole = 'tint' | 'white';

/** Labels that tell what was made anew (grind, weighing, drawdown, spot), and the day and session of a reading. */
export type UnitLabels = { readonly [Name in Level | Block]?: string | undefined };

/** Where a reading belongs, its values in series and its unit included. What a rule does not fix is taken from its pattern. */
export interface ReadingPlace extends SeriesPlace, UnitLabels {
  /** @default 'tint' */
  readonly role?: ReadingRole | undefined;
  readonly package?: string | undefined;
  readonly paint?: string | undefined;
  /** @default 'unrubbed' */
  readonly area?: 'unrubbed' | 'rubbed' | undefined;
  /** @default 'fresh' */
  readonly storage?: 'fresh' | 'stored' | undefined;
}

/**
 * Assigns readings to their place: by their exact names, or by a pattern on the name such as
 * `{package}/{paint}/{area}/{weighing}-{spot}`.
 */
export interface ReadingRule extends ReadingPlace {
  readonly names?: readonly string[] | undefined;
  /**
   * Literal text with placeholders `{package}`, `{paint}`, `{area}`, `{storage}`, the fields of the series (`{dosage}`,
   * `{grindTime}`, ...), what was made anew (`{grind}`, `{weighing}`, `{drawdown}`, `{spot}`), `{day}`, `{session}` and `{any}`.
   */
  readonly pattern?: string | undefined;
  /** What was made anew from one of its readings to the next, where their names don't tell. */
  readonly repeated?: Level | undefined;
}

/** The words that sample names use for the two areas of a film and the two storage states. */
export interface StudyWords {
  readonly unrubbed?: string | undefined;
  readonly rubbed?: string | undefined;
  readonly fresh?: string | undefined;
  readonly stored?: string | undefined;
}

/** The laboratory's own history of scatter, from control reductions: standard deviations, level by level. */
export interface StudyPrecision {
  /** Of a strength, %. */
  readonly strength?: (Precision & { readonly unit: '%' }) | undefined;
  /** Of a rub-out, ΔE*ab in any one direction. */
  readonly rubOut?:
    | {
        readonly drawdown?: number | undefined;
        readonly spot: number;
        readonly unit: 'ΔE*ab';
        readonly degreesOfFreedom?: number | undefined;
        readonly source?: string | undefined;
      }
    | undefined;
}

/** A measurement export with the caller's word on how it is to be read, as `readMeasurements` takes it. */
export interface StudyExport
  extends Pick<ReadOptions, 'scale' | 'quantity' | 'outsideRange' | 'resample' | 'names' | 'exclude'> {
  readonly file: string;
}

/** Description of a comparison: what was made, what was read, how it is to be judged. */
export interface Study {
  readonly title: string;
  /** Shown at the head of every report; the place to say that a scenario is invented. */
  readonly note?: string | undefined;
  /** Measurement exports, as paths relative to the study file, with what the reader has to be told of each; the command reads them. */
  readonly measurements?: readonly (string | StudyExport)[] | undefined;
  readonly viewing: { readonly illuminant: IlluminantName | Illuminant; readonly observer: Observer };
  /** Stated, since it moves a strength by several percent: `'none'` for readings that are taken as internal reflectance. */
  readonly surface: SurfaceCorrection;
  /** Strength criterion by which packages are compared. */
  readonly strengthCriterion: StrengthCriterion;
  /** Id of the package that counts as 100 %. */
  readonly reference: string;
  readonly packages: readonly StudyPackage[];
  readonly paints: readonly StudyPaint[];
  readonly words?: StudyWords | undefined;
  readonly readings: readonly ReadingRule[];
  readonly criteria: readonly AcceptanceCriterion[];
  /** The quantity that orders the packages which meet every criterion. */
  readonly rankBy: { readonly quantity: string; readonly best: 'highest' | 'lowest' };
  /** How many pigments the tint holds; decides what a rub-out can mean. @default 'single-pigment' */
  readonly tint?: 'single-pigment' | 'several-pigments' | undefined;
  /** What the study is to speak of; the highest that its readings and the history carry if absent. */
  readonly claim?: Exclude<Claim, 'batch'> | undefined;
  /** What the laboratory knows of its scatter from earlier work. */
  readonly precision?: StudyPrecision | undefined;
  /** How a figure with its uncertainty becomes an outcome. @default { rule: 'interval' } */
  readonly decision?: DecisionRule | undefined;
  /** @default '% on pigment' */
  readonly dosageUnit?: string | undefined;
  /** Share of pigment in the finished colorant, mass %; with the loadings of the packages it gives the let-down. */
  readonly targetLoading?: number | undefined;
  /** Mass of one batch of mill base, kg; with it grinding time is given for each tonne of colorant. */
  readonly batchMass?: number | undefined;
}
