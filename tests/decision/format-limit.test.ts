import { expect, test } from 'vitest';
import { formatLimit } from '../../src/decision/format-limit.js';

test.each([
  [{ lower: 100 }, '%', 'at least 100.0\u00a0%'],
  [{ upper: 1 }, 'ΔE*ab', 'at most 1.00\u00a0ΔE*ab'],
  [{ lower: 0.05, upper: 0.1 }, 'kg', '0.050 to 0.100\u00a0kg'],
  [{}, '%', 'no limit'],
])('a limit %j in %s reads %j', (limit, unit, expected) => expect(formatLimit(limit, unit)).toBe(expected));
