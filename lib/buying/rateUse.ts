import type { RateThing } from '@/shared/tables/rateThings';

/** Something that jobs reckon with by a rate: tape, protective paper, what pieces and orders are packed in. */
export interface RateUse {
  readonly thing: RateThing | 'packaging';
  /** As a consumable of it is called. */
  readonly name: string;
  /** Of the presses or packagings of the works. */
  readonly packagingId: string | null;
  /** Whole: presses, pieces, orders. */
  readonly quantity: number;
  /** At the rates, currency units. */
  readonly cost: number;
}
