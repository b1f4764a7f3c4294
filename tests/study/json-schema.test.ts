import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import * as z from 'zod/mini';
import { studySchema } from '../../src/study/study-schema.js';

// The published JSON Schema is generated from the one description in study-schema.ts. To renew it after a change:
// UPDATE_SCHEMA=1 npx vitest run tests/study/json-schema.test.ts

const FILE = 'src/study/study.schema.json';

test('the published schema is the one the parser uses', async () => {
  const generated = {
    title: 'A comparison of pigment concentrates for tintladder',
    ...z.toJSONSchema(studySchema),
  };
  if (process.env.UPDATE_SCHEMA) {
    const { writeFileSync } = await import('node:fs');
    writeFileSync(FILE, `${JSON.stringify(generated, null, 2)}\n`);
  }
  expect(JSON.parse(readFileSync(FILE, 'utf8'))).toEqual(generated);
});

test('every example follows the published schema, and a broken one does not', () => {
  const validate = new Ajv2020({ strict: false }).compile(JSON.parse(readFileSync(FILE, 'utf8')));
  const studies = readdirSync('examples', { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name }) => readdirSync(`examples/${name}`).map((file) => `examples/${name}/${file}`))
    .filter((file) => /study\.(json|yaml)$/.test(file));
  expect(studies.length).toBeGreaterThanOrEqual(4);
  for (const file of studies) {
    const study = parse(readFileSync(file, 'utf8'));
    expect(validate(study), `${file}: ${JSON.stringify(validate.errors)}`).toBe(true);
    expect(validate({ ...study, reference: 3 })).toBe(false);
  }
});
