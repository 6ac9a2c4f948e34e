import { isPlainObject, sameValue } from '@/lib/stored/sameValue';
import type { BackendTx, Row } from './backend';

/** Records nothing can read, where they went. */
interface KeptUnreadable {
  readonly ids: readonly string[];
  /** Those whose place is taken. */
  readonly aside: readonly unknown[];
}

/** Puts records nothing here can read into the table a later build will look for them in. */
export async function keepUnreadable(tx: BackendTx, raws: readonly unknown[]): Promise<KeptUnreadable> {
  const ids: string[] = [];
  const aside: unknown[] = [];
  for (const raw of raws) {
    const table = tableOf(raw);
    if (!isRow(raw)) {
      aside.push(raw);
      continue;
    }
    const [here] = await tx.get(table, [raw.id]);
    if (here === undefined) {
      await tx.put(table, [raw]);
      ids.push(raw.id);
    } else if (!sameValue(here, raw)) {
      aside.push(raw);
    }
  }
  return { ids, aside };
}

// Helpers

const isRow = (raw: unknown): raw is Row & { readonly id: string } =>
  isPlainObject(raw) && typeof raw.id === 'string';

/** Only what is written once has a device and a count, and only papers have a series. */
function tableOf(raw: unknown): 'documents' | 'entries' | 'papers' {
  if (!isPlainObject(raw) || raw.device === undefined || raw.count === undefined) return 'documents';
  return raw.series === undefined ? 'entries' : 'papers';
}
