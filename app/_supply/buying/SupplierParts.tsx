'use client';

import Link from 'next/link';
import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { LaterPart } from '@/app/_network/LaterPart';
import { GoodsInNote } from '@/app/_supply/goods/GoodsInNote';
import { laterParts } from '@/app/_supply/ordering/laterParts';
import { SentOrderActs } from '@/app/_supply/ordering/SentOrderActs';
import styles from '@/app/_supply/Supply.module.css';
import { goodsForm, isBegun, orderDeskForm } from '@/app/_supply/supplyForms';
import type { SentOrder } from '@/app/_supply/supplyOnScreen';
import { noSupplierTold, supplierPartWords } from '@/app/_words/supply/buyingWords';
import { itemWords, sizeSaid, unitOf } from '@/app/_words/supply/itemWords';
import { sentWords } from '@/app/_words/supply/supplyOrderWords';
import type { BuyingPlan, SupplierPart } from '@/lib/buying/buyingPlan';
import type { SupplyOrderLine } from '@/lib/buying/ordering/supplyOrderBody';
import { stockKey } from '@/lib/stock/stockKey';
import type { BuyingOnScreen } from './buyingOnScreen';

type PlannedProps = Readonly<{ on: BuyingOnScreen; plan: BuyingPlan }>;

/** What goes to whom: the order sheet, what was sent, and the goods once they come. */
export function SupplierParts({ on, plan }: PlannedProps) {
  const { supply, listId } = on;
  const sent = supply.workspace.papers.supplyOrder.filter(({ body }) => body.buyingListId === listId);
  const named = plan.suppliers.map(({ supplierId }) => supplierId);
  const others = sent.filter(({ body }) => !named.includes(body.supplierId));
  return (
    <>
      {plan.suppliers.map((part) => (
        <PartOf
          key={part.supplierId ?? ''}
          {...{ on, plan, part }}
          sent={sent.filter(({ body }) => body.supplierId === part.supplierId)}
        />
      ))}
      {others.map((order) => (
        <SentRow key={order.id} {...{ on, order }} />
      ))}
    </>
  );
}

// Helpers

type PartProps = PlannedProps & { readonly part: SupplierPart; readonly sent: readonly SentOrder[] };

function PartOf({ on, plan, part, sent }: PartProps) {
  const { supply, listId } = on;
  const { workspace, formatter, locale } = supply;
  const { supplierId } = part;
  const waited = supply.openOrders.find(({ order }) => sent.some(({ id }) => id === order.id)) ?? null;
  const goods = goodsForm(waited?.order.id ?? `${listId} ${supplierId ?? ''}`);
  const desk = orderDeskForm(listId, supplierId ?? '');
  const [open, setOpen] = useState<'order' | 'goods' | null>(() =>
    isBegun(goods) ? 'goods' : isBegun(desk) ? 'order' : null,
  );
  const supplier = supplierId === null ? undefined : workspace.suppliers[supplierId];
  const isOut = sent.some(({ withdrawn }) => !withdrawn);
  const purchases = part.rows.flatMap((at) => plan.rows[at]?.purchase ?? []);
  const lines = purchases.map((purchase): SupplyOrderLine => {
    const { name, size, unit } = itemWords(purchase.item, workspace);
    const { item, articleNumber, quantity } = purchase;
    const packSize = purchase.packSize ?? 1;
    return {
      ...{ item, name, articleNumber, quantity, packSize },
      size: sizeSaid(name, size),
      unit: unitOf(unit, packSize > 1 ? 2 : quantity),
      // What the maker reckons with is none of the supplier's business.
      each: purchase.priceIs === 'offered' ? purchase.each : null,
    };
  });
  const toggle = (what: 'order' | 'goods') => setOpen(open === what ? null : what);
  return (
    <section className={styles.line} aria-label={part.name}>
      <h3 className={styles.sub}>{supplierId === null ? 'From whoever has it' : part.name}</h3>
      <p className={styles.quiet}>{supplierPartWords(part, plan.currency, formatter, locale)}</p>
      <Fold summary={formatter.count(lines.length, 'thing')}>
        <ul>
          {lines.map((line) => (
            <li key={stockKey(line.item)}>
              {formatter.number(line.quantity)} {line.unit} {line.name}
              {line.size !== '' && `, ${line.size}`}
            </li>
          ))}
        </ul>
      </Fold>
      {supplierId === null && (
        <p className={styles.quiet}>
          {noSupplierTold} <Link href="/making/suppliers">To the suppliers</Link>
        </p>
      )}
      <div className={styles.acts}>
        {supplier !== undefined && (
          <Button
            kind={isOut ? 'plain' : 'strong'}
            expanded={open === 'order'}
            spoken={`Order from ${part.name}`}
            onPress={() => toggle('order')}
          >
            {isOut ? 'Order again' : 'Order'}
          </Button>
        )}
        <Button expanded={open === 'goods'} spoken={`Goods in, ${part.name}`} onPress={() => toggle('goods')}>
          Goods in
        </Button>
      </div>
      {open === 'order' && supplierId !== null && supplier !== undefined && (
        <LaterPart
          part={laterParts.desk}
          what="The order"
          props={{ supply, form: desk, asked: { supplierId, supplier, lines, buyingListId: listId }, isOut }}
        />
      )}
      {open === 'goods' && (
        <GoodsInNote
          supply={supply}
          supplierId={supplierId}
          form={goods}
          order={waited}
          wanted={purchases}
          onDone={() => setOpen(null)}
        />
      )}
      {sent.toReversed().map((order) => (
        <SentRow key={order.id} {...{ on, order }} />
      ))}
    </section>
  );
}

const SentRow = ({ on: { supply }, order }: Readonly<{ on: BuyingOnScreen; order: SentOrder }>) => (
  <div className={styles.acts}>
    <p>{sentWords(order, supply.formatter, supply.locale)}</p>
    <SentOrderActs {...{ supply, order }} />
  </div>
);
