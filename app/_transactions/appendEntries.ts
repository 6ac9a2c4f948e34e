import type { BackendTx } from '@/app/_backend/backend';
import type { EntryToWrite, UncountedEntry } from '@/lib/stored/newEntries';
import { type EntryRegistry, entryOf } from '@/lib/stored/registry';
import { TAKE_BACK } from '@/lib/stored/takeBack';
import type { TakeBack } from '@/shared/schemas/entries';
import type { Entry } from '@/shared/schemas/happened';
import { claimCounts, type Device, readDevice } from './deviceIdentity';
import { lastGiven, noteGiven } from './deviceNumbers';

/** Entries as they were written, and the device that wrote them; null where there was nothing to write. */
export interface Appended {
  readonly entries: readonly Entry[];
  readonly device: Device | null;
}

export const nothingAppended: Appended = { entries: [], device: null };

/**
 * Writes entries under the next numbers of this device, those that are known elsewhere under the id they have there.
 * One that bears a number of a series gets the next of this device, so that two tabs never give the same.
 */
export async function appendEntries(
  tx: BackendTx,
  entryKinds: EntryRegistry,
  entries: readonly EntryToWrite[],
  at: number,
): Promise<Appended> {
  if (entries.length === 0) return nothingAppended;
  const uncounted = entries.filter(({ knownAs }) => knownAs === undefined).length;
  const claimed = uncounted === 0 ? null : await claimCounts(tx, uncounted);
  const device = claimed?.device.id ?? '';
  let count = claimed?.first ?? 0;
  const written: Entry[] = [];
  for (const { kind, version, body, knownAs } of entries) {
    if (knownAs !== undefined) {
      await noteKnown(tx, entryKinds, kind, body);
      written.push({ ...knownAs, kind, version, body });
    } else {
      const numbered =
        claimed === null ? body : await numberedBody(tx, entryKinds, claimed.device, { kind, body });
      written.push({ id: `${device}-${count}`, device, count, at, kind, version, body: numbered });
      count += 1;
    }
  }
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

// Helpers

async function numberedBody(
  tx: BackendTx,
  entryKinds: EntryRegistry,
  device: Device,
  { kind, body }: Pick<Entry, 'kind' | 'body'>,
): Promise<unknown> {
  const borne = entryOf(entryKinds, kind)?.numberIn?.(body) ?? null;
  if (borne === null) return body;
  const count = (await lastGiven(tx, device, borne.series)) + 1;
  await noteGiven(tx, device, borne.series, count);
  return borne.with({ count, letter: device.letter });
}

/** What went into a copy while it waited keeps the number it went out with, which is not given to another. */
async function noteKnown(
  tx: BackendTx,
  entryKinds: EntryRegistry,
  kind: string,
  body: unknown,
): Promise<void> {
  const borne = entryOf(entryKinds, kind)?.numberIn?.(body) ?? null;
  const device = await readDevice(tx);
  if (borne === null || device === null || device.letter !== borne.number.letter) return;
  await noteGiven(tx, device, borne.series, borne.number.count);
}
