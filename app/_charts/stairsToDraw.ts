/** Order totals by quantity; money in currency units. */
export interface StairsToDraw {
  /** From 1, one after the other. */
  readonly points: readonly {
    readonly n: number;
    readonly pays: number | null;
    readonly need: number;
    readonly fullCost: number;
  }[];
  readonly held: readonly {
    readonly from: number;
    readonly to: number;
    readonly pays: number;
    readonly words: string;
  }[];
  readonly falls: readonly {
    readonly from: number;
    readonly cheaperAt: number;
    readonly words: string;
  }[];
  readonly job: { readonly n: number; readonly total: number; readonly words: string } | null;
}
