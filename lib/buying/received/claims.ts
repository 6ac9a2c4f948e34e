import { stockKey } from '@/lib/stock/stockKey';
import { roundDecimal } from '@/shared/decimal';
import type { Entry } from '@/shared/schemas/happened';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import type { FaultClaim, GoodsIn } from '@/shared/schemas/making/supplyEvents';

type Delivery = Entry<'goodsIn', GoodsIn>;
type ClaimEntry = Entry<'faultClaim', FaultClaim>;

/** What is wrong with one thing of a delivery. */
export interface WrongRow {
  readonly item: SupplyItem;
  readonly faulty: number;
  readonly faults: readonly NonNullable<GoodsIn['rows'][number]['fault']>[];
  /** What the faulty ones were billed at, whole minor units; null where some of them are not billed yet. */
  readonly faultyMinor: number | null;
  /** Ordered and not come; 0 where more came, or nobody ordered. */
  readonly missing: number;
}

/** A delivery with what its supplier has been told. */
export interface DeliveryStanding {
  readonly delivery: Delivery;
  readonly wrong: readonly WrongRow[];
  /** `none`: nothing is wrong, or nothing was told yet. */
  readonly state: 'none' | 'claimed' | FaultClaim['step']['what'];
  /** What was told and what came of it, in order. */
  readonly steps: readonly ClaimEntry[];
  /** Money that came back, by currency. */
  readonly refunded: readonly { readonly currency: string; readonly minor: number }[];
}

/** @returns deliveries, the last first, each with its claim. All entries in force and in order. */
export const deliveriesOf = (
  deliveries: readonly Delivery[],
  claims: readonly ClaimEntry[],
): readonly DeliveryStanding[] =>
  deliveries
    .map((delivery) => {
      const steps = claims.filter(({ body }) => body.goodsInId === delivery.id);
      return {
        ...{ delivery, steps },
        wrong: wrongRows(delivery.body),
        state: steps.at(-1)?.body.step.what ?? ('none' as const),
        refunded: refundedOf(steps),
      };
    })
    .reverse()
    .sort((one, other) =>
      one.delivery.body.day < other.delivery.body.day
        ? 1
        : one.delivery.body.day > other.delivery.body.day
          ? -1
          : 0,
    );

/** @returns whether a supplier has still to answer, or to be told. */
export const isOpen = ({ state, wrong }: Pick<DeliveryStanding, 'state' | 'wrong'>): boolean =>
  state === 'claimed' || (state === 'none' && wrong.some(({ faulty }) => faulty > 0));

/** @returns what is faulty or missing, each thing once however many rows it has. */
export function wrongRows({ rows }: Pick<GoodsIn, 'rows'>): readonly WrongRow[] {
  const things = new Map<
    string,
    {
      item: SupplyItem;
      faulty: number;
      minor: number | null;
      faults: WrongRow['faults'][number][];
      short: number;
    }
  >();
  for (const { item, faulty, fault, ordered, counted, amountMinor } of rows) {
    const known = things.get(stockKey(item)) ?? { item, faulty: 0, minor: 0, faults: [], short: 0 };
    const billed = faulty === 0 ? 0 : amountMinor === null ? null : (amountMinor * faulty) / counted;
    things.set(stockKey(item), {
      item,
      faulty: known.faulty + faulty,
      minor: known.minor === null || billed === null ? null : known.minor + billed,
      faults: fault === null || known.faults.includes(fault) ? known.faults : [...known.faults, fault],
      short: known.short + (ordered ?? 0) - counted,
    });
  }
  return [...things.values()].flatMap(({ item, faulty, minor, faults, short }) => {
    const missing = rows.some((row) => row.ordered !== null && stockKey(row.item) === stockKey(item))
      ? Math.max(0, short)
      : 0;
    const faultyMinor = minor === null ? null : roundDecimal(minor, 0, 'halfUp');
    return faulty > 0 || missing > 0 ? [{ item, faulty, faultyMinor, faults, missing }] : [];
  });
}

// Helpers

function refundedOf(steps: readonly ClaimEntry[]): DeliveryStanding['refunded'] {
  const sums = new Map<string, number>();
  for (const { body } of steps)
    if (body.step.what === 'refunded')
      sums.set(body.step.currency, (sums.get(body.step.currency) ?? 0) + body.step.amountMinor);
  return [...sums].map(([currency, minor]) => ({ currency, minor }));
}
