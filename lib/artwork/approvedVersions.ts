import type { Approval } from '@/shared/schemas/entries';
import type { JobInput } from '@/shared/schemas/request';

/**
 * What the customer has said yes to: the last word on each artwork.
 *
 * @param approvals in force and in their order
 * @returns the approved version by artwork; one without approval is left out
 */
export function approvedVersions(
  approvals: readonly { readonly body: Approval }[],
): JobInput['approvedVersions'] {
  const versions = new Map<string, number>();
  for (const { body } of approvals) {
    if (body.version === null) versions.delete(body.artworkId);
    else versions.set(body.artworkId, body.version);
  }
  return Object.fromEntries(versions);
}
