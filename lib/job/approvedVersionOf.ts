import type { ResolvedJob } from './checkedJob';

/** @returns the version of an artwork that the customer approved; null where they have not said yes. */
export const approvedVersionOf = (
  { approvedVersions }: Pick<ResolvedJob, 'approvedVersions'>,
  artworkId: string,
): number | null =>
  // An id may be anything, `constructor` too.
  Object.hasOwn(approvedVersions, artworkId) ? (approvedVersions[artworkId] ?? null) : null;
