import type { WrittenTariff } from '@/lib/price/list/selling';
import type { RemedyOffer } from '@/lib/studies/breaks/remedyOffers';
import type { SellingEffect } from '@/lib/studies/breaks/sellingEffects';
import { formatMinor, fromMinor } from '@/shared/money';
import { type BreakListFormat, someSizes } from './breakListWords';
import { namesInWords } from './jobWords';

interface RemedyWords {
  readonly name: string;
  /** What it is. */
  readonly says: string;
  readonly button: string;
}

/**
 * @param tariff what the line would be written at; only the tariff needs it
 * @param piece what one of the line is called
 */
export function remedyWords(
  { kind, breaks, dropped }: RemedyOffer,
  tariff: WrittenTariff | null,
  piece: string,
  format: BreakListFormat,
): RemedyWords {
  const { currency, locale, formatter } = format;
  switch (kind) {
    case 'capped':
      return {
        name: 'Cap',
        says: 'No order pays more than a larger one would.',
        button: 'Cap orders at the next break',
      };
    case 'slab':
      return {
        name: 'Slabs',
        says: 'The lower price holds only for the pieces beyond a break.',
        button: 'Reckon by slabs',
      };
    case 'setUpApart': {
      const start = tariff === null ? '' : formatter.money(fromMinor(tariff.start, currency));
      const each = tariff === null ? '' : formatter.money(fromMinor(tariff.each, currency));
      return {
        name: `So much to start, so much a ${piece}`,
        says: `Every order pays ${start} to start and ${each} a ${piece}; larger sizes add their charge.`,
        button: 'Sell by this tariff',
      };
    }
    case 'softened':
      return {
        name: 'Softer steps',
        says: `Your own prices become ${(breaks ?? [])
          .map(({ each }) => formatMinor(each, currency, locale))
          .join(', ')} ${currency}, what clean edges need. More breaks would make smaller steps.`,
        button: 'Soften the steps',
      };
    case 'shifted':
      return {
        name: 'Earlier breaks',
        says: `Your own prices ${(breaks ?? [])
          .map(({ each }) => formatMinor(each, currency, locale))
          .join(', ')} ${currency} begin at ${(breaks ?? [])
          .map(({ from }) => formatter.number(from, 0))
          .join(
            ', ',
          )} ${breaks?.length === 1 && breaks[0]?.from === 1 ? 'piece' : 'pieces'}${dropped > 0 ? `; ${formatter.count(dropped, 'dearer price')} before them ${dropped === 1 ? 'falls' : 'fall'} away` : ''}. They hold for this line alone.`,
        button: 'Move the breaks',
      };
    default:
      return kind satisfies never;
  }
}

/** As many orders are named as one reads in a sentence. */
const MOST_ORDERS = 3;

/** @returns what a remedy does at the edges: for the buyer, then to profit and margin where it does most. */
export function effectWords({ effects, sizes, kind }: RemedyOffer, format: BreakListFormat): string {
  const changed = effects.filter(({ before, after }) => before !== after);
  if (changed.length === 0) return 'No order at these edges pays anything else.';
  const { currency, locale, formatter } = format;
  const moved = (effect: SellingEffect) => Math.abs(effect.after - effect.before);
  const told = [...changed]
    .sort((a, b) => moved(b) - moved(a))
    .slice(0, MOST_ORDERS)
    .sort((a, b) => a.n - b.n);
  const of =
    kind === 'setUpApart' || sizes.length === format.sizes.length
      ? ''
      : ` of ${someSizes(sizes, format.sizes)}`;
  const buyers = told.map(
    ({ n, before, after }, index) =>
      `${index === 0 ? `${formatter.count(n, 'piece')}${of}` : formatter.number(n, 0)} ${n === 1 ? 'pays' : 'pay'} ${formatMinor(after, currency, locale)} instead of ${formatMinor(before, currency, locale)}`,
  );
  const gain = ({ profitAfter, profitBefore }: SellingEffect) => profitAfter - profitBefore;
  const worst = changed.reduce((least, next) => (gain(next) < gain(least) ? next : least));
  const best = changed.reduce((most, next) => (gain(next) > gain(most) ? next : most));
  const most = -gain(worst) > gain(best) ? worst : best;
  const verb = gain(most) < 0 ? 'takes' : 'adds';
  const way = gain(most) < 0 ? 'from' : 'to';
  return `${namesInWords(buyers)} ${currency}. At ${formatter.number(most.n, 0)} it ${verb} ${formatter.money(Math.abs(gain(most)))} ${way} your profit: the margin goes from ${formatter.share(most.marginBefore)} to ${formatter.share(most.marginAfter)}.`;
}
