import type { PriceList } from '@/shared/schemas/priceList';

/** An invented list that nobody has issued yet. */
export const examplePriceList: PriceList = {
  name: 'Shirts and mugs for clubs',
  from: '',
  notes: 'White shirts of 100 % polyester and white coated mugs. Prints on other colours on request.',
  leadTime: 'About two weeks after you approve the proof.',
  validDays: 90,
  paper: 'letter',
  items: [
    {
      id: 'shirts',
      jobId: 'club-order',
      lineId: 'shirts',
      charges: ['name'],
      ownAmounts: [],
    },
  ],
};
