import type { StallDay } from '@/shared/schemas/stallDay';

/** @returns where a date of selling stands again, so that nobody could tell of which of the two a sale is; by its place in `days` */
export const repeatedDays = ({ days }: Pick<StallDay, 'days'>): readonly number[] =>
  days.flatMap(({ day }, at) => (days.findIndex((one) => one.day === day) < at ? [at] : []));
