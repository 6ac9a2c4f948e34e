import { isPlainObject } from '@/lib/merging/sameValue';
import { entriesInForce, inForceAmong } from '@/lib/stored/entriesInForce';
import type { Entry } from '@/shared/schemas/happened';

/** How many entries there are, by kind; a kind with none is not there. */
export type EntryCounts = Readonly<Record<string, number>>;

/** @returns entries counted by kind. */
export function entryCounts(entries: readonly Pick<Entry, 'kind'>[]): EntryCounts {
  const counts: Record<string, number> = {};
  for (const { kind } of entries) counts[kind] = (counts[kind] ?? 0) + 1;
  return counts;
}

/** @returns how many entries of whatever kind. */
export const allCounted = (counts: EntryCounts): number =>
  Object.values(counts).reduce((sum, count) => sum + count, 0);

/**
 * The example brings its own approvals on every device, each an entry by itself: where the last word on a picture is
 * the same already, saying it once more is no news.
 *
 * @param known what is held against them
 */
export function newsAmong(entries: readonly Entry[], known: readonly Entry[]): readonly Entry[] {
  const lastWords = new Map<string, unknown>();
  for (const { kind, body } of entriesInForce(known)) {
    if (kind === 'approval' && isPlainObject(body)) lastWords.set(String(body.artworkId), body.version);
  }
  return entries.filter(
    ({ kind, body }) =>
      kind !== 'approval' ||
      !isPlainObject(body) ||
      !lastWords.has(String(body.artworkId)) ||
      lastWords.get(String(body.artworkId)) !== body.version,
  );
}

/** @returns what counts here, is not among the entries that come, and is not said by them again. */
export function uncountedBy(here: readonly Entry[], coming: readonly Entry[]): readonly Entry[] {
  const ids = new Set(coming.map(({ id }) => id));
  return newsAmong(
    inForceAmong(here).filter(({ id }) => !ids.has(id)),
    coming,
  );
}
