import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Formatter } from '@/app/_words/formatter';
import type { YearOnScreen } from './useYear';

/** What every section of the year is given. */
export interface YearSection extends Pick<YearOnScreen, 'book' | 'standing'> {
  readonly workspace: ReadyWorkspace;
  readonly today: string;
  readonly formatter: Formatter;
  readonly locale: string;
}

export type YearSectionProps = Readonly<{ on: YearSection }>;
