import type { Entry } from '@/shared/schemas/happened';
import { takenBackAmong } from './entriesInForce';
import { takenBy, takesBackHereOnly } from './takeBack';

/**
 * The entries that go from one device to another. What an undone arrival or a replacing took out of force is out on
 * that device alone: nobody judged it. So neither those takings back travel, nor what takes them back in turn, nor what
 * they keep out of force; of the others the same ones count wherever they come.
 */
export function travellingEntries(entries: readonly Entry[]): readonly Entry[] {
  const takers = new Map(
    entries.flatMap((entry) => (takenBy(entry) === null ? [] : [[entry.id, entry] as const])),
  );
  const isOfOneDevice = (entry: Entry): boolean => {
    // By hand several may take each other back in a ring.
    const seen = new Set<Entry>();
    for (let taker: Entry | undefined = entry; taker !== undefined && !seen.has(taker); ) {
      if (takesBackHereOnly(taker)) return true;
      seen.add(taker);
      taker = takers.get(takenBy(taker) ?? '');
    }
    return false;
  };
  const staying = new Set([...takers.values()].filter(isOfOneDevice).map(({ id }) => id));
  if (staying.size === 0) return entries;
  const out = takenBackAmong(entries);
  const keptOut = new Set(
    [...takers.values()].flatMap((taker) =>
      staying.has(taker.id) && !out.has(taker.id) ? [takenBy(taker)] : [],
    ),
  );
  return entries.filter(({ id }) => !staying.has(id) && !keptOut.has(id));
}
