import { inForceAmong } from '@/lib/stored/entriesInForce';

import type { Entry, Paper } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';
import type { CopyFile } from './copy';
import { type EntryCounts, entryCounts } from './entryCounts';

/** How much there is on a device or in a copy: counted in one way, wherever it is told. */
export interface Holdings {
  /** Live drafts by kind; a kind with none is not there. */
  readonly kinds: Readonly<Record<string, number>>;
  readonly papers: number;
  /** Entries that count, without those that issued the papers. */
  readonly entries: EntryCounts;
  readonly files: number;
}

interface Held {
  readonly drafts: Iterable<Pick<Stored, 'kind' | 'deletedAt'>>;
  readonly papers: readonly Paper[];
  readonly entries: readonly Entry[];
  readonly files: readonly CopyFile[];
}

/** @returns how much of each there is. */
export function holdingsOf({ drafts, papers, entries, files }: Held): Holdings {
  const kinds: Record<string, number> = {};
  for (const { kind, deletedAt } of drafts) {
    if (deletedAt === undefined) kinds[kind] = (kinds[kind] ?? 0) + 1;
  }
  const counting = inForceAmong(entries).filter(({ kind }) => kind !== 'issuing');
  return { kinds, papers: papers.length, entries: entryCounts(counting), files: files.length };
}
