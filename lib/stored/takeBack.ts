import type { Entry } from '@/shared/schemas/happened';

/** The kind of entry that says of an earlier one that it does not count. */
export const TAKE_BACK = 'takeBack';

/** @returns the id of the entry that one takes back; null for every other kind. */
export function takenBy({ kind, body }: Pick<Entry, 'kind' | 'body'>): string | null {
  if (kind !== TAKE_BACK || typeof body !== 'object' || body === null || !('entryId' in body)) return null;
  return String(body.entryId);
}
