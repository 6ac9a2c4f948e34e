import { type Formatter, formatterFor, type NameOf, type TextContext } from '@/app/_words/formatter';
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
import { sheetWords } from './sheetWords';
import { substrateWords } from './substrateWords';
import { timeWords } from './timeWords';
import type { Wording, WordingOf } from './wording';

/** A finding in words. */
export interface FindingWords {
  /** What is wrong. */
  readonly sentence: string;
  /** What will happen, and what to do. */
  readonly detail: string;
  /** Words on the button; null where there is none. */
  readonly fixLabel: string | null;
}

const wordings: { readonly [Id in FindingId]: WordingOf<Id> } = {
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
  const { sentence, detail } = wordingOf(finding.id, finding, formatter, context.nameOf ?? nobodyKnows);
  return {
    sentence: capitalized(sentence),
    detail,
    fixLabel: finding.fix === null ? null : fixLabel(finding.fix, formatter),
  };
}

/** The id chooses the words, and says which facts they find. */
const wordingOf = <Id extends FindingId>(
  id: Id,
  finding: FindingsById[Id],
  formatter: Formatter,
  nameOf: NameOf,
): Wording => wordings[id](finding, formatter, nameOf);

const nobodyKnows = () => null;

/** Names typed in small letters may come first in a sentence. */
const capitalized = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
