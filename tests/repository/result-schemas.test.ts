import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { colourDifference, createSpectrum, D65_10 } from '../../src/colorimetry/index.js';
import { chartControls } from '../../src/evidence/index.js';
import { readMeasurements } from '../../src/exchange/index.js';
import { adjustBatch } from '../../src/production/index.js';
import { assessRubOut } from '../../src/rubout/index.js';
import {
  compareStrengthCriteria,
  relativeTintingStrength,
  relativeTintingStrengthFromLab,
} from '../../src/strength/index.js';
import { evaluateStudy, parseStudy } from '../../src/study/index.js';

// The schemas in docs/schemas are written from the types (`npm run schemas`); here results, after JSON, are held to them. Nothing that a
// result holds may be unknown to its schema, and no key may hold undefined, which JSON would drop.

const schemaOf = (kind: string) => JSON.parse(readFileSync(`docs/schemas/${kind}.schema.json`, 'utf8'));
const tint = (depth: number) =>
  createSpectrum({
    start: 400,
    step: 10,
    scale: 'fraction',
    values: Array.from({ length: 31 }, (_, i) => 0.85 / (1 + depth * Math.exp(-(((i - 20) / 6) ** 2)))),
  });
const options = { viewing: D65_10, surface: 'none', white: tint(0.01) } as const;
const sides = [
  { weighing: [tint(2), tint(2.02), tint(1.99)] },
  { weighing: [tint(2.2), tint(2.23), tint(2.21)] },
] as const;
const lab = (L: number) => ({ L, a: -8, b: -34 });

const FOLDER = 'examples/dispersant-screening';
const study = parseStudy(JSON.parse(readFileSync(`${FOLDER}/study.json`, 'utf8')));
const { measurements } = readMeasurements(readFileSync(`${FOLDER}/readings.csv`, 'utf8'));

const results: Record<string, unknown> = {
  'colour-difference': colourDifference(lab(50), lab(51)),
  strength: relativeTintingStrength(...sides, { ...options, criterion: 'absorption-maximum' }),
  'strength-from-lab': relativeTintingStrengthFromLab(lab(62), lab(60), {
    viewing: D65_10,
    surface: 'none',
    criterion: 'absorption-maximum',
  }),
  'criteria-comparison': compareStrengthCriteria(...sides, options),
  'rub-out': assessRubOut({ spot: [tint(2), tint(2.01)] }, { spot: [tint(2.3), tint(2.32)] }, options),
  'control-chart': chartControls(
    [48, 52, 70, 62].map((value) => ({ value })),
    { centre: 62, standardDeviation: 12 },
  ),
  study: await evaluateStudy(study, measurements),
  'batch-adjustment': adjustBatch({ percent: 104 }, { kind: 'colorant', mass: 500, correction: 'vehicle' }),
};

describe.each(Object.keys(results))('the result of kind %s', (kind) => {
  const plain = JSON.parse(JSON.stringify(results[kind]));

  test('is what its schema describes, after JSON', () => {
    const validate = new Ajv2020({ allowUnionTypes: true }).compile(schemaOf(kind));
    validate(plain);
    expect(validate.errors).toBeNull();
  });

  test('says what it is', () => expect(plain).toMatchObject({ kind, version: 1 }));
});

test('every schema can be compiled', () => {
  for (const name of readdirSync('docs/schemas')) {
    const schema = JSON.parse(readFileSync(`docs/schemas/${name}`, 'utf8'));
    expect(() => new Ajv2020({ allowUnionTypes: true }).compile(schema), name).not.toThrow();
  }
});
