import type { Cover } from '@/shared/schemas/making/supply';

/** How sure every size is to come out whole, by one name wherever it is chosen. */
export const coverNames: Readonly<Record<Cover, string>> = {
  expected: 'As expected',
  usual: '75 of 100',
  sure: '95 of 100',
};
