import type { LeverDraft, LeverDrafts, LeverId } from '@/lib/studies/levers/lever';
import { isRateName, rateDefinition } from '@/shared/tables/rateCatalogue';
import { type Formatter, formatterFor, type TextContext } from './formatter';

type FactsOf<Id extends LeverId> = LeverDrafts[Id]['facts'];

const words: { readonly [Id in LeverId]: (facts: FactsOf<Id>, formatter: Formatter) => string } = {
  smallerPrint: (facts, formatter) =>
    `Print ${facts.placement} at ${formatter.size(facts.widthMm, facts.heightMm)} instead of ${formatter.size(facts.fromWidthMm, facts.fromHeightMm)}: ${formatter.number(facts.perSheet, 0)} go on a sheet.`,
  fillSpot: (facts, formatter) =>
    `Ask for ${formatter.count(facts.more, 'piece')} more, ${formatter.number(facts.quantity, 0)} in all: ${filled[facts.filled]} is then just full.`,
  pressOrder: (facts) =>
    `Press ${facts.first} first: what spoils most is then spoiled before other work is in the piece.`,
  onePlacementLess: (facts) => `Leave ${facts.placement} out of ${facts.line}, at the same price.`,
  cheaperBlank: (facts) => `Take ${facts.blank} instead of ${facts.instead}.`,
  fewerMinutes: (facts, formatter) =>
    `Spend a tenth less time on ${elementWords(facts.element)}: ${formatter.number(facts.to, 2)} min instead of ${formatter.number(facts.from, 2)}. Most of your minutes go there.`,
  lessScrap: (facts, formatter) =>
    `Spoil one press of a hundred less at ${facts.placement}: ${formatter.share(facts.to)} instead of ${formatter.share(facts.from)}.`,
  nextPrice: (facts, formatter) => `Ask ${formatter.money(facts.step)} more a piece.`,
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

/** Minutes of the workshop go by what their rate is called, those of a print or a blank by its own name. */
const elementWords = (element: string): string =>
  isRateName(element) ? lowered(rateDefinition(element).label) : `“${element}”`;

/** A lever in words: what to change, from what to what. */
export const leverWords = ({ id, facts }: Pick<LeverDraft, 'id' | 'facts'>, context: TextContext): string =>
  wordsOf(id, facts, formatterFor(context));

const wordsOf = <Id extends LeverId>(id: Id, facts: FactsOf<Id>, formatter: Formatter): string =>
  words[id](facts, formatter);

const lowered = (label: string): string => label.slice(0, 1).toLowerCase() + label.slice(1);
