import type { RateOrigin } from '@/shared/schemas/rate';

/** A value that goes into the grid, with where it comes from, so that every figure can be opened down to it. */
export interface GridInput {
  /** In the unit of its row. */
  readonly value: number;
  /** `counted` is worked out from the job (quantities, layout), `typed` stands in a document without a date. */
  readonly origin: RateOrigin | 'typed' | 'counted';
  readonly date?: string;
  readonly count?: number;
  /** Value and unit as typed, where the grid holds another unit. */
  readonly typed?: { readonly value: number; readonly unit: string };
  /** What it is, where the row's label does not say it. */
  readonly about?: string;
}

export type GridColumn = Readonly<Record<string, GridInput>>;

/** One column of cases of a line. */
export interface CaseInput {
  readonly size: string;
  readonly inputs: GridColumn;
}

export interface LineInput {
  readonly lineId: string;
  readonly inputs: GridColumn;
  readonly cases: readonly CaseInput[];
}

/** Everything the grid is filled with for one evaluation. */
export interface GridFilling {
  readonly job: GridColumn;
  readonly lines: readonly LineInput[];
}
