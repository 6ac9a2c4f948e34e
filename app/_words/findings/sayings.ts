import type { Formatter } from '@/app/_words/formatter';
import type { FindingsById } from '@/shared/finding';
import type { FindingId } from '@/shared/tables/findingIds';

/** What is wrong, and then what will happen and what to do. */
export interface Saying {
  readonly sentence: string;
  readonly detail: string;
}

/** How a finding of one id is put into words: it may use the facts of that id, and no others. */
export type Say<Id extends FindingId> = (finding: FindingsById[Id], formatter: Formatter) => Saying;

/** The words of every id of a table of facts. */
export type SayingsOf<Facts> = { readonly [Id in keyof Facts & FindingId]: Say<Id> };

export const saying = (sentence: string, detail: string): Saying => ({ sentence, detail });
