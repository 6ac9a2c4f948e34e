import type { Blank } from '@/shared/schemas/blank';
import type { Rate } from '@/shared/schemas/rate';

/** The price of the next smaller size that has one, and its name; where none is smaller, of the next larger. */
export function neighbourPrice(
  { sizes }: Blank,
  index: number,
): { readonly size: string; readonly price: Rate<'money/piece'> } | null {
  const near = [...sizes.slice(0, index).reverse(), ...sizes.slice(index + 1)];
  const [found] = near.flatMap(({ name, price }) => (price === null ? [] : [{ size: name, price }]));
  return found ?? null;
}
