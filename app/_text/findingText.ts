import type { Finding } from '@/shared/finding';
import type { FindingId } from '@/shared/tables/findingIds';
import { artworkText } from './artworkText';
import { documentText } from './documentText';
import { factReaders } from './factReaders';
import { fixLabel } from './fixLabel';
import { placementText } from './placementText';
import { quantityText } from './quantityText';
import { rateText } from './rateText';
import { recipeText } from './recipeText';
import { rowText } from './rowText';
import { safetyText } from './safetyText';
import type { Say } from './sayings';
import { sheetText } from './sheetText';
import { speakerOf, type TextContext } from './speaker';
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

const sayings: Readonly<Record<FindingId, Say>> = {
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
  const told = { finding, speak, nameOf: context.nameOf ?? nobodyKnows, ...factReaders(finding.facts) };
  const { sentence, detail } = sayings[finding.id](told);
  return {
    sentence: capitalized(sentence),
    detail,
    fixLabel: finding.fix === null ? null : fixLabel(finding.fix, speak),
  };
}

const nobodyKnows = () => null;

/** Names typed in small letters may come first in a sentence. */
const capitalized = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
