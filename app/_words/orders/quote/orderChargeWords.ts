import type { OrderCharge } from '@/shared/schemas/order';

/** What a charge begins as on the paper; the maker may write it otherwise. */
export const orderChargeWords: Readonly<Record<OrderCharge['kind'], string>> = {
  minimumOrder: 'Least order',
  design: 'Setting up the design',
  sample: 'A pressed sample',
  placement: 'A further print',
  name: 'Names',
  fold: 'Folding and bagging',
  split: 'Splitting the order by name',
  change: 'A change after approval',
  delivery: 'Delivery',
  rush: 'Rush',
  own: 'Other',
};
