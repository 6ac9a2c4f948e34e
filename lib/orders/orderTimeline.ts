import { isPlainObject } from '@/lib/merging/sameValue';
import { inOrder, takenBackAmong } from '@/lib/stored/entriesInForce';
import { takenBy } from '@/lib/stored/takeBack';
import type { Entry, Paper } from '@/shared/schemas/happened';

/** One thing that happened to an order, as it was noted. */
interface TimelineRow {
  readonly id: string;
  readonly of:
    | { readonly table: 'entry'; readonly entry: Entry }
    | { readonly table: 'paper'; readonly paper: Paper };
  /** What the clock of the device said when it was noted. */
  readonly at: number;
  /** The day it was noted for; null where it bears none. */
  readonly day: string | null;
  /** Letter of the device; null where none of its numbers is known. */
  readonly letter: string | null;
  /** It does not count any more: another entry took it back, or the paper was withdrawn. */
  readonly isTakenBack: boolean;
}

interface TimelineSource {
  readonly orderId: string;
  readonly jobIds: readonly string[];
  readonly artworkIds: readonly string[];
  /** All entries of the device, those that were taken back and those that took back among them. */
  readonly entries: readonly Entry[];
  /** All papers: those of other orders tell how late a clock was. */
  readonly papers: readonly (Paper & { readonly withdrawn: boolean })[];
  readonly letters: ReadonlyMap<string, string>;
}

/** What happened to an order, when, and on which device, the first first; what was taken back stays in it and says so. */
export function orderTimeline(source: TimelineSource): readonly TimelineRow[] {
  const { orderId, entries, papers, letters } = source;
  const out = takenBackAmong(entries);
  const isOwn = (one: Entry | Paper): boolean =>
    'series' in one
      ? one.about.kind === 'order' && one.about.id === orderId
      : takenBy(one) === null && isOfOrder(one, source);
  const all = inOrder<Entry | (Paper & { readonly withdrawn: boolean })>([...entries, ...papers]);
  return all.filter(isOwn).map((one) => ({
    id: one.id,
    of: 'series' in one ? { table: 'paper', paper: one } : { table: 'entry', entry: one },
    at: one.at,
    day: dayIn(one.body),
    letter: letters.get(one.device) ?? null,
    isTakenBack: 'withdrawn' in one ? one.withdrawn : out.has(one.id),
  }));
}

// Helpers

/** Nothing of a body is taken for granted: what a later build wrote belongs to its order as well. */
function isOfOrder({ body }: Entry, { orderId, jobIds, artworkIds }: TimelineSource): boolean {
  if (!isPlainObject(body)) return false;
  const { reference } = body;
  return (
    body.orderId === orderId ||
    isOneOf(body.jobId, jobIds) ||
    isOneOf(body.artworkId, artworkIds) ||
    (isPlainObject(reference) && (reference.id === orderId || isOneOf(reference.id, jobIds)))
  );
}

function dayIn(body: unknown): string | null {
  if (!isPlainObject(body)) return null;
  const day = body.day ?? body.issuedOn;
  return typeof day === 'string' ? day : null;
}

const isOneOf = (id: unknown, ids: readonly string[]): boolean => typeof id === 'string' && ids.includes(id);
