interface Days<Day extends { readonly day: string }> {
  readonly days: readonly Day[];
}

/** @returns the days of selling as they follow one another, however they were typed; days are written so that they sort as text. */
export const daysInOrder = <Day extends { readonly day: string }>({ days }: Days<Day>): readonly Day[] =>
  days.toSorted((one, other) => (one.day < other.day ? -1 : one.day > other.day ? 1 : 0));

/** @returns the first day of selling; null where none is set. */
export const firstDayOf = (stallDay: Days<{ readonly day: string }>): string | null =>
  daysInOrder(stallDay)[0]?.day ?? null;

/** @returns the last day of selling, which may end in the night after it; null where none is set. */
export const lastDayOf = (stallDay: Days<{ readonly day: string }>): string | null =>
  daysInOrder(stallDay).at(-1)?.day ?? null;
