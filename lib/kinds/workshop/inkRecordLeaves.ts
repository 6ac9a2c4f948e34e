import { heldDaySchema, heldIdSchema, heldLengthMmSchema, heldNameSchema } from '@/lib/kinds/heldShapes';
import { isPlainObject } from '@/lib/merging/sameValue';
import type { Leaving, LeavingEntry } from '@/lib/stored/leaving';
import { sha256OfValue } from '@/lib/stored/sha256';
import { noonOf } from '@/shared/days';
import { z } from '@/shared/schemas/z';

/** The record of ink as workshops of version 3 and 4 held it. */
const heldRecordSchema = z
  .strictObject({
    refills: z
      .array(z.strictObject({ id: heldIdSchema, day: heldDaySchema, mL: z.number().positive().max(100_000) }))
      .max(2000)
      .default([]),
    runs: z
      .array(
        z.strictObject({
          id: heldIdSchema,
          day: heldDaySchema,
          name: heldNameSchema,
          prints: z.int().min(0).max(100_000),
          total: z.number().min(0).max(4),
          widthMm: heldLengthMmSchema,
          heightMm: heldLengthMmSchema,
          sessions: z.int().min(0).max(1000),
        }),
      )
      .max(2000)
      .default([]),
  })
  .default({ refills: [], runs: [] });

/**
 * Version 4 to 5: what is noted of ink is entries of its own. A record of ink that cannot be read stays where it is,
 * so that the workshop is refused and kept as it was found.
 */
export function workshopWithoutInkRecord(body: unknown): unknown {
  if (!isPlainObject(body) || !heldRecordSchema.safeParse(body.inkRecord).success) return body;
  const { inkRecord: _, ...rest } = body;
  return rest;
}

/** The refills and prints that a workshop of version 4 holds. */
export function inkRecordLeaves(body: unknown): Leaving {
  const held = isPlainObject(body) ? heldRecordSchema.safeParse(body.inkRecord) : null;
  if (held?.success !== true) return { entries: [], papers: [] };
  const { refills, runs } = held.data;
  return {
    entries: [
      ...refills.map(({ id, ...refill }) => entry('inkRefill', id, refill)),
      ...runs.map(({ id, ...run }) => entry('inkPrints', id, { ...run, jobId: null })),
    ],
    papers: [],
  };
}

// Helpers

const entry = <Body extends { readonly day: string }>(
  kind: string,
  id: string,
  body: Body,
): LeavingEntry => ({
  kind,
  version: 1,
  at: Math.max(0, noonOf(body.day)) + msOf(id),
  body,
});

/**
 * Two that say the same stay two. From its id and not from its place among the others: an older copy, in which one
 * more or one less stands, gives the same entries again.
 *
 * @returns under five hours, ms
 */
const msOf = (id: string): number => Number.parseInt(sha256OfValue(id).slice(0, 6), 16);
