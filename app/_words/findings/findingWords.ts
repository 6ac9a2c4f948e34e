import { type Formatter, formatterFor, type TextContext } from '@/app/_words/formatter';
import type { Finding, FindingsById } from '@/shared/finding';
import type { FindingId } from '@/shared/tables/findingIds';
import { artworkWords } from './artworkWords';
import { documentWords } from './documentWords';
import { fixLabel } from './fixWords';
import { placementWords } from './placementWords';
import { quantityWords } from './quantityWords';
import { rateWords } from './rateWords';
import { recipeWords } from './recipeWords';
import { rowWords } from './rowWords';
import { safetyWords } from './safetyWords';
import type { Say, Saying } from './sayings';
import { sheetWords } from './sheetWords';
import { substrateWords } from './substrateWords';
import { timeWords } from './timeWords';

/** A finding in words. */
export interface FindingWords {
  /** What is wrong. */
  readonly sentence: string;
  /** What will happen, and what to do. */
  readonly detail: string;
  /** Words on the button; null where there is none. */
  readonly fixLabel: string | null;
}

const sayings: { readonly [Id in FindingId]: Say<Id> } = {
  ...documentWords,
  ...substrateWords,
  ...artworkWords,
  ...sheetWords,
  ...placementWords,
  ...recipeWords,
  ...quantityWords,
  ...rateWords,
  ...rowWords,
  ...timeWords,
  ...safetyWords,
};

/**
 * Puts a finding into words, with lengths, temperatures, pressures and money the maker's way.
 *
 * @param context locale, units and currency of the workshop
 */
export function findingWords(finding: Finding, context: TextContext): FindingWords {
  const formatter = formatterFor(context);
  const { sentence, detail } = sayingOf(finding.id, finding, formatter);
  return {
    sentence: capitalized(sentence),
    detail,
    fixLabel: finding.fix === null ? null : fixLabel(finding.fix, formatter),
  };
}

/** The id chooses the words, and says which facts they find. */
const sayingOf = <Id extends FindingId>(id: Id, finding: FindingsById[Id], formatter: Formatter): Saying =>
  sayings[id](finding, formatter);

/** Names typed in small letters may come first in a sentence. */
const capitalized = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
