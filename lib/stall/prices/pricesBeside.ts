import { roundToStep } from '@/shared/decimal';

/**
 * @param price currency units
 * @param step prices end on whole multiples of this, currency units, more than 0
 * @returns the nearest prices on the grid that are not this one, currency units; `below` may be 0
 */
export function pricesBeside(
  price: number,
  step: number,
): { readonly below: number; readonly above: number } {
  const [under, over] = [roundToStep(price, step, 'floor'), roundToStep(price, step, 'ceiling')];
  return {
    below: under < price ? under : roundToStep(price - step, step, 'floor'),
    above: over > price ? over : roundToStep(price + step, step, 'ceiling'),
  };
}
