import type { Pile } from '@/lib/stock/foldStock';
import type { BuyingList, Consumable, Supplier, SupplyItem } from '@/shared/schemas/making/supply';
import type { JobInput } from '@/shared/schemas/request';

/** A job that is bought for. */
export interface BuyingWork {
  readonly jobId: string;
  /** Null where nobody waits for it. Jobs of one order are packed together. */
  readonly orderId: string | null;
  readonly name: string;
  /** Its documents, as its price asks for them. */
  readonly input: JobInput;
  /** The day on which the press is heated up for it; its goods are in the working day before. Null where none is planned. */
  readonly pressOn: string | null;
  /** Scrap as high as it may well be by what was logged, by print; prints that are left out keep their standard. */
  readonly upperScrap?: readonly {
    readonly lineId: string;
    readonly placementId: string;
    /** Share of presses, 0 to 0.95. */
    readonly scrap: number;
  }[];
}

/** A job that was made already. */
interface MadeWork {
  readonly jobId: string;
  /** Null where it is not here any more. */
  readonly name: string | null;
}

/** Everything a buying list is worked out from; plain data. */
export interface BuyingAsked {
  readonly asOf: string;
  readonly currency: string;
  readonly list: BuyingList;
  /** Of the list and left out of it: their blanks are laid out by a run that has begun, or pressed. */
  readonly made?: readonly MadeWork[];
  /** In the list, though a run that made them is closed. */
  readonly madeBefore?: readonly MadeWork[];
  /** Those of the list that are here, in its order. */
  readonly works: readonly BuyingWork[];
  readonly consumables: readonly { readonly id: string; readonly consumable: Consumable }[];
  /** Archived ones are passed over. */
  readonly suppliers: readonly { readonly id: string; readonly supplier: Supplier }[];
  /** What lies where, folded. */
  readonly piles: readonly Pile[];
  /** What runs and jobs that are not in this list will use. */
  readonly reserved: readonly { readonly item: SupplyItem; readonly quantity: number }[];
}
