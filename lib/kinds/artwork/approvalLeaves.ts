import { isPlainObject } from '@/lib/merging/sameValue';
import type { Parting } from '@/lib/stored/leaving';
import type { Approval } from '@/shared/schemas/entries';
import { z } from '@/shared/schemas/z';

/** What version 3 of an artwork held of the customer's yes. */
const approvedSchema = z.int().min(1).max(10_000).nullable().default(null);

/**
 * Version 3 to 4: the approval is an entry. One that cannot be read stays where it is, so that the artwork is refused
 * and kept as it was found.
 */
export function artworkWithoutApproval(body: unknown): unknown {
  if (!isPlainObject(body) || !approvedSchema.safeParse(body.approvedVersion).success) return body;
  const { approvedVersion: _, ...rest } = body;
  return rest;
}

/** The version that the customer had approved when an artwork of version 3 was last written. */
export const approvalLeaves: Parting = (body, { id, at }) => {
  const version = isPlainObject(body) ? approvedSchema.safeParse(body.approvedVersion) : null;
  if (version?.success !== true || version.data === null) return { entries: [], papers: [] };
  const approval: Approval = { artworkId: id, version: version.data };
  return { entries: [{ kind: 'approval', version: 1, at, body: approval }], papers: [] };
};
