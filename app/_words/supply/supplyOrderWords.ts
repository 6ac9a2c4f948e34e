import type { Formatter } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { orderNumberText } from '@/shared/orderNumberText';
import type { SupplyOrder } from '@/shared/schemas/making/runPapers';
import type { SupplyItem } from '@/shared/schemas/making/supply';

interface ToCome {
  readonly order: { readonly body: SupplyOrder };
  readonly toCome: readonly { readonly item: SupplyItem; readonly quantity: number }[];
}

/** Things named before the others are counted. */
const NAMED = 3;

/** @returns when it was ordered, by when it is wanted, and what has not come. */
export function toComeWords(
  { order: { body }, toCome }: ToCome,
  nameOf: (item: SupplyItem) => string,
  formatter: Formatter,
): string {
  const things = toCome
    .slice(0, NAMED)
    .map(({ item, quantity }) => `${formatter.number(quantity)} × ${nameOf(item)}`);
  const more = toCome.length - things.length;
  return [
    `Ordered ${formatter.day(body.issuedOn)}`,
    body.wantedBy === null ? null : `wanted by ${formatter.day(body.wantedBy)}`,
    `${things.join(', ')}${more > 0 ? ` and ${formatter.count(more, 'thing')} more` : ''}`,
  ]
    .filter((part) => part !== null)
    .join(' · ');
}

/** Why an order is not sent twice by mistake. */
export const orderedAlready =
  'An order of this list went to them already. Issue another only for what that one lacks, else it all comes twice; or withdraw the first.';

/** What withdrawing an order does not do. */
export const withdrawnOrderTold =
  'The supplier does not learn of it from here: tell them, else the goods come all the same.';

/** @returns an order that went out, in one line. */
export function sentWords(
  { body, withdrawn }: { readonly body: SupplyOrder; readonly withdrawn: boolean },
  formatter: Formatter,
  locale: string,
): string {
  return [
    `Order ${orderNumberText(body.number)} of ${formatter.day(body.issuedOn)}`,
    body.totalMinor === null ? null : minorMoney(body.totalMinor, body.currency, locale),
    withdrawn ? 'withdrawn' : null,
  ]
    .filter((part) => part !== null)
    .join(' · ');
}
