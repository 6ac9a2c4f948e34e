import type { CalendarEntry } from '@/lib/exports/calendarFile';
import { z } from '@/shared/schemas/z';

const KEY = 'pressminute-calendar';
/** Orders handed out longest ago are forgotten first. */
const MOST = 100;

/** What went into the last calendar file of each order; kept apart from the documents, for it tells of a file and no order. */
export const handedOut = {
  of: (orderId: string): readonly CalendarEntry[] => read().find(([id]) => id === orderId)?.[1] ?? [],
  remember(orderId: string, entries: readonly CalendarEntry[]): void {
    const others = read().filter(([id]) => id !== orderId);
    try {
      localStorage.setItem(KEY, JSON.stringify([...others, [orderId, entries]].slice(-MOST)));
    } catch {
      // Full, or forbidden by the browser: the next file begins with a number that what happened has raised.
    }
  },
};

// Helpers

type HandedOut = readonly [orderId: string, entries: readonly CalendarEntry[]];

function read(): readonly HandedOut[] {
  try {
    const kept = handedOutSchema.safeParse(JSON.parse(localStorage.getItem(KEY) ?? '[]'));
    return kept.success ? kept.data : [];
  } catch {
    // Forbidden, or no list of ours.
    return [];
  }
}

const whenSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('days'), from: z.string(), to: z.string() }),
  z.strictObject({ kind: z.literal('time'), day: z.string(), fromMinute: z.number(), minutes: z.number() }),
]);
const entrySchema = z.strictObject({
  id: z.string(),
  sequence: z.int().min(0),
  when: whenSchema,
  title: z.string(),
  details: z.string(),
  isCancelled: z.boolean(),
});
const handedOutSchema = z.array(z.tuple([z.string(), z.array(entrySchema)]));
