import { blobOf } from '@/app/_store/blobOf';
import { breathing } from '@/app/_store/breathing';
import { hereOf } from '@/app/_store/hereOf';
import type { StoreCore } from '@/app/_store/storeCore';
import { withFileHashes } from '@/app/_store/withFileHashes';
import { noteLastCopy } from '@/app/_transactions/lastCopy';
import { type CopyAsked, contentOf } from '@/lib/copies/contentOf';
import type { LackingFile } from '@/lib/copies/copy';
import { holdingsOf } from '@/lib/copies/holdings';
import { lastingEntries } from '@/lib/copies/lastingEntries';
import { writeCopy } from '@/lib/copies/writeCopy';
import { fileIdsIn } from '@/lib/stored/fileIds';
import { bytesOfFile, type StoredFile } from '@/lib/stored/storedFile';
import type { CopyMade } from './copyActions';

interface MakingCopy {
  readonly core: StoreCore;
  readonly readFile: (id: string) => Promise<StoredFile | null>;
  /** What the maker calls the device; null where it has no name. */
  readonly madeOn: string | null;
}

/** Makes a copy of what is shown, a file at a time, and notes what went out. */
export async function makeCopy(asked: CopyAsked, { core, readFile, madeOn }: MakingCopy): Promise<CopyMade> {
  await core.queue.flush();
  letWaitingOut(core);
  const madeAt = core.now();
  const pause = breathing();
  const { here, formerNames, lost } = await withFileHashes(await hereOf(core), readFile, pause);
  const outgoing = await contentOf(asked, here, { kinds: core.kinds, madeAt, madeOn, pause });
  if (outgoing === null) throw new NothingToCopy(asked);
  const going = fileIdsIn([...outgoing.content.drafts, ...outgoing.content.unreadable]);
  const leftOut: LackingFile[] = lost.filter(({ name }) => going.has(name));
  const pieces = writeCopy(outgoing.content, {
    readFile: async (sha256) => {
      // It may have been renamed meanwhile.
      const kept = (await readFile(sha256)) ?? (await readFile(formerNames.get(sha256) ?? sha256));
      return kept === null ? null : bytesOfFile(kept);
    },
    leftOut: (file) => leftOut.push(file),
    pause,
  });
  const file = await blobOf(pieces, 'application/zip');
  const lastCopy = { at: madeAt, upTo: madeAt };
  const noted = await core.connection.attempt('write', async (tx) => {
    await tx.put('exchanged', outgoing.exchanged);
    if (asked === 'everything') await noteLastCopy(tx, lastCopy);
  });
  if (noted.ok && asked === 'everything') core.hold({ lastCopy });
  const { content } = outgoing;
  const missing = new Set(leftOut.map(({ sha256 }) => sha256));
  const files = content.files.filter(({ sha256 }) => !missing.has(sha256));
  const holds = holdingsOf({ ...content, files });
  return { file, holds, leftOut, notNoted: noted.ok ? core.connection.onlyInMemory() : noted.problem };
}

/** Entries that wait go out under the ids they will be written under, so that the copy and the device mean the same. */
function letWaitingOut({ tabState, hold }: StoreCore): void {
  const { pending, wentOut } = tabState();
  const waiting = pending.flatMap((edit) => edit.entries ?? []);
  if (waiting.length > 0) hold({ wentOut: lastingEntries(waiting, wentOut) });
}

class NothingToCopy extends Error {
  override readonly name = 'NothingToCopy';
  constructor(asked: CopyAsked) {
    super(asked === 'everything' ? 'nothing is here' : `no ${asked.kind} is here under ${asked.id}`);
  }
}
