import type { Formatter, NameOf } from '@/app/_words/formatter';
import type { Finding } from '@/shared/finding';

/** What is wrong, and then what will happen and what to do. */
export interface Saying {
  readonly sentence: string;
  readonly detail: string;
}

/** What a saying may use. */
export interface Told {
  readonly finding: Finding;
  readonly formatter: Formatter;
  /** A fact that is a name or a word; empty where the finding has none. */
  readonly name: (fact: string) => string;
  /** A fact that is a figure; 0 where the finding has none. */
  readonly figure: (fact: string) => number;
  /** What a document or a part of the workshop is called, though the finding knows only its id. */
  readonly nameOf: NameOf;
}

export type Say = (told: Told) => Saying;

export const saying = (sentence: string, detail: string): Saying => ({ sentence, detail });
