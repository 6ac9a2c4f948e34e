import { amountWords } from '@/app/_words/amountWords';
import { formatNumber } from '@/shared/formatNumber';

/** @returns a price in currency units without its currency’s name, and without decimals that say nothing: “28”, “27.50” */
export const priceFigure = (price: number, currency: string, locale: string): string =>
  Number.isInteger(price) ? formatNumber(price, locale) : amountWords(price, currency, locale);
