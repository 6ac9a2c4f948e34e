import type { BackendTx, Row } from '@/app/_backend/backend';
import { isPlainObject, sameValue } from '@/lib/merging/sameValue';

/** Records nothing can read, where they went. */
interface KeptUnreadable {
  /** Those that were put into a table. */
  readonly rows: readonly (Row & { readonly id: string })[];
  /** Those whose place is taken. */
  readonly aside: readonly unknown[];
}

/** Puts records nothing here can read into the table a later build will look for them in. */
export async function keepUnreadable(tx: BackendTx, raws: readonly unknown[]): Promise<KeptUnreadable> {
  const rows: (Row & { readonly id: string })[] = [];
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
      rows.push(raw);
    } else if (!sameValue(here, raw)) {
      aside.push(raw);
    }
  }
  return { rows, aside };
}

/** @returns whether a record is an entry or a paper: only what is written once has a device and a count. */
export const isWrittenOnce = (raw: unknown): raw is Row =>
  isPlainObject(raw) && raw.device !== undefined && raw.count !== undefined;

// Helpers

const isRow = (raw: unknown): raw is Row & { readonly id: string } =>
  isPlainObject(raw) && typeof raw.id === 'string';

/** Only papers have a series. */
function tableOf(raw: unknown): 'documents' | 'entries' | 'papers' {
  if (!isWrittenOnce(raw)) return 'documents';
  return raw.series === undefined ? 'entries' : 'papers';
}
