import type { BackendTx } from '@/app/_backend/backend';
import type { EntryToWrite, UncountedEntry } from '@/lib/stored/newEntries';
import type { EntryRegistry } from '@/lib/stored/registry';
import { TAKE_BACK } from '@/lib/stored/takeBack';
import type { TakeBack } from '@/shared/schemas/entries';
import type { Entry } from '@/shared/schemas/happened';
import { claimCounts, type Device } from './deviceIdentity';

/** Entries as they were written, and the device that wrote them; null where there was nothing to write. */
export interface Appended {
  readonly entries: readonly Entry[];
  readonly device: Device | null;
}

export const nothingAppended: Appended = { entries: [], device: null };

/** Writes entries under the next numbers of this device, those that are known elsewhere under the id they have there. */
export async function appendEntries(
  tx: BackendTx,
  entries: readonly EntryToWrite[],
  at: number,
): Promise<Appended> {
  if (entries.length === 0) return nothingAppended;
  const uncounted = entries.filter(({ knownAs }) => knownAs === undefined).length;
  const claimed = uncounted === 0 ? null : await claimCounts(tx, uncounted);
  const device = claimed?.device.id ?? '';
  let count = claimed?.first ?? 0;
  const written = entries.map(({ kind, version, body, knownAs }) => {
    if (knownAs !== undefined) return { ...knownAs, kind, version, body };
    const own = { id: `${device}-${count}`, device, count, at };
    count += 1;
    return { ...own, kind, version, body };
  });
  await tx.put('entries', written);
  return { entries: written, device: claimed?.device ?? null };
}

/** @returns an entry that takes back another, ready to be written. */
export const takingBack = (
  entryKinds: EntryRegistry,
  entryId: string,
  cause?: TakeBack['cause'],
): UncountedEntry => ({
  kind: TAKE_BACK,
  version: entryKinds[TAKE_BACK]?.version ?? 1,
  body: { entryId, ...(cause === undefined ? {} : { cause }) },
});
