import type { Sheet } from '@/shared/schemas/workshop';

/** @returns whether the price of a paper is for the form it comes in: a cut sheet, or a metre of roll. */
export const isPriceOfForm = ({ form, price }: Pick<Sheet, 'form' | 'price'>): boolean =>
  price === null || (price.unit === 'money/m') === (form === 'roll');
