import type { NoFacts } from '@/shared/facts/findingCase';
import type { Change } from '@/shared/finding';

/** The numbers and names that the sentence of each lever needs. */
interface LeverFacts {
  smallerPrint: {
    readonly placement: string;
    readonly widthMm: number;
    readonly heightMm: number;
    readonly fromWidthMm: number;
    readonly fromHeightMm: number;
    readonly perSheet: number;
  };
  fillSpot: {
    readonly more: number;
    readonly quantity: number;
    /** What is then just used up. */
    readonly filled: 'sheet' | 'session' | 'pack';
  };
  pressOrder: { readonly first: string };
  onePlacementLess: { readonly line: string; readonly placement: string };
  cheaperBlank: { readonly blank: string; readonly instead: string };
  /** Minutes of one element: a rate of the workshop by its name, others by their own. */
  fewerMinutes: { readonly element: string; readonly from: number; readonly to: number };
  /** Shares of the presses. */
  lessScrap: { readonly placement: string; readonly from: number; readonly to: number };
  /** Money in currency units. */
  nextPrice: { readonly step: number };
  otherSheet: { readonly sheet: string; readonly instead: string };
  shareSession: NoFacts;
  gangReplacements: { readonly placement: string };
}

export type LeverId = keyof LeverFacts;

/** Single changes of a job that may leave more of it, by their id. */
export type LeverDrafts = {
  readonly [Id in LeverId]: {
    readonly id: Id;
    readonly facts: LeverFacts[Id];
    /** What one tap writes. */
    readonly changes: readonly Change[];
  };
};

export type LeverDraft = LeverDrafts[LeverId];

/** What of a job a lever moves. Money in currency units without tax, unrounded. */
export interface JobFigures {
  readonly pieces: number;
  readonly fullCostEach: number;
  /** Price for the target margin. */
  readonly targetEach: number;
  readonly profit: number;
  readonly margin: number;
  readonly payPerHour: number;
}

/** A change with what it was seen to do: the changed job went through the same check and the same grid. */
export type Lever = LeverDraft & {
  readonly after: JobFigures;
  /** After less before; margin as a share of the price (0.01 is a point). */
  readonly gain: {
    readonly margin: number;
    readonly payPerHour: number;
    readonly profit: number;
    /** What a piece costs less. */
    readonly savingEach: number;
  };
};
