import * as z from 'zod/mini';
import { ILLUMINANTS, type IlluminantName } from '../colorimetry/index.js';
import { BLOCKS, type Block, LEVELS, type Level } from '../evidence/index.js';
import { QUANTITIES_READ } from '../exchange/index.js';
import { STRENGTH_CRITERIA, SURFACE_GEOMETRIES } from '../strength/index.js';
import { PLACEHOLDERS } from './sample-pattern.js';
import type { SeriesKind } from './series-kind.js';
import { SERIES_FIELDS, SERIES_KINDS, type SeriesField } from './series-kinds.js';

const text = (description: string) => z.string().check(z.minLength(1), z.describe(description));
const number = (description: string) => z.number().check(z.describe(description));
const share = (description: string) => z.number().check(z.gte(0), z.lte(100), z.describe(description));
/** Below 1 % it is most likely a fraction. */
const loading = (description: string) => z.number().check(z.gte(1), z.lte(100), z.describe(description));
const positive = (description: string) => z.number().check(z.positive(), z.describe(description));

/** The fields of all series, as they stand in a package or in a rule of readings. */
function seriesValues(at: 'package' | 'reading') {
  const entry = (field: SeriesField) => {
    const { allowsZero, describes }: SeriesKind = SERIES_KINDS[field];
    return z.optional(z.number().check(allowsZero ? z.gte(0) : z.positive(), z.describe(describes[at])));
  };
  const fields = SERIES_FIELDS.map((field) => [field, entry(field)] as const);
  return Object.fromEntries(fields) as Record<SeriesField, ReturnType<typeof entry>>;
}

/** The fields that tell units apart, as they stand in a rule of readings. */
function unitLabels() {
  const label = (name: Level | Block) => z.optional(text(`Which ${name} all readings of the rule belong to`));
  const fields = [...LEVELS, ...BLOCKS].map((name) => [name, label(name)] as const);
  return Object.fromEntries(fields) as Record<Level | Block, ReturnType<typeof label>>;
}

function levelFields<Field extends z.ZodMiniType>(field: (level: Level) => Field) {
  const fields = LEVELS.map((level) => [level, z.optional(field(level))] as const);
  return Object.fromEntries(fields) as Record<Level, z.ZodMiniOptional<Field>>;
}

const deviations = () =>
  levelFields((level) => positive(`Standard deviation of the strength from one ${level} to the next, %`));

const supplied = z.strictObject({
  quantity: text('Name of the quantity, such as viscosity'),
  value: number('The figure'),
  unit: text('Its unit, the same as in the criterion that judges it'),
  uncertainty: z.optional(
    z.number().check(z.gte(0), z.describe('Half the width of the 95 % interval, in the same unit')),
  ),
  paint: z.optional(text('Id of the paint it belongs to; all paints if left out')),
});

const studyPackage = z.strictObject({
  id: text('Short text by which sample names call the package'),
  name: text('Name shown in the report'),
  description: z.optional(text('What is in it')),
  ...seriesValues('package'),
  pigmentLoading: z.optional(loading('Pigment in the mill base, mass %')),
  additiveShare: z.optional(share('Additive in the mill base, mass %')),
  supplied: z.optional(z.array(supplied)),
});

const paint = z.strictObject({
  id: text('Short text by which sample names call the paint'),
  name: text('Name shown in the report'),
});

const rule = z.strictObject({
  names: z.optional(z.array(text('Exact sample name')).check(z.minLength(1))),
  pattern: z.optional(
    text(
      `Sample name with placeholders ${PLACEHOLDERS.map((name) => `{${name}}`).join(' ')}, for example "{package}/{paint}/{area}/{weighing}-{spot}"`,
    ),
  ),
  role: z.optional(z.enum(['tint', 'white']).check(z.describe('A tint, or the untinted white base of a paint'))),
  package: z.optional(text('Id of the package')),
  paint: z.optional(text('Id of the paint')),
  area: z.optional(z.enum(['unrubbed', 'rubbed']).check(z.describe('Part of the film'))),
  storage: z.optional(z.enum(['fresh', 'stored']).check(z.describe('Before or after storage'))),
  ...seriesValues('reading'),
  ...unitLabels(),
  repeated: z.optional(
    z
      .enum(LEVELS)
      .check(z.describe('What was made anew from one reading of the rule to the next, where names do not tell')),
  ),
});

const criterion = z.strictObject({
  quantity: text('A computed quantity, or the name of a supplied one'),
  lower: z.optional(number('Lowest value that meets the criterion')),
  upper: z.optional(number('Highest value that meets the criterion')),
  unit: text('Unit of the limits'),
  reason: text('Why the limit is where it is'),
  paints: z.optional(z.array(text('Id of a paint that it asks; all paints if left out')).check(z.minLength(1))),
  packages: z.optional(z.array(text('Id of a package that it asks; all packages if left out')).check(z.minLength(1))),
});

const illuminant = z.strictObject({
  name: text('Name shown in the report'),
  start: number('First wavelength, nm'),
  step: positive('Step, nm'),
  values: z.array(z.number()).check(z.minLength(2), z.describe('Relative spectral power')),
  kind: z.optional(
    z.enum(['continuous', 'lines']).check(z.describe('Interpolated to 1 nm, or summed at its own step')),
  ),
});

const studyExport = z.strictObject({
  file: text('Path of an export, relative to the study file'),
  scale: z.optional(z.enum(['fraction', 'percent']).check(z.describe('Scale of its reflectance'))),
  quantity: z.optional(z.enum(QUANTITIES_READ).check(z.describe('What its values are, if not reflectance'))),
  outsideRange: z.optional(z.enum(['refuse', 'drop']).check(z.describe('What to do with readings outside 360-830 nm'))),
  resample: z.optional(z.number().check(z.gte(1), z.lte(20), z.describe('Step to which readings are brought, nm'))),
  names: z.optional(text('Heading of the column that names the samples')),
  exclude: z.optional(
    z
      .array(
        z.strictObject({
          name: text('Name of a reading that is left out'),
          line: z.optional(positive('Line at which it starts, where several have the name')),
          reason: text('Why it is left out; the report prints it'),
        }),
      )
      .check(z.minLength(1)),
  ),
});

/** The one description of a study file; the hand-written type is `Study`. */
export const studySchema = z.strictObject({
  $schema: z.optional(z.string().check(z.describe('Where an editor finds this schema'))),
  title: text('Title of the report'),
  note: z.optional(text('Shown at the head of the report')),
  measurements: z.optional(
    z.array(z.union([text('Path of an export, relative to the study file'), studyExport])).check(z.minLength(1)),
  ),
  viewing: z.strictObject({
    illuminant: z.union([
      z.enum(Object.keys(ILLUMINANTS) as IlluminantName[]).check(z.describe('Name of a CIE illuminant')),
      illuminant,
    ]),
    observer: z.enum(['2', '10']).check(z.describe('CIE 1931 (2 degrees) or CIE 1964 (10 degrees)')),
  }),
  surface: z.union([
    z.literal('none').check(z.describe('Readings are taken as internal reflectance')),
    z.strictObject({
      external: z
        .number()
        .check(z.gte(0), z.lt(1), z.describe('Reflection at the outer side of the surface, 0.04 for n = 1.5')),
      internal: z.number().check(z.gte(0), z.lt(1), z.describe('Reflection at the inner side, usually 0.4 to 0.6')),
      specular: z
        .enum(['included', 'excluded'])
        .check(z.describe('Whether the instrument read the specular reflection')),
      geometry: z.optional(
        z.enum(SURFACE_GEOMETRIES).check(z.describe('How films were lit and viewed; d:8° if left out')),
      ),
    }),
  ]),
  strengthCriterion: z.enum(STRENGTH_CRITERIA).check(z.describe('What is made equal when strengths are compared')),
  reference: text('Id of the package that counts as 100 %'),
  packages: z.array(studyPackage).check(z.minLength(1)),
  paints: z.array(paint).check(z.minLength(1)),
  words: z.optional(
    z.strictObject({
      unrubbed: z.optional(text('Word for the untouched area')),
      rubbed: z.optional(text('Word for the rubbed area')),
      fresh: z.optional(text('Word for readings before storage')),
      stored: z.optional(text('Word for readings after storage')),
    }),
  ),
  readings: z.array(rule).check(z.minLength(1)),
  criteria: z.array(criterion),
  rankBy: z.strictObject({
    quantity: text('The quantity that orders the packages which meet every criterion'),
    best: z.enum(['highest', 'lowest']),
  }),
  tint: z.optional(z.enum(['single-pigment', 'several-pigments'])),
  claim: z.optional(
    z
      .enum(['package', 'mill-base', 'film'])
      .check(z.describe('What the study is to speak of; the highest that readings and history carry if left out')),
  ),
  precision: z.optional(
    z.strictObject({
      strength: z.optional(
        z.strictObject({
          ...deviations(),
          unit: z.literal('%'),
          degreesOfFreedom: z.union([
            positive('Degrees of freedom of all levels'),
            z.strictObject(levelFields((level) => positive(`Degrees of freedom of ${level}`))),
          ]),
          source: z.optional(text('Where the history comes from')),
        }),
      ),
      rubOut: z.optional(
        z.strictObject({
          drawdown: z.optional(positive('Standard deviation between drawdowns of one paint, ΔE*ab')),
          spot: positive('Standard deviation of one spot, ΔE*ab'),
          unit: z.literal('ΔE*ab'),
          degreesOfFreedom: z.optional(positive('Degrees of freedom')),
          source: z.optional(text('Where the history comes from')),
        }),
      ),
    }),
  ),
  decision: z.optional(
    z.union([
      z.strictObject({ rule: z.literal('interval') }),
      z.strictObject({
        rule: z.literal('conformance-probability'),
        risk: z
          .number()
          .check(z.positive(), z.lt(0.5), z.describe('Largest chance that any package is accepted wrongly')),
      }),
    ]),
  ),
  dosageUnit: z.optional(text('Unit of the dosages')),
  targetLoading: z.optional(loading('Pigment in the finished colorant, mass %')),
  batchMass: z.optional(positive('Mass of a batch of mill base, kg')),
});
