import type { Formatter } from '@/app/_words/formatter';
import type { SupplyOrder } from '@/shared/schemas/runPapers';
import type { SupplyItem } from '@/shared/schemas/supply';

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
