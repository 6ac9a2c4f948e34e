'use client';

import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { timelineAnswer } from '@/app/_words/orders/notes/orderTimelineWords';
import { FoldedPart } from './FoldedPart';
import { Timeline } from './Timeline';

/** What happened to the order, when and on which device. */
export function TimelineSection({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { facts, today, locale, formatter } = on;
  return (
    <FoldedPart
      id="order-timeline"
      heading="What happened"
      answer={timelineAnswer(facts.happened, today, locale, formatter)}
    >
      <Timeline on={on} />
    </FoldedPart>
  );
}
