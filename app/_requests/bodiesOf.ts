import type { Copy } from '@/lib/copies/copy';
import type { DocumentKind } from '@/lib/kinds/draftFacts';
import { type EntryBodies, type EntryKind, entryKinds } from '@/lib/kinds/entryKinds';
import type { Entry } from '@/shared/schemas/happened';

/** @returns the bodies of the live drafts of a kind, by id. */
export const bodiesOf = (
  kind: DocumentKind,
  { drafts }: Pick<Copy, 'drafts'>,
): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    drafts
      .filter((draft) => draft.kind === kind && draft.deletedAt === undefined)
      .map(({ id, body }) => [id, body]),
  );

/** @returns the entries of a kind, in the order they have. */
export const entriesOf = <Kind extends EntryKind>(
  kind: Kind,
  entries: readonly Entry[],
): readonly Entry<Kind, EntryBodies[Kind]>[] => entries.filter((entry) => isOf(kind, entry));

/** Their bodies have been read by the schema of the kind already, which the type of entries cannot say. */
const isOf = <Kind extends EntryKind>(kind: Kind, entry: Entry): entry is Entry<Kind, EntryBodies[Kind]> =>
  entry.kind === kind && entryKinds[kind].schema.safeParse(entry.body).success;
