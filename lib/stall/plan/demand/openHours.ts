import type { StallDay } from '@/shared/schemas/stallDay';

const MINUTES_OF_A_DAY = 24 * 60;

/** @returns hours in which a stall is open over all its days; a day that ends after midnight counts to its end. */
export const openHours = ({ days }: Pick<StallDay, 'days'>): number =>
  days.reduce((sum, { fromMinute, toMinute }) => {
    const minutes = toMinute - fromMinute;
    return sum + (minutes < 0 ? minutes + MINUTES_OF_A_DAY : minutes);
  }, 0) / 60;
