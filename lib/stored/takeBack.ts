import { isPlainObject } from '@/lib/merging/sameValue';
import type { Entry } from '@/shared/schemas/happened';

/** The kind of entry that says of an earlier one that it does not count. */
export const TAKE_BACK = 'takeBack';

/** @returns the id of the entry that one takes back; null for every other kind. */
export const takenBy = ({ kind, body }: Pick<Entry, 'kind' | 'body'>): string | null =>
  kind === TAKE_BACK && isPlainObject(body) ? String(body.entryId) : null;

/** @returns whether an entry takes back another on this device alone: nobody judged that one, it only went with others. */
export const takesBackHereOnly = ({ kind, body }: Pick<Entry, 'kind' | 'body'>): boolean =>
  kind === TAKE_BACK && isPlainObject(body) && (body.cause === 'arrivalUndone' || body.cause === 'replaced');
