/**
 * @param day YYYY-MM-DD, as typed
 * @returns why an entry cannot stand on a day
 */
export const inkDayProblem = (day: string, today: string): string | undefined =>
  day > today
    ? 'This day is still to come. Ink that is not used yet would be counted; take today or a day before.'
    : undefined;
