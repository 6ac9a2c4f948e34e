/** What the tests take of a statistics library that brings no types. */
declare module 'jstat' {
  export const jStat: {
    readonly studentt: { readonly inv: (below: number, freedom: number) => number };
  };
}
