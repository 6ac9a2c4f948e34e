'use client';

import { CardSection } from '@/app/_controls/CardSection';
import { Fold } from '@/app/_controls/Fold';
import { Answer } from '@/app/_docket/common/Answer';
import { NamesPart } from '@/app/_names/NamesPart';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { namesAnswer } from '@/app/_words/orders/orderNamesWords';

/** Who gets which size. */
export function NamesSection({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { workspace, orderId, order, formatter } = on;
  return (
    <CardSection
      numeral={null}
      heading="Sizes and names"
      id="order-names"
      answer={<Answer words={namesAnswer(order.lines, formatter)} />}
    >
      <Fold summary="Names, sizes, size form">
        <NamesPart {...{ workspace, orderId }} />
      </Fold>
    </CardSection>
  );
}
