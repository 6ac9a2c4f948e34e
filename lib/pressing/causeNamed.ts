import type { Pressing } from '@/shared/schemas/making/runEvents';
import type { PressFault } from '@/shared/tables/faults';
import type { PressedEntry } from './pressedEntry';

/** What is noted where the cause of a piece is named later. */
type CauseNamed = readonly [
  { readonly kind: 'takeBack'; readonly body: { readonly entryId: string } },
  { readonly kind: 'pressing'; readonly body: Pressing },
];

/**
 * Names the cause of a piece later: its note is taken back and written again, and it keeps the place at which it was
 * lifted.
 */
export function causeNamed(entry: PressedEntry, fault: PressFault): CauseNamed {
  const body: Pressing = { pressedAt: entry.at, ...entry.body, fault };
  return [
    { kind: 'takeBack', body: { entryId: entry.id } },
    { kind: 'pressing', body },
  ];
}
