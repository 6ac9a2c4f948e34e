import type { Block } from '@/shared/schemas/benchWeek';

/** An hour on weekday evenings and four on Saturday: how most begin. */
export const usualBlocks: readonly Block[] = [
  ...[0, 1, 2, 3, 4].map((weekday) => ({
    id: `block-${weekday + 1}`,
    weekday,
    fromMinute: 18 * 60,
    minutes: 60,
  })),
  { id: 'block-6', weekday: 5, fromMinute: 9 * 60, minutes: 240 },
];
