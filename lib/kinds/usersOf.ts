import { claimedName } from '@/lib/stored/claimedName';
import { entryOf, type LinkedKinds } from '@/lib/stored/registry';
import type { Stored } from '@/shared/schemas/stored';

/** @returns the documents that name a thing by its id, which its removal would leave without it. */
export const usersOf = <Item extends Stored>(
  registry: LinkedKinds,
  documents: readonly Item[],
  thing: { readonly to: string; readonly id: string },
): readonly Item[] =>
  documents.filter(({ kind, body }) => {
    const links = entryOf(registry, kind)?.linksOf(body) ?? [];
    return links.some(({ to, id }) => to === thing.to && id === thing.id);
  });

/** @returns what they are called. */
export const userNames = (...asked: Parameters<typeof usersOf>): readonly string[] =>
  usersOf(...asked).flatMap((document) => claimedName(document) ?? []);
