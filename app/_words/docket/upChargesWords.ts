import { formatMinor, toMinor } from '@/shared/money';
import type { Line } from '@/shared/schemas/job';

/** @returns what sizes add to a price: “2XL +1.50, 3XL +2.50”; nothing where none adds. */
export const upChargesWords = (upCharges: Line['upCharges'], currency: string, locale: string): string =>
  upCharges
    .filter(({ amount }) => amount !== 0)
    .map(({ size, amount }) => {
      const text = formatMinor(toMinor(amount, currency), currency, locale);
      return `${size}\u00a0${amount > 0 ? `+${text}` : text}`;
    })
    .join(', ');
