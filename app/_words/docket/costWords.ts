import { amountWords } from '@/app/_words/amountWords';
import { minutesWords } from '@/app/_words/minutesWords';
import { type CostGroupId, groupShares } from '@/lib/grid/costGroups';
import { type CostSheet, wholeJob } from '@/lib/grid/costSheet';
import { taxTerms } from '@/lib/price/taxTerms';
import type { AnswerWords } from './answerWords';
import type { PieceWord } from './pieceWords';
import { shareWords } from './shareWords';

/** Under this share nothing is worth naming. */
const WORTH_NAMING = 0.1;

/** What a piece costs, and the two groups that most of it goes to. */
export function costAnswer(sheet: CostSheet, piece: PieceWord, locale: string): AnswerWords {
  const each = sheet.fullCost / wholeJob(sheet, 'goodPieces');
  const withoutTax = costTaxWords(taxTerms(sheet).inside);
  const largest = groupShares(sheet)
    .slice(0, 2)
    .filter(({ share }) => share >= WORTH_NAMING)
    .map(({ id, percent }, at) => {
      const of = shareWords(percent / 100, locale);
      return at === 0 ? `${of} is ${inSentence[id]}` : `${of} ${inSentence[id]}`;
    });
  return {
    before: `A ${piece.one} costs `,
    key: amountWords(each, sheet.currency, locale),
    after: `${withoutTax === '' ? '' : ` ${withoutTax}`}${largest.length === 0 ? '' : `: ${largest.join(', ')}`}`,
  };
}

/** Said beside costs where prices are written with tax inside; nothing where both are the same money. */
export const costTaxWords = (taxInside: number): string => (taxInside > 0 ? 'without tax' : '');

/** What a group has of the cost. */
export const percentWords = (percent: number): string => (percent < 1 ? 'under 1 %' : `${percent} %`);

/** What a group is called beside its amount; your time says how long. */
export const groupName = (id: CostGroupId, label: string, sheet: CostSheet, locale: string): string =>
  id === 'time' ? `${label}, ${minutesWords(wholeJob(sheet, 'attendedBase'), locale)}` : label;

/** What a group is called in its part of the bar. */
export const groupInBar: Readonly<Record<CostGroupId, string>> = {
  blanks: 'blanks',
  time: 'time',
  overhead: 'overhead',
  loss: 'spoilage',
  sheets: 'sheets',
  packing: 'packaging',
  running: 'power',
  own: 'own rows',
};

// Helpers

const inSentence: Readonly<Record<CostGroupId, string>> = {
  blanks: 'the blank',
  time: 'your time',
  overhead: 'overhead',
  loss: 'spoilage and reprints',
  sheets: 'sheets and ink',
  packing: 'packaging and delivery',
  running: 'power and wear',
  own: 'your own rows',
};
