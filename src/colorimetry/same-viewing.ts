import type { Illuminant } from './illuminant.js';
import type { Viewing } from './viewing.js';

/** Whether two viewings are one: the same observer, and an illuminant of the same name, or of the same figures if it is a caller's own. */
export function sameViewing(one: Viewing, other: Viewing): boolean {
  return one.observer === other.observer && sameIlluminant(one.illuminant, other.illuminant);
}

function sameIlluminant(one: Viewing['illuminant'], other: Viewing['illuminant']): boolean {
  if (one === other) return true;
  return typeof one === 'object' && typeof other === 'object' && sameFigures(one, other);
}

function sameFigures(one: Illuminant, other: Illuminant): boolean {
  const { kind = 'continuous' } = one;
  return (
    one.name === other.name &&
    one.start === other.start &&
    one.step === other.step &&
    kind === (other.kind ?? 'continuous') &&
    one.values.length === other.values.length &&
    Array.from(one.values).every((value, i) => value === other.values[i])
  );
}
