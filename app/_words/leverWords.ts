import { factReaders } from '@/app/_words/findings/factReaders';
import type { LeverDraft, LeverId } from '@/lib/studies/levers/lever';
import { isRateName, rateDefinition } from '@/shared/tables/rateCatalogue';
import { type Formatter, formatterFor, type TextContext } from './formatter';

interface ToldLever {
  readonly formatter: Formatter;
  readonly name: (fact: string) => string;
  readonly figure: (fact: string) => number;
}

const words: Readonly<Record<LeverId, (told: ToldLever) => string>> = {
  smallerPrint: ({ name, figure, formatter }) =>
    `Print ${name('placement')} at ${formatter.size(figure('widthMm'), figure('heightMm'))} instead of ${formatter.size(figure('fromWidthMm'), figure('fromHeightMm'))}: ${formatter.number(figure('perSheet'), 0)} go on a sheet.`,
  fillSpot: ({ name, figure, formatter }) =>
    `Ask for ${formatter.count(figure('more'), 'piece')} more, ${formatter.number(figure('quantity'), 0)} in all: ${filled[name('filled')] ?? 'a sheet'} is then just full.`,
  pressOrder: ({ name }) =>
    `Press ${name('first')} first: what spoils most is then spoiled before other work is in the piece.`,
  onePlacementLess: ({ name }) => `Leave ${name('placement')} out of ${name('line')}, at the same price.`,
  cheaperBlank: ({ name }) => `Take ${name('blank')} instead of ${name('instead')}.`,
  fewerMinutes: ({ name, figure, formatter }) =>
    `Take a tenth less time for ${elementWords(name('element'))}: ${formatter.number(figure('to'), 2)} min instead of ${formatter.number(figure('from'), 2)}. Most of your minutes go there.`,
  lessScrap: ({ name, figure, formatter }) =>
    `Spoil one press of a hundred less at ${name('placement')}: ${formatter.share(figure('to'))} instead of ${formatter.share(figure('from'))}.`,
  nextPrice: ({ figure, formatter }) => `Ask ${formatter.money(figure('step'))} more a piece.`,
  otherSheet: ({ name }) => `Print on ${name('sheet')} instead of ${name('instead')}.`,
  shareSession: () =>
    'Press it in one session with another job: each then bears half of setting up, cleaning and its ink.',
  gangReplacements: ({ name }) =>
    `Keep replacements of ${name('placement')} for a full sheet instead of printing each alone.`,
};

const filled: Readonly<Record<string, string>> = { sheet: 'a sheet', session: 'a session', pack: 'a pack' };

/** Minutes of the workshop go by the name of their rate, those of a print or a blank by its own. */
const elementWords = (element: string): string =>
  isRateName(element) ? `“${rateDefinition(element).label}”` : `“${element}”`;

/** A lever in words: what to change, from what to what. */
export const leverWords = ({ id, facts }: Pick<LeverDraft, 'id' | 'facts'>, context: TextContext): string =>
  words[id]({ formatter: formatterFor(context), ...factReaders(facts) });
