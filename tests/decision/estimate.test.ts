import { describe, expect, test } from 'vitest';
import { formatEstimate, formatInterval, quoteEstimate, shortInterval } from '../../src/decision/estimate.js';

const STRENGTH = { value: 112.34, interval: { low: 111.02, high: 113.66 } };

describe('an interval', () => {
  test('is written in words, since a dash is misread before a minus sign', () => {
    expect(formatInterval({ low: -0.5, high: 1.25 }, 2)).toBe('\u22120.50 to 1.25');
  });

  test('is short only where no minus sign could be mistaken', () => {
    expect(shortInterval({ low: 0.5, high: 1.25 }, 2)).toBe('0.50–1.25');
    expect(shortInterval({ low: -0.5, high: 1.25 }, 2)).toBe('\u22120.50 to 1.25');
  });
});

describe('an estimate', () => {
  test('shares its decimals with its interval', () => {
    expect(formatEstimate(STRENGTH, 1)).toBe('112.3 (111.0 to 113.7)');
    expect(formatEstimate({ value: 112.34 }, 1)).toBe('112.3');
  });

  test('is quoted with its unit, and in the decimals of its limit', () => {
    expect(quoteEstimate(STRENGTH, '%')).toBe('112.3\u00a0% (95\u00a0% interval 111.0 to 113.7)');
    expect(quoteEstimate({ value: 0.95 }, 'kg', 10)).toBe('0.9\u00a0kg');
  });
});
