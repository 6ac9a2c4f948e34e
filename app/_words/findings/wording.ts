import type { Formatter, NameOf } from '@/app/_words/formatter';
import type { FindingsById } from '@/shared/finding';
import type { FindingId } from '@/shared/tables/findingIds';

/** What is wrong, and then what will happen and what to do. */
export interface Wording {
  readonly sentence: string;
  readonly detail: string;
}

/**
 * How a finding of one id is put into words: it may use the facts of that id, and no others; `nameOf` tells what a
 * document or a part of the workshop is called, though the finding knows only its id.
 */
export type WordingOf<Id extends FindingId> = (
  finding: FindingsById[Id],
  formatter: Formatter,
  nameOf: NameOf,
) => Wording;

/** The words of every id of a table of facts. */
export type WordingsOf<Facts> = { readonly [Id in keyof Facts & FindingId]: WordingOf<Id> };

export const wording = (sentence: string, detail: string): Wording => ({ sentence, detail });
