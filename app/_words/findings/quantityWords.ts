import { audienceWords } from '@/app/_words/choices/audienceWords';
import type { Formatter } from '@/app/_words/formatter';
import type { QuantityFacts } from '@/shared/facts/quantityFacts';
import { type WordingsOf, wording } from './wording';

/** Words of the findings about quantities and sizes. */
export const quantityWords = {
  'QTY-01': ({ facts }, formatter) =>
    wording(
      `${facts.line}: the sizes add up to ${formatter.number(facts.total)}, the order says ${formatter.number(facts.ordered)}.`,
      'Somebody will get no piece, or one nobody asked for. Ask the customer which is right, and change the sizes or the sum.',
    ),
  'QTY-02': ({ variant, facts }, formatter) => {
    switch (variant) {
      case 'fraction':
        return wording(
          `${facts.line}: size ${facts.size} asks for ${formatter.number(facts.quantity, 6)} ${facts.quantity === 1 ? 'piece' : 'pieces'}.`,
          'Only whole pieces can be pressed, and all sums count them. Enter a whole number.',
        );
      case 'none':
        return wording(
          `${facts.line} has no pieces.`,
          'With nothing to make there is nothing to cost. Enter how many of each size, or take the line out.',
        );
      default:
        return wording(
          `${facts.line} has ${formatter.count(facts.total, 'piece')}.`,
          `That is more than ${formatter.number(facts.most)}, weeks of pressing on one machine. Check the figure; if it is meant, go on.`,
        );
    }
  },
  'QTY-03': ({ facts }, formatter) =>
    wording(
      `${formatter.count(facts.pieces, 'piece')} ${facts.pieces === 1 ? 'is' : 'are'} below your least order of ${formatter.number(facts.least, 0)}.`,
      'Set-up is spread over too few. Ask what a small order costs, see the charges, or leave it.',
    ),
  'QTY-04': ({ variant, facts }) => {
    switch (variant) {
      case 'noBlank':
        return wording(
          `${facts.blank} does not come in size ${facts.size}.`,
          `It cannot be bought or costed. It comes in ${facts.sizes}: move the pieces to one of these, or add the size to the blank.`,
        );
      case 'strayCharge':
        return wording(
          `${facts.line} has an up-charge for size ${facts.size}, which ${facts.blank} does not come in.`,
          'It is added to no price. Take it out, or name the size it was meant for.',
        );
      case 'noPrice':
        return wording(
          `There is no price for ${facts.blank} in ${facts.count === 1 ? 'size' : 'sizes'} ${facts.sizes}.`,
          'These pieces cannot be costed, and nothing is taken for free. Enter what you pay for one.',
        );
      default:
        return wording(
          `${facts.placement} has no print size for size ${facts.size}.`,
          'Sheets and ink of these pieces cannot be counted. Give the size a print, or let one print serve all sizes.',
        );
    }
  },
  'QTY-05': ({ variant, facts }, formatter) => {
    const sentence = `${facts.line}: ${formatter.share(facts.share)} are size ${facts.size}; for ${audienceWords[facts.audience]} about ${formatter.share(facts.usual)} is usual.`;
    return variant === 'more'
      ? wording(sentence, 'Too many of one size go home unsold or do not fit. Ask who they are for.')
      : wording(sentence, 'Too few of a size are missed on the day. Ask who they are for.');
  },
  'QTY-06': ({ facts }) =>
    wording(
      `${facts.line} has children’s sizes: ${facts.sizes}.`,
      `They need smaller prints, and goods for children have rules of their own. Say that ${facts.blank} is for children, or correct the sizes.`,
    ),
  'QTY-07': ({ variant, facts }, formatter) =>
    variant === 'short'
      ? wording(
          `${facts.blank}: ${formatter.number(facts.pieces, 0)} short of what the run takes.`,
          `Spares are among them: ${facts.each}. Without them a size may not come out whole. Put them on a buying list.`,
        )
      : wording(
          `Nobody has counted ${facts.blank} in some sizes.`,
          `The run takes ${formatter.number(facts.pieces, 0)} of these, spares among them: ${facts.each}. Count what lies at home, or put them on a buying list.`,
        ),
  'QTY-08': ({ variant, facts }, formatter) =>
    variant === 'ask'
      ? wording(
          `Ask the customer for ${formatter.number(facts.ask, 0)} of ${facts.blank}, for ${formatter.count(facts.pieces, 'piece')}: ${facts.each}.`,
          `With so many, every size is whole with a chance of ${formatter.share(facts.confidence)}. Your price bears the paper, ink and minutes of a spoiled piece, not the blank: agree on who replaces it.`,
        )
      : wording(
          `${facts.blank} in size ${facts.size} comes in packs of ${formatter.number(facts.pack, 0)}.`,
          `For ${formatter.number(facts.needed, 0)} you buy ${formatter.number(facts.buy, 0)}; ${formatter.number(facts.left, 0)} worth ${formatter.money(facts.worth)} stay on the shelf. They are not in this job's cost.${countedWords(facts.counted, formatter)}`,
        ),
} satisfies WordingsOf<QuantityFacts>;

// Helpers

function countedWords(counted: number | null, formatter: Formatter): string {
  if (counted === null) return ' Nobody has counted this size, so all are bought; count what lies at home.';
  return counted < 0 ? ` Count this size: ${formatter.number(-counted, 0)} more went out than came in.` : '';
}
