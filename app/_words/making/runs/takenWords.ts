import type { Formatter } from '@/app/_words/formatter';
import { runTable } from './runTable';

/** @returns how many blanks are laid out, spares among them; null where there are none. */
export function takenWords(
  sizes: readonly { readonly wanted: number; readonly take: number }[],
  { number, count }: Formatter,
): string | null {
  if (sizes.length === 0) return null;
  const take = sizes.reduce((sum, one) => sum + one.take, 0);
  const spares = sizes.reduce((sum, one) => sum + one.take - one.wanted, 0);
  return runTable.take(number(take), count(spares, 'spare'));
}
