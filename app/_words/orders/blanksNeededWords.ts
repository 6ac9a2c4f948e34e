import type { Formatter } from '@/app/_words/formatter';
import type { BlanksNeeded } from '@/lib/orders/bench/blanksNeeded';

/** @example 'White shirt: 37 (S 4, M 9, L 11, XL 8, 2XL 4, 3XL 1)' */
export function blanksNeededWords({ blank, pieces, sizes }: BlanksNeeded, formatter: Formatter): string {
  const number = (count: number) => formatter.number(count, 0);
  const name = blank === null ? 'A blank that is not here' : blank.name;
  const bySize = sizes.length > 1 || (sizes[0]?.size ?? '') !== '';
  const of = bySize
    ? ` (${sizes.map(({ size, pieces: count }) => `${size} ${number(count)}`).join(', ')})`
    : '';
  const brought = blank?.suppliedBy === 'customer' ? '; the customer brings them' : '';
  return `${name}: ${number(pieces)}${of}${brought}`;
}
