'use client';

import { Card } from '@/app/_controls/Card';
import type { Bench } from '@/app/_orderBook/useBench';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import { FilesSection } from './jobs/FilesSection';
import { JobsSection } from './jobs/JobsSection';
import { NamesSection } from './jobs/NamesSection';
import { OpenItemsSection } from './jobs/OpenItemsSection';
import { TimelineSection } from './jobs/TimelineSection';
import type { OrderOnScreen } from './orderOnScreen';

type RestOfOrderProps = Readonly<{ on: OrderOnScreen; book: OrderBook; bench: Bench }>;

/** What an order is made of and what happened to it, beneath what it waits for. */
export function RestOfOrder({ on, book, bench }: RestOfOrderProps) {
  return (
    <Card>
      <JobsSection {...{ on, book }} />
      <NamesSection on={on} />
      <OpenItemsSection on={on} />
      <FilesSection {...{ on, bench }} />
      <TimelineSection on={on} />
    </Card>
  );
}
