import type { QuoteWords } from '@/lib/quotes/quoteWords';

/** The words of a quote’s own lines in English. */
export const quoteLineWords: QuoteWords = {
  pieces: '{pieces} × {name}',
  more: '{count} more in {size}',
  moreInMix: '{count} more, in sizes as ordered',
  fewer: '{count} fewer',
  without: 'Without {print}',
  capped: '{name}: costs no more than {as}',
  firstPieces: '{name}: first pieces at their own price',
  held: '{name}: no more than for all that was asked',
  fibres: {
    polyester: 'polyester',
    cotton: 'cotton',
    wool: 'wool',
    viscose: 'viscose',
    nylon: 'nylon',
    elastane: 'elastane',
    acrylic: 'acrylic',
    acetate: 'acetate',
    other: 'other fibres',
  },
};
