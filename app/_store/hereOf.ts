import type { Here } from '@/lib/copies/arrival';
import { type Exchanged, exchangedSchema } from '@/lib/copies/exchanged';
import { travellingEntries } from '@/lib/stored/travellingEntries';
import type { StoreCore } from './storeCore';

/**
 * What is here, as it is shown: with edits that could not be kept, and entries that wait and went into a copy. What only the store knows, such as what
 * went out before, is left out where it fails.
 */
export async function hereOf({ connection, tabState, shown }: StoreCore): Promise<Here> {
  const kept = await connection.attempt('read', async (tx) => ({
    exchanged: await tx.all('exchanged'),
    files: await tx.keys('files'),
  }));
  const { papers, entries, unreadable, unreadableHappened, aside, pending, wentOut, device } = tabState();
  const rows = kept.ok ? kept.value.exchanged.flatMap(readExchanged) : [];
  return {
    drafts: shown(),
    papers: [...papers.values()],
    entries: travellingEntries([
      ...entries.values(),
      ...pending.flatMap((edit) => (edit.entries ?? []).flatMap(({ id }) => wentOut.get(id) ?? [])),
    ]),
    unreadable: [...unreadable.values(), ...unreadableHappened.values(), ...aside],
    exchanged: new Map(rows.map((row) => [row.id, row])),
    device,
    files: new Set(kept.ok ? kept.value.files.map(String) : []),
  };
}

/** A row of another shape is as good as none: what comes back is then held against the clock. */
function readExchanged(row: unknown): readonly Exchanged[] {
  const parsed = exchangedSchema.safeParse(row);
  return parsed.success ? [parsed.data] : [];
}
