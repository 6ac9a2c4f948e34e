import type { BackendTx, Row } from '@/app/_backend/backend';
import { fallingWith, writtenOnceAmong } from '@/lib/stored/fallingWith';
import type { StoreKinds } from '@/lib/stored/registry';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { Entry, Paper } from '@/shared/schemas/happened';
import { appendEntries, takingBack } from './appendEntries';
import { arriveOnce } from './arriveOnce';
import { avoidLetters, letterOf, partFromTwin, readDevice } from './deviceIdentity';
import { enterHistory } from './enterHistory';
import { knownBy } from './exchangedByStep';
import { keepUnreadable } from './keepUnreadable';
import { noteLastCopy } from './lastCopy';
import { outgoingTakers } from './outgoingTakers';
import { type ArrivingDraft, replaceDrafts } from './replaceDrafts';
import { setAside } from './setAside';

/** What comes in from a copy or from another device. */
export interface Arriving {
  /** Drafts as they are to be here. */
  readonly drafts: readonly ArrivingDraft[];
  /** Every paper and every entry that came, rows as they came; those that are here already are left alone. */
  readonly papers: readonly Paper[];
  readonly entries: readonly Entry[];
  /** Records kept as they are, though nothing can read them; those that are here already are left alone. */
  readonly unreadable: readonly unknown[];
  readonly files: readonly StoredFile[];
  /** Rows of the table of what was exchanged. */
  readonly exchanged: readonly Row[];
  /** Letters of other devices, beside those on the papers that came. */
  readonly lettersTaken?: readonly string[];
  /** When the copy was made that holds all that will be here; null or not told where none does. */
  readonly heldIn?: number | null;
}

/**
 * `beside`: all that is here stays. `replace`: afterwards the device shows what came and no more. Drafts that
 * did not come are removed, but for those that stay; entries that did not come count no more.
 */
export type ArrivalMode =
  | { readonly mode: 'beside' }
  | { readonly mode: 'replace'; readonly staying: readonly string[] };

interface ArrivalToWrite {
  readonly label: string;
  readonly tab: string;
  readonly at: number;
  readonly arriving: Arriving;
  readonly how: ArrivalMode;
}

/** What an arrival left in the store. */
export interface Arrived {
  /** Ids of everything that was written. */
  readonly ids: readonly string[];
  /** Papers and entries under whose id something else is here, and what stands on them: they are set aside. */
  readonly clashing: readonly { readonly kind: string; readonly id: string }[];
  /** What came was numbered by a copy of this browser profile: this device has another id and letter from now on. */
  readonly isRenamed: boolean;
}

/**
 * Writes an arrival as one step. Nothing that is here is ever overwritten but drafts, and undo brings those back;
 * it takes back the entries that came and lets those count again that the arrival took out of force.
 */
export async function arrive(
  tx: BackendTx,
  kinds: StoreKinds,
  { label, tab, at, arriving, how }: ArrivalToWrite,
): Promise<Arrived> {
  const drafts = await replaceDrafts(tx, kinds.registry, {
    at,
    documents: arriving.drafts,
    staying: how.mode === 'beside' ? 'all' : how.staying,
  });
  const papers = await arriveOnce(tx, 'papers', arriving.papers);
  const entries = await arriveOnce(tx, 'entries', arriving.entries);
  const kept = await keepUnreadable(tx, arriving.unreadable);
  // One and the same number stands for something else here: what came to it came with it.
  const fallen = [
    ...fallingWith([...papers.clashing, ...entries.clashing], [...papers.fresh, ...entries.fresh]),
    ...fallingWith(writtenOnceAmong(kept.aside), writtenOnceAmong(kept.rows)),
  ];
  for (const table of ['papers', 'entries'] as const) {
    const isPaper = table === 'papers';
    const gone = fallen.filter((row) => 'series' in row === isPaper);
    await tx.drop(
      table,
      gone.map(({ id }) => id),
    );
  }
  await setAside(
    tx,
    [...drafts.aside, ...papers.clashing, ...entries.clashing, ...kept.aside, ...fallen],
    at,
  );
  await tx.put('files', arriving.files);
  const met = await knownBy(tx, arriving.exchanged);
  await tx.put('exchanged', arriving.exchanged);
  const isRenamed = await partFromTwin(
    tx,
    [...arriving.papers, ...arriving.entries],
    [...papers.clashing, ...entries.clashing],
  );
  const own = (await readDevice(tx))?.id;
  await avoidLetters(tx, [
    ...(arriving.lettersTaken ?? []),
    ...[...arriving.papers, ...arriving.entries].flatMap((row) => (row.device === own ? [] : letterOf(row))),
  ]);
  if (arriving.heldIn != null) await noteLastCopy(tx, { at: arriving.heldIn, upTo: at });
  const unread = writtenOnceAmong(arriving.unreadable.filter((raw) => !kept.aside.includes(raw)));
  const takers = outgoingTakers(await tx.all('entries'), [...arriving.entries, ...unread], how.mode);
  const appended = await appendEntries(
    tx,
    kinds.entryKinds,
    takers.map((id) => takingBack(kinds.entryKinds, id, how.mode === 'replace' ? 'replaced' : undefined)),
    at,
  );
  const written = appended.entries.map(({ id }) => id);
  const arrived = entries.fresh.filter((entry) => !fallen.includes(entry)).map(({ id }) => id);
  await enterHistory(tx, {
    label,
    tab,
    at,
    moves: drafts.moves,
    noted: written,
    arrived,
    met,
    overwrote: false,
  });
  return {
    ids: [
      ...drafts.moves.map(({ document }) => document.id),
      ...papers.fresh.map(({ id }) => id),
      ...arrived,
      ...written,
      ...kept.rows.map(({ id }) => id),
    ],
    clashing: [...papers.clashing, ...entries.clashing, ...fallen].map(({ kind, id }) => ({ kind, id })),
    isRenamed,
  };
}
