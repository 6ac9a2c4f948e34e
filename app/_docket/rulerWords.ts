import type { Channel } from '@/shared/schemas/workshop';
import type { Speaker } from '../_text/speaker';
import type { PlateFigures } from './plateFigures';

/** Says under the plate what its marks are and how they stand to the price with tax. */
export function rulerWords(figures: PlateFigures, channel: Channel | undefined, speak: Speaker): string {
  const { terms, price, flag, format } = figures;
  const marks = 'The marks are averages a piece over the whole job, without tax.';
  const taxMode = channel?.taxMode;
  switch (taxMode) {
    case 'inside':
      return `${marks} ${price} with ${speak.share(terms.inside)} tax inside is ${format(flag)} without: there the flag stands.`;
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
