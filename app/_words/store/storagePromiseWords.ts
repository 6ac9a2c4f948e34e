import type { Formatter } from '@/app/_words/formatter';
import { bytesWords } from './bytesWords';

/** What the browser answered when it was asked to keep everything. */
export type StoragePromise = 'promised' | 'mayClear' | 'unknown';

/** What the browser says it takes and would still give; null where it does not say. */
export interface StorageRoom {
  readonly usedBytes: number;
  readonly quotaBytes: number;
}

/** @returns whether the browser promises to keep what is here, and what to do where it does not. */
export const storagePromiseWords: Readonly<Record<StoragePromise, string>> = {
  promised: 'This browser promises to keep it, even when space runs short. Only you can clear it.',
  mayClear: 'This browser may clear it when space runs short: make copies.',
  unknown: 'This browser cannot say whether it keeps it when space runs short: make copies.',
};

/** @returns the room that is used and left; the browser rounds both, and so does this. */
export function storageRoomWords(room: StorageRoom | null, formatter: Pick<Formatter, 'number'>): string {
  if (room === null) return 'It does not say how much room is left.';
  const left = Math.max(0, room.quotaBytes - room.usedBytes);
  return `It takes about ${bytesWords(room.usedBytes, formatter)} here; about ${bytesWords(left, formatter)} are left.`;
}
