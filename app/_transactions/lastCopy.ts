import type { BackendTx } from '@/app/_backend/backend';
import { instantSchema } from '@/shared/schemas/stored';
import { z } from '@/shared/schemas/z';

const KEY = 'lastCopy';
const rowSchema = z.strictObject({
  key: z.literal(KEY),
  at: instantSchema,
  upTo: instantSchema.optional(),
});

/** The copy that everything here last was in. */
export interface LastCopy {
  /** When it was made. */
  readonly at: number;
  /** What was changed until then is in it: later than it was made, where all that is here came out of it. */
  readonly upTo: number;
}

/** @returns null where none was ever noted. */
export async function readLastCopy(tx: BackendTx): Promise<LastCopy | null> {
  const row = rowSchema.safeParse((await tx.get('meta', [KEY]))[0]);
  return row.success ? { at: row.data.at, upTo: row.data.upTo ?? row.data.at } : null;
}

export const noteLastCopy = (tx: BackendTx, { at, upTo }: LastCopy): PromiseLike<void> =>
  tx.put('meta', [upTo === at ? { key: KEY, at } : { key: KEY, at, upTo }]);
