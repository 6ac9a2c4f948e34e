import type { RateGroup } from '@/shared/tables/rateCatalogue';

/** Headings of the groups of rates, in the order they are read. */
export const rateGroupWords: Readonly<Record<RateGroup, string>> = {
  pay: 'Your pay',
  house: 'Running the workshop',
  minutes: 'Minutes',
  ink: 'Ink',
  power: 'Electricity',
  spoilage: 'Spoilage and reprints',
  packing: 'Packing and delivery',
  price: 'Price',
};
