import type { FrozenItem, PriceListVersion } from '@/shared/schemas/priceList';

/** An issued item in which every field is said. */
export const anItem = (fields: Partial<FrozenItem> = {}): FrozenItem => ({
  id: 'shirts',
  jobId: 'club-order',
  lineId: 'shirts',
  name: 'Club shirt',
  says: 'White shirt, with back picture and chest badge',
  largestPrint: { widthMm: 203.2, heightMm: 254 },
  sizes: [
    { size: 'S', upCharge: 0 },
    { size: 'M', upCharge: 0 },
    { size: 'L', upCharge: 0 },
    { size: '2XL', upCharge: 150 },
  ],
  breaks: [
    { from: 12, to: 23, each: 2000, leastAt: 12, leastSize: '2XL', leastMargin: 0.302 },
    { from: 24, to: null, each: 1800, leastAt: 24, leastSize: '2XL', leastMargin: 0.31 },
  ],
  selling: 'asListed',
  capOn: 'base',
  setUp: null,
  charges: [
    { kind: 'minimumOrder', name: '', amount: 10_100 },
    { kind: 'name', name: '', amount: 250 },
  ],
  targetMargin: 0.3,
  rates: [
    {
      place: '["blank","white-shirt",["sizes",2,"price"]]',
      label: 'Blank price, White shirt L',
      value: 4.6,
      unit: 'money/piece',
      date: '2026-11-25',
    },
  ],
  ...fields,
});

export const aVersion = (fields: Partial<PriceListVersion> = {}): PriceListVersion => ({
  number: { count: 1, letter: 'K' },
  issuedOn: '2026-11-25',
  validUntil: '2027-02-23',
  currency: 'USD',
  taxMode: 'added',
  title: 'Shirts for clubs',
  from: 'Alex Placeholder\nExampleton',
  notes: '',
  leadTime: 'Two weeks',
  items: [anItem()],
  ...fields,
});
