import type { LeverDraft, LeverDrafts, LeverId } from '@/lib/price/levers/lever';
import { isRateName, rateDefinition } from '@/shared/tables/rateCatalogue';
import { type Speaker, speakerOf, type TextContext } from './speaker';

type FactsOf<Id extends LeverId> = LeverDrafts[Id]['facts'];

const words: { readonly [Id in LeverId]: (facts: FactsOf<Id>, speak: Speaker) => string } = {
  smallerPrint: (facts, speak) =>
    `Print ${facts.placement} at ${speak.size(facts.widthMm, facts.heightMm)} instead of ${speak.size(facts.fromWidthMm, facts.fromHeightMm)}: ${speak.number(facts.perSheet, 0)} go on a sheet.`,
  fillSpot: (facts, speak) =>
    `Ask for ${speak.count(facts.more, 'piece')} more, ${speak.number(facts.quantity, 0)} in all: ${filled[facts.filled]} is then just full.`,
  pressOrder: (facts) =>
    `Press ${facts.first} first: what spoils most is then spoiled before other work is in the piece.`,
  onePlacementLess: (facts) => `Leave ${facts.placement} out of ${facts.line}, at the same price.`,
  cheaperBlank: (facts) => `Take ${facts.blank} instead of ${facts.instead}.`,
  fewerMinutes: (facts, speak) =>
    `Take a tenth less time for ${elementWords(facts.element)}: ${speak.number(facts.to, 2)} min instead of ${speak.number(facts.from, 2)}. Most of your minutes go there.`,
  lessScrap: (facts, speak) =>
    `Spoil one press of a hundred less at ${facts.placement}: ${speak.share(facts.to)} instead of ${speak.share(facts.from)}.`,
  nextPrice: (facts, speak) => `Ask ${speak.money(facts.step)} more a piece.`,
  otherSheet: (facts) => `Print on ${facts.sheet} instead of ${facts.instead}.`,
  shareSession: () =>
    'Press it in one session with another job: each then bears half of setting up, cleaning and its ink.',
  gangReplacements: (facts) =>
    `Keep replacements of ${facts.placement} for a full sheet instead of printing each alone.`,
};

const filled: Readonly<Record<FactsOf<'fillSpot'>['filled'], string>> = {
  sheet: 'a sheet',
  session: 'a session',
  pack: 'a pack',
};

/** Minutes of the workshop go by the name of their rate, those of a print or a blank by its own. */
const elementWords = (element: string): string =>
  isRateName(element) ? `“${rateDefinition(element).label}”` : `“${element}”`;

/** A lever in words: what to change, from what to what. */
export const leverText = ({ id, facts }: Pick<LeverDraft, 'id' | 'facts'>, context: TextContext): string =>
  wordsOf(id, facts, speakerOf(context));

const wordsOf = <Id extends LeverId>(id: Id, facts: FactsOf<Id>, speak: Speaker): string =>
  words[id](facts, speak);
