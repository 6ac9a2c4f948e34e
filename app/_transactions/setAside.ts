import type { BackendTx } from '@/app/_backend/backend';
import { isPlainObject, sameValue } from '@/lib/merging/sameValue';

/** Keeps records whose place is taken; each once, however often it comes. */
export async function setAside(tx: BackendTx, raws: readonly unknown[], at: number): Promise<void> {
  if (raws.length === 0) return;
  const already = await tx.all('aside');
  const fresh = raws.filter(
    (raw, index) =>
      !already.some((row) => isPlainObject(row) && sameValue(row.raw, raw)) &&
      !raws.slice(0, index).some((earlier) => sameValue(earlier, raw)),
  );
  await tx.put(
    'aside',
    fresh.map((raw, index) => ({ key: `${at}-${already.length + index}`, raw })),
  );
}
