import type { StallOutcome } from '@/lib/stall/plan/stallPlanned';

type Figures = Omit<StallOutcome, 'chance' | 'factor' | 'weather' | 'weatherIds'>;

interface SoldRow {
  readonly name: string;
  readonly of: (
    outcome: Figures,
    number: (value: number, maxDecimals?: number) => string,
    amount: (money: number) => string,
  ) => string;
}

const money = (name: string, of: (outcome: Figures) => number): SoldRow => ({
  name,
  of: (outcome, _, amount) => amount(of(outcome)),
});

/** What is told of each weather, from the pieces sold to the pay of an hour. */
export const soldRows: readonly SoldRow[] = [
  { name: 'pieces sold', of: ({ sold }, number) => number(sold, 1) },
  money('takings', ({ takings }) => takings),
  money('without tax', ({ netRevenue }) => netRevenue),
  money('fees', ({ fees }) => fees),
  money('left after the pieces sold', ({ contribution }) => contribution),
  money('the day, your pay and the batch', ({ fixed }) => fixed),
  { name: 'pieces unsold', of: ({ leftovers }, number) => number(leftovers, 1) },
  money('what they cost', ({ leftoverCost }) => leftoverCost),
  money('profit', ({ profit }) => profit),
  {
    name: 'pay an hour',
    of: ({ payPerHour }, _, amount) => (payPerHour === null ? 'no time' : amount(payPerHour)),
  },
];
