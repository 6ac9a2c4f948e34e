import type { Finding, FindingsById } from '@/shared/finding';
import type { FindingId } from '@/shared/tables/findingIds';
import { artworkText } from './artworkText';
import { documentText } from './documentText';
import { fixLabel } from './fixLabel';
import { placementText } from './placementText';
import { quantityText } from './quantityText';
import { rateText } from './rateText';
import { recipeText } from './recipeText';
import { rowText } from './rowText';
import { safetyText } from './safetyText';
import type { Say, Saying } from './sayings';
import { sheetText } from './sheetText';
import { type Speaker, speakerOf, type TextContext } from './speaker';
import { substrateText } from './substrateText';
import { timeText } from './timeText';

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
  ...documentText,
  ...substrateText,
  ...artworkText,
  ...sheetText,
  ...placementText,
  ...recipeText,
  ...quantityText,
  ...rateText,
  ...rowText,
  ...timeText,
  ...safetyText,
};

/**
 * Puts a finding into words, with lengths, temperatures, pressures and money the maker's way.
 *
 * @param context locale, units and currency of the workshop
 */
export function findingText(finding: Finding, context: TextContext): FindingWords {
  const speak = speakerOf(context);
  const { sentence, detail } = sayingOf(finding.id, finding, speak);
  return {
    sentence: capitalized(sentence),
    detail,
    fixLabel: finding.fix === null ? null : fixLabel(finding.fix, speak),
  };
}

/** The id chooses the words, and says which facts they find. */
const sayingOf = <Id extends FindingId>(id: Id, finding: FindingsById[Id], speak: Speaker): Saying =>
  sayings[id](finding, speak);

/** Names typed in small letters may come first in a sentence. */
const capitalized = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
