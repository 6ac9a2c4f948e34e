/** What the tests take of a statistics library that brings no types. */
declare module 'jstat' {
  export const jStat: {
    readonly beta: {
      readonly cdf: (x: number, a: number, b: number) => number;
      readonly inv: (chance: number, a: number, b: number) => number;
    };
    readonly binomial: { readonly cdf: (good: number, tries: number, chance: number) => number };
    readonly beta: {
      readonly cdf: (x: number, a: number, b: number) => number;
      readonly inv: (chance: number, a: number, b: number) => number;
    };
    readonly studentt: { readonly inv: (below: number, freedom: number) => number };
  };
}
