import type { Fix } from '@/shared/finding';
import { daySchema } from '@/shared/schemas/rate';

/** @returns the button that agrees on another day; null where there is none, or none that a calendar has. */
export const moveDateFix = (day: string | null): Fix | null =>
  day === null || !daySchema.safeParse(day).success
    ? null
    : {
        label: 'moveDate',
        facts: { date: day },
        changes: [{ document: 'job', path: ['wantedOn'], value: day }],
      };
