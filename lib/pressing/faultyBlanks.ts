import { inOrder } from '@/lib/stored/entriesInForce';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import type { BlankFaultEntry, PressedEntry } from './pressedEntry';

/** How many blanks of one size of a line were found faulty before they were pressed. */
export type FaultyOfSize = (
  line: { readonly jobId: string; readonly lineId: string },
  size: string,
) => number;

/**
 * Whose spares the faulty blanks were. Several lines may be made of the same blank: each takes as many as it has spares
 * left, in the order of pressing, and the last takes the rest.
 *
 * @param pressed in the order in which they were lifted
 */
export function faultyBlanks(
  { works, sizes }: Pick<RunStandard, 'works' | 'sizes'>,
  blankFaults: readonly BlankFaultEntry[],
  pressed: readonly PressedEntry[],
): { readonly faulty: FaultyOfSize; readonly outside: readonly BlankFaultEntry[] } {
  const lines = works.flatMap(({ jobId, lines: own }) =>
    own.flatMap(({ lineId, blankId, sizes: ofLine }) =>
      ofLine.map(({ size, wanted, take }) => ({
        ...{ jobId, lineId, blankId, size, key: keyOf(jobId, lineId, size) },
        spares: Math.max(0, take - wanted),
      })),
    ),
  );
  const order = new Map(sizes.map(({ jobId, lineId, size }, at) => [keyOf(jobId, lineId, size), at]));
  const inTurn = lines.toSorted(
    (one, other) => (order.get(one.key) ?? sizes.length) - (order.get(other.key) ?? sizes.length),
  );
  const scrap = new Map<string, number>();
  for (const { body } of pressed) {
    const key = keyOf(body.jobId, body.lineId, body.size);
    if (body.result === 'scrap') scrap.set(key, (scrap.get(key) ?? 0) + 1);
  }
  const taken = new Map<string, number>();
  const outside: BlankFaultEntry[] = [];
  for (const entry of inOrder([...new Map(blankFaults.map((one) => [one.id, one])).values()])) {
    const { blankId, size, pieces } = entry.body;
    const own = inTurn.filter((line) => line.blankId === blankId && line.size === size);
    const last = own.at(-1);
    if (last === undefined) {
      outside.push(entry);
      continue;
    }
    let left = pieces;
    for (const line of own) {
      const free = Math.max(0, line.spares - (scrap.get(line.key) ?? 0) - (taken.get(line.key) ?? 0));
      const takes = line === last ? left : Math.min(left, free);
      taken.set(line.key, (taken.get(line.key) ?? 0) + takes);
      left -= takes;
    }
  }
  return { faulty: ({ jobId, lineId }, size) => taken.get(keyOf(jobId, lineId, size)) ?? 0, outside };
}

// Helpers

const keyOf = (jobId: string, lineId: string, size: string) => `${jobId} ${lineId} ${size}`;
