// jstat ships no types; these are the distributions the tests compare with.
declare module 'jstat' {
  interface Distribution {
    cdf(x: number, ...parameters: number[]): number;
    inv(p: number, ...parameters: number[]): number;
  }
  const jstat: {
    readonly jStat: {
      readonly studentt: Distribution;
      readonly noncentralt: Pick<Distribution, 'cdf'>;
      readonly centralF: Distribution;
      readonly beta: Distribution;
      readonly normal: Distribution;
      gammaln(x: number): number;
    };
  };
  export default jstat;
}
