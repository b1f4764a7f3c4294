/// <reference path="./mathjs.d.ts" />
import { createQr } from 'mathjs';

type Matrix = ReturnType<Parameters<typeof createQr>[0]['matrix']>;

const matrix = (rows: number[][]): Matrix => ({
  _size: [rows.length, rows[0].length],
  _data: rows,
  clone: () => matrix(rows.map((row) => [...row])),
  valueOf: () => rows,
});

/**
 * QR decomposition of a matrix of numbers by Householder reflections: mathjs's own, over plain arithmetic.
 *
 * mathjs brings complex numbers, fractions and units along unless it is told what arithmetic to use; without them it loads in milliseconds.
 *
 * @param rows - no fewer rows than columns
 * @returns Q, square and orthogonal, and R, of the size of the matrix, with zeros below its diagonal
 * @see Golub & Van Loan, Matrix Computations, 5.2
 */
export const qrDecomposition = /* @__PURE__ */ createQr({
  typed: (_, { Array: ofRows }) => ofRows,
  matrix,
  zeros: ([count]) => Array.from({ length: count }, () => 0),
  identity: ([count]) =>
    matrix(Array.from({ length: count }, (_, i) => Array.from({ length: count }, (__, j) => (i === j ? 1 : 0)))),
  isZero: (value) => value === 0,
  equal: (a, b) => a === b,
  sign: Math.sign,
  sqrt: Math.sqrt,
  conj: (value) => value,
  unaryMinus: (value) => -value,
  addScalar: (a, b) => a + b,
  subtractScalar: (a, b) => a - b,
  multiplyScalar: (a, b) => a * b,
  divideScalar: (a, b) => a / b,
  complex: (value) => value,
});
