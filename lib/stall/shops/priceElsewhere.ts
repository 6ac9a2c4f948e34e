import { goodsKey } from '@/lib/stall/goodsKey';
import { newestFirst } from '@/lib/stall/newestFirst';
import type { PriceListVersion } from '@/shared/schemas/priceList';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StallPlan } from '@/shared/schemas/stallPapers';

/** A paper of the maker's own that names a price, in whole minor units as its way of selling writes them. */
interface PriceElsewhere {
  readonly on: 'plan' | 'list';
  /** What the paper is called. */
  readonly title: string;
  readonly minor: number;
}

interface Went<Body> {
  readonly id: string;
  readonly at: number;
  readonly withdrawn: boolean;
  readonly body: Body;
}

/**
 * What the maker asks for one of some goods elsewhere, to begin with at a shop: by the newest plan of a stall day in
 * force that prices them, else by the newest list that has a price for one piece. A price that stands otherwise to tax
 * is another price, and one of another currency too.
 *
 * @param asked of the shop; a tax mode of null takes any
 * @returns null where no paper prices the goods
 */
export function priceElsewhere(
  goods: StallGoods,
  asked: { readonly currency: string; readonly taxMode: StallPlan['taxMode'] | null },
  papers: {
    readonly stallPlan: readonly Went<StallPlan>[];
    readonly priceListVersion: readonly Went<PriceListVersion>[];
  },
): PriceElsewhere | null {
  const stands = ({ withdrawn, body }: Went<Pick<StallPlan, 'currency' | 'taxMode'>>) =>
    !withdrawn &&
    body.currency === asked.currency &&
    (asked.taxMode === null || body.taxMode === asked.taxMode);
  const inPlans = papers.stallPlan
    .filter(stands)
    .sort(newestFirst)
    .flatMap(({ body }) =>
      body.goods.flatMap((one) =>
        goodsKey(one) === goodsKey(goods) && one.price > 0
          ? [{ on: 'plan' as const, title: body.title, minor: one.price }]
          : [],
      ),
    );
  const onLists = papers.priceListVersion
    .filter(stands)
    .sort(newestFirst)
    .flatMap(({ body }) =>
      body.items.flatMap((item) => {
        if (item.jobId !== goods.jobId || item.lineId !== goods.lineId) return [];
        const size = item.sizes.find((one) => one.size === goods.size);
        const single = item.breaks.find(({ from }) => from === 1);
        if (size === undefined || single === undefined) return [];
        const minor = single.each + size.upCharge;
        return minor > 0 ? [{ on: 'list' as const, title: body.title, minor }] : [];
      }),
    );
  return inPlans[0] ?? onLists[0] ?? null;
}
