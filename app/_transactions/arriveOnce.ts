import type { BackendTx } from '@/app/_backend/backend';
import { isErasedForm } from '@/lib/erasing/erasedEntry';
import { sameValue } from '@/lib/merging/sameValue';
import { type Entry, entrySchema, type Paper } from '@/shared/schemas/happened';

/** What of papers or entries that came was not here yet, and what finds something else under its id. */
interface ArrivedOnce<Item> {
  readonly fresh: readonly Item[];
  readonly clashing: readonly Item[];
}

/** Writes papers or entries that are not here yet. Each is written once and for good: none is ever overwritten. */
export async function arriveOnce<Item extends Entry | Paper>(
  tx: BackendTx,
  table: 'entries' | 'papers',
  items: readonly Item[],
): Promise<ArrivedOnce<Item>> {
  const here = await tx.get(
    table,
    items.map(({ id }) => id),
  );
  const fresh = items.filter((_, index) => here[index] === undefined);
  const clashing = items.filter((item, index) => {
    const kept = here[index];
    return kept !== undefined && !sameValue(kept, item) && !isErasedHere(kept, item);
  });
  await tx.put(table, fresh);
  return { fresh, clashing };
}

/** Of a customer who was erased here, or where it comes from. */
function isErasedHere(row: unknown, item: Entry | Paper): boolean {
  const kept = entrySchema.safeParse(row);
  return kept.success && isErasedForm(kept.data, item);
}
