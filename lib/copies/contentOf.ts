import { asKept } from '@/lib/stored/asKept';
import { claimedName } from '@/lib/stored/claimedName';
import { snapshotOf } from '@/lib/stored/documentChange';
import { entryOf, type StoreKinds } from '@/lib/stored/registry';
import type { Here } from './arrival';
import { carriedWith } from './carriedWith';
import type { CopyScope } from './copy';
import type { CopyContent } from './copyText';
import type { Exchanged } from './exchanged';
import { withExchange } from './lineage';
import { namedFiles } from './namedFiles';

/** All there is, or one draft. */
export type CopyAsked = 'everything' | { readonly kind: string; readonly id: string };

interface Outgoing {
  readonly content: CopyContent;
  /** Rows to note that the drafts have gone out as they are. */
  readonly exchanged: readonly Exchanged[];
}

interface Making {
  readonly kinds: StoreKinds;
  readonly madeAt: number;
  /** What the maker calls the device. */
  readonly madeOn?: string | null;
  /** Taken after each draft, so that whoever shares the thread gets a turn. */
  readonly pause: () => Promise<void>;
}

/** @returns what goes into a copy; null where the draft that is asked for is not there. */
export async function contentOf(
  asked: CopyAsked,
  here: Omit<Here, 'files'>,
  { kinds, madeAt, madeOn = null, pause }: Making,
): Promise<Outgoing | null> {
  const { papers, entries, device } = here;
  const all = { drafts: [...here.drafts.values()], papers, entries };
  const taken = asked === 'everything' ? all : carriedWith(asked, here, kinds);
  const what = asked === 'everything' ? asked : scopeOf(asked, here, kinds);
  if (what === null) return null;
  const unreadable = asked === 'everything' ? here.unreadable.map(({ raw }) => raw) : [];
  const rows: Exchanged[] = [];
  for (const draft of taken.drafts) {
    const row = here.exchanged.get(draft.id) ?? null;
    rows.push(withExchange(draft.id, row, { body: snapshotOf(draft) }));
    await pause();
  }
  return {
    content: {
      ...{ what, madeAt, device, madeOn, unreadable },
      ...taken,
      papers: taken.papers.map((paper) => asKept(paper)),
      entries: taken.entries.map((entry) => asKept(entry)),
      hashes: new Map(rows.map(({ id, hashes }) => [id, hashes])),
      files: namedFiles([...taken.drafts, ...taken.papers, ...taken.entries, ...unreadable]),
    },
    exchanged: rows,
  };
}

function scopeOf(
  { kind, id }: { readonly kind: string; readonly id: string },
  { drafts }: Pick<Here, 'drafts'>,
  { registry }: StoreKinds,
): CopyScope | null {
  const draft = drafts.get(id);
  if (draft === undefined || draft.kind !== kind || draft.deletedAt !== undefined) return null;
  return { kind, id, name: claimedName(draft) ?? entryOf(registry, kind)?.word ?? kind };
}
