import type { Formatter } from '@/app/_words/formatter';
import type { Channel } from '@/shared/schemas/workshop';
import type { PriceBarFigures } from './priceBarFigures';

/**
 * Says under the price bar what its marks are and how they stand to the price with tax.
 *
 * @param figures null before the first price: the words are there already, so that nothing moves later
 */
export function rulerWords(
  figures: PriceBarFigures | null,
  channel: Channel | undefined,
  formatter: Formatter,
): string {
  const marks = 'The marks are averages a piece over the whole job, without tax.';
  const taxMode = channel?.taxMode;
  switch (taxMode) {
    case 'inside':
      return figures === null
        ? `${marks} –.–– with its tax inside is –.–– without: there the flag stands.`
        : `${marks} ${figures.price} with ${formatter.share(figures.terms.inside)} tax inside is ${figures.format(figures.flag)} without: there the flag stands.`;
    case 'added':
      return `${marks} Tax is added to the price later.`;
    case 'none':
      return 'The marks are averages a piece over the whole job. This way of selling has no tax.';
    case null:
    case undefined:
      return `${marks} Whether your prices have tax inside is not said yet.`;
    default:
      return taxMode satisfies never;
  }
}
