import type { Parting } from '@/lib/stored/leaving';
import { isPlainObject } from '@/lib/stored/sameValue';
import type { Approval } from '@/shared/schemas/entries';

/** The version that the customer had approved, which version 3 of an artwork held itself. */
export const approvalLeaving: Parting = (body, { id, at }) => {
  const version = isPlainObject(body) ? body.approvedVersion : null;
  if (typeof version !== 'number') return { entries: [], papers: [] };
  const approval: Approval = { artworkId: id, version };
  return { entries: [{ kind: 'approval', version: 1, at, body: approval }], papers: [] };
};
