'use client';

import { useMemo } from 'react';
import { useToday } from '@/app/_clock/useToday';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { type Formatter, formatterFor } from '@/app/_words/formatter';
import { itemName } from '@/app/_words/supply/itemWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { type CameBeyond, cameBeyond } from '@/lib/buying/received/cameBeyond';
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
  /** By the id of the order: of what more came than it asks for, in several deliveries; none of the others. */
  readonly beyond: ReadonlyMap<string, readonly CameBeyond[]>;
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
        const toCome = stillToCome(order.body, answersTo(order, goodsIn));
        return toCome.length === 0 ? [] : [{ order, toCome }];
      }),
    [orders, goodsIn],
  );
  const beyond = useMemo(
    () =>
      new Map(
        orders.flatMap((order) => {
          const came = cameBeyond(order.body, answersTo(order, goodsIn));
          return came.length === 0 ? [] : [[order.id, came] as const];
        }),
      ),
    [orders, goodsIn],
  );
  return {
    ...{ workspace, deliveries, openOrders, beyond, today },
    nameOf: (item) => itemName(item, workspace),
    supplierName: (id) =>
      id === null
        ? 'no supplier named'
        : (workspace.suppliers[id]?.name ??
          // Who is removed is still called as the orders called it.
          orders.findLast(({ body }) => body.supplierId === id)?.body.supplier.name ??
          'a supplier that is not here any more'),
    formatter: formatterFor(workspace.workshop),
    locale: usableLocale(workspace.workshop.locale),
  };
}

// Helpers

const answersTo = (order: SentOrder, goodsIn: ReadyWorkspace['entries']['goodsIn']) =>
  goodsIn.flatMap(({ body }) => (body.supplyOrderId === order.id ? [body] : []));
