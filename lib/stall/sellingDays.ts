import type { StallDay } from '@/shared/schemas/stallDay';

type Days = Pick<StallDay, 'days'>;

/** @returns the first day of selling; null where none is set. */
export const firstDayOf = (stallDay: Days): string | null => inOrder(stallDay).at(0) ?? null;

/** @returns the last day of selling, which may end in the night after it; null where none is set. */
export const lastDayOf = (stallDay: Days): string | null => inOrder(stallDay).at(-1) ?? null;

/** Days are written so that they sort as text. */
const inOrder = ({ days }: Days): readonly string[] => days.map(({ day }) => day).sort();
