'use client';

import { useMemo } from 'react';
import { dayOf } from '@/app/_clock/dayOf';
import { useToday } from '@/app/_clock/useToday';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { type Formatter, formatterFor } from '@/app/_words/formatter';
import { goodsName } from '@/app/_words/stall/shopWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { type ShopStanding, shopLate, shopStanding } from '@/lib/stall/shops/shopStanding';
import type { Shop } from '@/shared/schemas/shop';
import type { StallGoods } from '@/shared/schemas/stallDay';

/** One shop as its screen has it. */
export interface ShopOnScreen {
  readonly workspace: ReadyWorkspace;
  readonly shopId: string;
  readonly shop: Shop;
  readonly standing: ShopStanding;
  readonly late: ReturnType<typeof shopLate>;
  readonly nameOf: (goods: StallGoods) => string;
  readonly today: string;
  readonly formatter: Formatter;
  readonly locale: string;
}

/** Folds what was noted of every shop of the device. */
export function useShops(workspace: ReadyWorkspace): readonly ShopOnScreen[] {
  const today = useToday();
  const { shops, piles, jobs, workshop, entries } = workspace;
  const { shopStatement, shopPayment, stockTransfer } = entries;
  const folded = useMemo(
    () =>
      Object.entries(shops).map(([shopId, shop]) => {
        const noted = {
          ...{ piles, statements: shopStatement, payments: shopPayment },
          transfers: stockTransfer,
        };
        return { shopId, shop, standing: shopStanding(shopId, shop, noted) };
      }),
    [shops, piles, shopStatement, shopPayment, stockTransfer],
  );
  const lines = useMemo(
    () =>
      new Map(
        jobs.flatMap(({ id, job }) => job.lines.map((line) => [`${id} ${line.id}`, line.name] as const)),
      ),
    [jobs],
  );
  return folded.map(({ shopId, shop, standing }) => ({
    ...{ workspace, shopId, shop, standing, today },
    late: shopLate(
      shop,
      standing,
      standing.firstOutAt === null ? null : dayOf(new Date(standing.firstOutAt)),
      today,
    ),
    nameOf: (goods) => goodsName(lines.get(`${goods.jobId} ${goods.lineId}`) ?? null, goods.size),
    formatter: formatterFor(workshop),
    locale: usableLocale(workshop.locale),
  }));
}
