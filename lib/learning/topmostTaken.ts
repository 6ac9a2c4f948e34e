import type { RateTaken } from '@/shared/schemas/making/learnedEvents';

type Taking = Pick<RateTaken, 'subject' | 'places'>;

/**
 * What can be taken back to the last bit: of several that were taken over at one place the newest alone, for the others
 * lie under it. Taken back, it uncovers the one before.
 *
 * @param taken in force, in order
 */
export function topmostTaken<Of extends { readonly body: Taking }>(taken: readonly Of[]): readonly Of[] {
  const newest = new Map(taken.flatMap((one) => keysOf(one.body).map((key) => [key, one])));
  return taken.filter((one) => keysOf(one.body).every((key) => newest.get(key) === one));
}

// Helpers

/** A size goes by its name, all else by the ids on its path. */
const keysOf = ({ subject, places }: Taking): readonly string[] =>
  places.map(({ kind, id, path }) =>
    JSON.stringify([
      kind,
      id,
      ...(subject.of === 'blankPrice' && path[0] === 'sizes' ? [subject.size] : path),
    ]),
  );
