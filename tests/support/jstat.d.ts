/** The library carries no types of its own; these are the functions the tests ask. */
declare module 'jstat' {
  interface Law {
    cdf(x: number, ...parameters: number[]): number;
    inv(p: number, ...parameters: number[]): number;
  }
  const jStat: {
    readonly normal: Law & { pdf(x: number, mean: number, sd: number): number };
    readonly weibull: Law & { mean(scale: number, shape: number): number };
    readonly exponential: Law;
    readonly uniform: Law;
    spearmancoeff(a: number[], b: number[]): number;
    corrcoeff(a: number[], b: number[]): number;
  };
  export default jStat;
}
