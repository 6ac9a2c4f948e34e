import type { Here } from '@/lib/copies/arrival';
import type { LackingFile } from '@/lib/copies/copy';
import { fileIdsIn } from '@/lib/stored/fileIds';
import { sha256InSlices } from '@/lib/stored/sha256InSlices';
import { bytesOfFile, type StoredFile } from '@/lib/stored/storedFile';
import { withFileIds } from '@/lib/stored/withFileIds';
import { sha256Schema } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';

/** What is here, with every file named by what is in it, and how those not yet kept so are read. */
interface WithFileHashes {
  readonly here: Here;
  /** Former names, by their hash. */
  readonly formerNames: ReadonlyMap<string, string>;
  /** Files nothing can read any more; no hash could name them in a copy. */
  readonly lost: readonly LackingFile[];
}

/**
 * Pictures of earlier builds are renamed in the background, and on a full disk not at all; a copy made before that
 * names them by their hashes all the same.
 */
export async function withFileHashes(
  here: Here,
  readFile: (id: string) => Promise<StoredFile | null>,
  pause: () => Promise<void>,
): Promise<WithFileHashes> {
  const named = fileIdsIn([...here.drafts.values(), ...here.unreadable.map(({ raw }) => raw)]);
  const hashes = new Map<string, string>();
  const lost: LackingFile[] = [];
  for (const id of named) {
    if (sha256Schema.safeParse(id).success) continue;
    const file = await readFile(id);
    const content = file === null ? null : await bytesOfFile(file);
    if (content === null) lost.push({ sha256: '', name: id, why: 'leftOut' });
    else hashes.set(id, await sha256InSlices(content, pause));
  }
  if (hashes.size === 0) return { here, formerNames: new Map(), lost };
  const renamed = ({ body, ...draft }: Stored): Stored => ({ ...draft, body: withFileIds(body, hashes) });
  return {
    here: {
      ...here,
      drafts: new Map([...here.drafts].map(([id, draft]) => [id, renamed(draft)])),
      unreadable: here.unreadable.map((record) => ({ ...record, raw: withFileIds(record.raw, hashes) })),
    },
    formerNames: new Map([...hashes].map(([id, sha256]) => [sha256, id])),
    lost,
  };
}
