import type { Pressing } from '@/shared/schemas/making/runEvents';
import type { PressFault } from '@/shared/tables/faults';
import type { PressedEntry } from './pressedEntry';

/**
 * What names the cause of a piece later: its note is taken back and written again, and it keeps the place at which it
 * was lifted.
 */
export const causeNamed = (entry: PressedEntry, fault: PressFault) => {
  const body: Pressing = { pressedAt: entry.at, ...entry.body, fault };
  return [
    { kind: 'takeBack', body: { entryId: entry.id } },
    { kind: 'pressing', body },
  ] as const;
};
