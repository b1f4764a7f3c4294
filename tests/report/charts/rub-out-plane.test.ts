import { describe, expect, test } from 'vitest';
import { rubOutPlane } from '../../../src/report/charts/rub-out-plane.js';
import { BOTTOM_TICK, marksOf, scaleOfTicks } from '../fixture/drawn.js';

const TEXT = { id: 'f', title: 'A title', description: 'What it shows.' };

describe('rub-out plane', () => {
  const markup = rubOutPlane({
    ...TEXT,
    points: [{ label: 'A', dL: -0.6, da: 0.8, db: -0.3 }],
    limit: 1,
    reach: 1.4,
  });
  const x = scaleOfTicks(markup, BOTTOM_TICK);

  test('draws the limit as a circle on the scale of the axes', () => {
    const [, cx, , r] =
      markup.match(/<circle class="limit" cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)"/)?.map(Number) ?? [];
    expect(cx).toBeCloseTo(x(0), 0);
    expect(r).toBeCloseTo(x(1) - x(0), 0);
  });

  test('puts Δa* to the right, Δb* up, and ΔL* on the same scale beside them', () => {
    const [[px, py], [, lightness]] = marksOf(markup);
    const [, cy] = markup.match(/<circle class="limit" cx="[\d.]+" cy="([\d.]+)"/)?.map(Number) ?? [];
    const unit = x(1) - x(0);
    expect(px).toBeCloseTo(x(0.8), 0);
    expect(py).toBeCloseTo(cy + 0.3 * unit, 0);
    expect(lightness).toBeCloseTo(cy + 0.6 * unit, 0);
  });
});
