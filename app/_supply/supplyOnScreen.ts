'use client';

import { useMemo } from 'react';
import { useToday } from '@/app/_clock/useToday';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { type Formatter, formatterFor } from '@/app/_words/formatter';
import { itemName } from '@/app/_words/supply/itemWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { type DeliveryStanding, deliveriesOf } from '@/lib/buying/received/claims';
import { stillToCome } from '@/lib/buying/received/stillToCome';
import type { PaperBodies } from '@/lib/kinds/paperKinds';
import type { Paper } from '@/shared/schemas/happened';
import type { SupplyItem } from '@/shared/schemas/making/supply';

/** An order that went out to a supplier. */
export type SentOrder = Paper<'supplyOrder', PaperBodies['supplyOrder']> & { readonly withdrawn: boolean };

/** An order whose goods have not all come. */
export interface OpenOrder {
  readonly order: SentOrder;
  readonly toCome: ReturnType<typeof stillToCome>;
}

/** Everything around buying, as its screens have it. */
export interface SupplyOnScreen {
  readonly workspace: ReadyWorkspace;
  /** The last first. */
  readonly deliveries: readonly DeliveryStanding[];
  /** The first first. */
  readonly openOrders: readonly OpenOrder[];
  readonly nameOf: (item: SupplyItem) => string;
  readonly supplierName: (id: string | null) => string;
  readonly today: string;
  readonly formatter: Formatter;
  readonly locale: string;
}

/** Folds what was ordered, what came and what was claimed. */
export function useSupply(workspace: ReadyWorkspace): SupplyOnScreen {
  const today = useToday();
  const { goodsIn, faultClaim } = workspace.entries;
  const orders = workspace.papers.supplyOrder;
  const deliveries = useMemo(() => deliveriesOf(goodsIn, faultClaim), [goodsIn, faultClaim]);
  const openOrders = useMemo(
    () =>
      orders.flatMap((order): readonly OpenOrder[] => {
        if (order.withdrawn) return [];
        const answers = goodsIn.filter(({ body }) => body.supplyOrderId === order.id);
        const toCome = stillToCome(
          order.body,
          answers.map(({ body }) => body),
        );
        return toCome.length === 0 ? [] : [{ order, toCome }];
      }),
    [orders, goodsIn],
  );
  return {
    ...{ workspace, deliveries, openOrders, today },
    nameOf: (item) => itemName(item, workspace),
    supplierName: (id) =>
      id === null
        ? 'no supplier named'
        : (workspace.suppliers[id]?.name ?? 'a supplier that is not here any more'),
    formatter: formatterFor(workspace.workshop),
    locale: usableLocale(workspace.workshop.locale),
  };
}
