import type { Facts } from '@/shared/finding';

/** Two ways to read a finding's facts: as words and as figures. */
export const factReaders = (facts: Facts) => ({
  name: (fact: string): string => String(facts[fact] ?? ''),
  figure: (fact: string): number => {
    const value = facts[fact];
    return typeof value === 'number' ? value : 0;
  },
});
