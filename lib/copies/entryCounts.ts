import { isPlainObject } from '@/lib/merging/sameValue';
import { entriesInForce, inForceAmong } from '@/lib/stored/entriesInForce';
import type { Entry, Paper } from '@/shared/schemas/happened';

/** How many entries there are, by kind; a kind with none is not there. */
export type EntryCounts = Readonly<Record<string, number>>;

/** Papers that are fixed and go nowhere: counted by their own kind, for nobody was sent them. */
const keptPapers: readonly string[] = ['stallPlan', 'dayClose', 'runStandard'];

/**
 * Entries counted by kind; one that issued a paper as `issuing`, or by the kind of a paper that goes nowhere.
 *
 * @param papers among which the issued ones are looked for
 */
export function entryCounts(
  entries: readonly Pick<Entry, 'kind' | 'body'>[],
  papers: Iterable<Pick<Paper, 'id' | 'kind'>> = [],
): EntryCounts {
  const kept = new Map(
    [...papers].flatMap(({ id, kind }) => (keptPapers.includes(kind) ? [[id, kind]] : [])),
  );
  const counts: Record<string, number> = {};
  for (const { kind: own, body } of entries) {
    const kind =
      (own === 'issuing' && isPlainObject(body) ? kept.get(String(body.paperId)) : undefined) ?? own;
    counts[kind] = (counts[kind] ?? 0) + 1;
  }
  return counts;
}

/** @returns how many papers of whatever kind are among what is counted. */
export const papersCounted = (counts: EntryCounts): number =>
  ['issuing', ...keptPapers].reduce((sum, kind) => sum + (counts[kind] ?? 0), 0);

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
