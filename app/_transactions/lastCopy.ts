import type { BackendTx } from '@/app/_backend/backend';
import { instantSchema } from '@/shared/schemas/stored';
import { z } from '@/shared/schemas/z';

const KEY = 'lastCopy';
const rowSchema = z.strictObject({ key: z.literal(KEY), at: instantSchema });

/** @returns when everything here last went into a copy; null where that was never noted. */
export async function readLastCopy(tx: BackendTx): Promise<number | null> {
  const row = rowSchema.safeParse((await tx.get('meta', [KEY]))[0]);
  return row.success ? row.data.at : null;
}

export const noteLastCopy = (tx: BackendTx, at: number): PromiseLike<void> =>
  tx.put('meta', [{ key: KEY, at }]);
