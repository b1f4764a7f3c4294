// mathjs exports the factory of its QR decomposition but has no type for it.
import 'mathjs';

declare module 'mathjs' {
  interface NumberMatrix {
    readonly _size: readonly [number, number];
    readonly _data: number[][];
    clone(): NumberMatrix;
    valueOf(): number[][];
  }

  type ArrayQr = (rows: number[][]) => { readonly Q: number[][]; readonly R: number[][] };

  type Binary = (a: number, b: number) => number;

  /** The arithmetic that the decomposition is written in. */
  interface QrArithmetic {
    readonly typed: (name: string, signatures: { readonly Array: ArrayQr }) => ArrayQr;
    readonly matrix: (rows: number[][]) => NumberMatrix;
    readonly zeros: (size: readonly [number]) => number[];
    readonly identity: (size: readonly [number]) => NumberMatrix;
    readonly isZero: (value: number) => boolean;
    readonly equal: (a: number, b: number) => boolean;
    readonly sign: (value: number) => number;
    readonly sqrt: (value: number) => number;
    readonly conj: (value: number) => number;
    readonly unaryMinus: (value: number) => number;
    readonly addScalar: Binary;
    readonly subtractScalar: Binary;
    readonly multiplyScalar: Binary;
    readonly divideScalar: Binary;
    readonly complex: (value: number) => number;
  }

  function createQr(arithmetic: QrArithmetic): ArrayQr;
}
