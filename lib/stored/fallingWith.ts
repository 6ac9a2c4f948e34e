import { isPlainObject } from '@/lib/merging/sameValue';
import { takenBy } from './takeBack';

interface WrittenOnce {
  readonly id: string;
  readonly kind: string;
  readonly body: unknown;
}

/**
 * Of what came, all that stands on records which find something else under their id: what names them means them and not
 * what is here. A paper whose issuing is among them falls too, or it would look withdrawn.
 *
 * @param clashing entries and papers that cannot be taken in
 * @param came those that could
 * @returns those of `came` that must stay out with them
 */
export function fallingWith<Item extends WrittenOnce>(
  clashing: readonly WrittenOnce[],
  came: readonly Item[],
): readonly Item[] {
  const out = new Set(clashing.map(keyOf));
  const lost = new Set(clashing.flatMap(issuedBy));
  const fallen = new Set<Item>();
  for (let more = clashing.length; more > 0; ) {
    const standing = came.filter((item) => !fallen.has(item));
    const issued = new Set(standing.flatMap(issuedBy));
    const next = standing.filter((item) =>
      isPaper(item)
        ? lost.has(item.id) && !issued.has(item.id)
        : [takenBy(item)].some((id) => id !== null && out.has(`entry ${id}`)) ||
          issuedBy(item).some((id) => out.has(`paper ${id}`)),
    );
    for (const item of next) {
      fallen.add(item);
      out.add(keyOf(item));
      for (const id of issuedBy(item)) lost.add(id);
    }
    more = next.length;
  }
  return [...fallen];
}

/** @returns rows as far as need be to tell what stands on what. */
export const writtenOnceAmong = (rows: readonly unknown[]): readonly WrittenOnce[] =>
  rows.flatMap((row) =>
    isPlainObject(row) && typeof row.id === 'string' && typeof row.kind === 'string'
      ? [{ ...row, id: row.id, kind: row.kind, body: row.body }]
      : [],
  );

// Helpers

/** Only papers have a series. */
const isPaper = (item: object): boolean => 'series' in item;

const keyOf = (item: WrittenOnce): string => `${isPaper(item) ? 'paper' : 'entry'} ${item.id}`;

const issuedBy = ({ kind, body }: WrittenOnce): readonly string[] =>
  kind === 'issuing' && isPlainObject(body) ? [String(body.paperId)] : [];
