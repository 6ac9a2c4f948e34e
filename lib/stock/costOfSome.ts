import type { StockUnitCost } from '@/shared/schemas/stock';

/** @returns what some of it cost, minor units, unrounded */
export const costOfSome = ({ minor, per }: StockUnitCost, quantity: number): number =>
  (minor * quantity) / (per ?? 1);
