'use client';

import { CardSection } from '@/app/_controls/CardSection';
import { Fold } from '@/app/_controls/Fold';
import { Answer } from '@/app/_docket/common/Answer';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { timelineAnswer } from '@/app/_words/orders/orderTimelineWords';
import { Timeline } from './Timeline';

/** What happened to the order, when and on which device. */
export function TimelineSection({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { facts, today, locale, formatter } = on;
  return (
    <CardSection
      numeral={null}
      heading="What happened"
      id="order-timeline"
      answer={<Answer words={timelineAnswer(facts.happened, today, locale, formatter)} />}
    >
      <Fold summary="All of it, the latest first">
        <Timeline on={on} />
      </Fold>
    </CardSection>
  );
}
