'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { ListRow, RowList } from '@/app/_controls/RowList';
import { GoodsInNote } from '@/app/_supply/goods/GoodsInNote';
import styles from '@/app/_supply/Supply.module.css';
import { goodsForm, isBegun } from '@/app/_supply/supplyForms';
import type { SupplyOnScreen } from '@/app/_supply/supplyOnScreen';
import { toComeWords } from '@/app/_words/supply/supplyOrderWords';
import { orderNumberText } from '@/shared/orderNumberText';
import { SentOrderActs } from './SentOrderActs';

/** Orders whose goods have not all come, each with the way to count them in. */
export function OpenOrders({ supply }: Readonly<{ supply: SupplyOnScreen }>) {
  const [counting, setCounting] = useState<string | null>(
    () => supply.openOrders.find(({ order }) => isBegun(goodsForm(order.id)))?.order.id ?? null,
  );
  return (
    <RowList label="Still to come">
      {supply.openOrders.map((open) => {
        const { order } = open;
        const number = orderNumberText(order.body.number);
        const isCounting = counting === order.id;
        return (
          <ListRow
            key={order.id}
            acts={
              <>
                <Button
                  spoken={`Goods in for ${number}`}
                  expanded={isCounting}
                  onPress={() => setCounting(isCounting ? null : order.id)}
                >
                  Goods in
                </Button>
                <SentOrderActs {...{ supply, order }} />
              </>
            }
            unfolded={
              isCounting && (
                <GoodsInNote
                  supply={supply}
                  form={goodsForm(order.id)}
                  order={open}
                  onDone={() => setCounting(null)}
                />
              )
            }
          >
            <strong>{number}</strong> {order.body.supplier.name}
            <p className={styles.quiet}>{toComeWords(open, supply.nameOf, supply.formatter)}</p>
          </ListRow>
        );
      })}
    </RowList>
  );
}
