import type { StockRow } from './stockRows';

/** @returns pieces sold of those that were brought: seconds kept from before lay beside them and were no demand for these */
export const firstsSold = ({
  sold,
  keptSold = 0,
}: Pick<StockRow, 'sold'> & Partial<Pick<StockRow, 'keptSold'>>): number => sold - keptSold;
