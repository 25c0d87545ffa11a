/** The part of jStat that tests use as a second opinion; the package ships no types. */
declare module 'jstat' {
  interface Continuous {
    cdf(x: number, ...parameters: number[]): number;
    inv(p: number, ...parameters: number[]): number;
  }
  export const jStat: {
    readonly normal: Continuous;
    readonly gamma: Continuous;
    readonly beta: Continuous;
    readonly invgamma: Continuous;
    readonly chisquare: Continuous;
    lowRegGamma(shape: number, x: number): number;
  };
}
