import { describe, expect, test } from 'vitest';
import type { StrengthCriterion, StrengthOptions } from '../../src/strength/index.js';
import { COLORANTS, PAINT_SURFACE, reduction } from './simulated-reductions.js';
import { flat, strengthOf } from './strength-of.js';

const fault = (code: string, path: string) => expect.objectContaining({ code, path });
const [reference, trial] = [1, 1.2].map((amount) => reduction(COLORANTS.blue, amount));

describe('options', () => {
  test.each([
    [{ criterion: 'depth' as StrengthCriterion }, 'options.criterion'],
    [{ repeatability: 0 }, 'options.repeatability'],
    [{ margin: -1 }, 'options.margin'],
    [{ surface: { ...PAINT_SURFACE, external: 2 } }, 'options.surface.external'],
  ])('%o is refused', (options: Partial<StrengthOptions>, path) => {
    expect(() => strengthOf(reference, trial, options)).toThrow(fault('invalid-option', path));
  });
});

test.each(['repeatability', 'margin'])('an endless %s is refused', (name) => {
  expect(() => strengthOf(flat(0.3), flat(0.25), { [name]: Number.POSITIVE_INFINITY })).toThrow(
    expect.objectContaining({ code: 'invalid-option', path: `options.${name}` }),
  );
});
