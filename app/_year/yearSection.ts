import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import type { Formatter } from '@/app/_words/formatter';
import type { YearStanding } from '@/lib/year/yearStanding';

/** What every section of the year is given. */
export interface YearSection {
  readonly book: OrderBook;
  readonly standing: YearStanding;
  readonly workspace: ReadyWorkspace;
  readonly today: string;
  readonly formatter: Formatter;
  readonly locale: string;
}

export type YearSectionProps = Readonly<{ on: YearSection }>;
