'use client';

import { useMemo } from 'react';
import { dayOf } from '@/app/_clock/dayOf';
import { useToday } from '@/app/_clock/useToday';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { type Formatter, formatterFor } from '@/app/_words/formatter';
import { goodsName } from '@/app/_words/stall/shopWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { designKey } from '@/lib/stall/designKey';
import { gatheredAt } from '@/lib/stall/shops/consignedEntries';
import { shopNames } from '@/lib/stall/shops/shopNames';
import { type ShopStanding, shopLate, shopStanding } from '@/lib/stall/shops/shopStanding';
import { inOrder } from '@/lib/stored/entriesInForce';
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
  /** Notes what comes to its shelf or goes; what lies under another of its names is first brought under this one. */
  readonly noteGoods: (
    label: string,
    entries: Parameters<ReadyWorkspace['note']>[1],
  ) => ReturnType<ReadyWorkspace['note']>;
  readonly today: string;
  readonly formatter: Formatter;
  readonly locale: string;
}

/** Folds what was noted of every shop of the device. */
export function useShops(workspace: ReadyWorkspace): readonly ShopOnScreen[] {
  const today = useToday();
  const { shops, piles, jobs, workshop, entries } = workspace;
  const { shopPrice, shopStatement, shopPayment, stockMove, stockTransfer, stockCount } = entries;
  const stock = useMemo(
    () => inOrder([...stockMove, ...stockTransfer, ...stockCount]),
    [stockMove, stockTransfer, stockCount],
  );
  const folded = useMemo(
    () =>
      Object.entries(shops).map(([shopId, shop]) => {
        const told = { statements: shopStatement, payments: shopPayment, prices: shopPrice };
        return { shopId, shop, standing: shopStanding(shopId, shop, { piles, stock, ...told }) };
      }),
    [shops, piles, stock, shopStatement, shopPayment, shopPrice],
  );
  const lines = useMemo(
    () =>
      new Map(
        jobs.flatMap(({ id, job }) =>
          job.lines.map((line) => [designKey({ jobId: id, lineId: line.id }), line.name] as const),
        ),
      ),
    [jobs],
  );
  return folded.map(({ shopId, shop, standing }) => ({
    ...{ workspace, shopId, shop, standing, today },
    late: shopLate(
      shop,
      standing,
      standing.outSince === null ? null : dayOf(new Date(standing.outSince)),
      today,
    ),
    nameOf: (goods) => goodsName(lines.get(designKey(goods)) ?? null, goods.size),
    noteGoods: (label, noted) =>
      workspace.note(label, [...gatheredAt(shop.name, shopNames(shop), piles), ...noted]),
    formatter: formatterFor(workshop),
    locale: usableLocale(workshop.locale),
  }));
}
