import type { DocumentChange, Snapshot } from './documentChange';
import { readDocument } from './readDocument';
import type { Registry } from './registry';

/**
 * What a step of an earlier build wrote into its documents that is an entry by itself now. Only what bears its own
 * time can be told again from a former body; a stock that stood in a blank cannot.
 *
 * @returns ids of such entries
 */
export const notedByStep = (changes: readonly DocumentChange[], registry: Registry): readonly string[] =>
  changes.flatMap(({ id, kind, before, after }) => {
    const leaving = (snapshot: Snapshot): readonly string[] => {
      const { version, body } = snapshot;
      const reading = readDocument({ id, kind, version, revision: 1, updatedAt: 0, body }, registry);
      return reading.state === 'readable' ? reading.left.entries.map((entry) => entry.id) : [];
    };
    const had = new Set(before === null ? [] : leaving(before));
    return leaving(after).filter((entryId) => !had.has(entryId));
  });
