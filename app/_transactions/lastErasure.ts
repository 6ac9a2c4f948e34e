import type { BackendTx } from '@/app/_backend/backend';
import { instantSchema } from '@/shared/schemas/stored';
import { z } from '@/shared/schemas/z';

const KEY = 'lastErasure';
const rowSchema = z.strictObject({ key: z.literal(KEY), at: instantSchema });

/**
 * When something was last erased here; 0 where nothing ever was. Entries change with that alone, so a tab that read them
 * before reads them anew. A store made anew knows of none, and takes nothing from what a tab holds.
 */
export async function readLastErasure(tx: BackendTx): Promise<number> {
  const row = rowSchema.safeParse((await tx.get('meta', [KEY]))[0]);
  return row.success ? row.data.at : 0;
}

/** A clock that was set back must not hide it. */
export const noteErasure = async (tx: BackendTx, at: number): Promise<void> =>
  tx.put('meta', [{ key: KEY, at: Math.max(at, (await readLastErasure(tx)) + 1) }]);
