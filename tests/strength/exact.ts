import { type BigNumber, bignumberDependencies, create, sqrtDependencies } from 'mathjs';

// Arithmetic of 100 digits for checks of the last digit of a double.
const math = create({ ...bignumberDependencies, ...sqrtDependencies }, { number: 'BigNumber', precision: 100 });

/** The exact value of a double; its shortest decimal text, which would be taken otherwise, is another number. */
export function exact(value: number): BigNumber {
  let mantissa = value;
  let halvings = 0;
  while (!Number.isInteger(mantissa)) {
    mantissa *= 2;
    halvings++;
  }
  return math.bignumber(BigInt(mantissa).toString()).div(math.bignumber(2).pow(halvings));
}

/** Relative error of a double against an exact value. */
export function relativeError(value: number, truth: BigNumber): number {
  return truth.isZero() ? Math.abs(value) : exact(value).sub(truth).div(truth).abs().toNumber();
}

/** Absolute error of a double against an exact value. */
export function absoluteError(value: number, truth: BigNumber): number {
  return exact(value).sub(truth).abs().toNumber();
}
