import type { ArtworkVersion, Happening, OutOf } from './orderFacts';

/** The version of each artwork that the customer said yes to last. */
export type ApprovedVersions = ReadonlyMap<string, number>;

/**
 * @param proofs by their id; an answer that names a proof sheet and no versions means what the sheet showed
 * @returns what is approved after one more thing happened
 */
export function approvalsAfter(
  approved: ApprovedVersions,
  one: Happening,
  proofs: ReadonlyMap<string, OutOf<'proof'>>,
): ApprovedVersions {
  if (one.kind === 'approval') {
    const { artworkId, version } = one.body;
    const next = new Map(approved);
    if (version === null) next.delete(artworkId);
    else next.set(artworkId, version);
    return next;
  }
  if (one.kind !== 'orderEvent' || one.body.step.what !== 'approved') return approved;
  const { paperId, versions } = one.body.step;
  const shown = versions.length > 0 ? versions : versionsOn(proofs.get(paperId ?? ''));
  return new Map([...approved, ...shown.map(({ artworkId, version }) => [artworkId, version] as const)]);
}

/** A yes to another version than the one in question is no yes to it; where there is no picture there is nothing to approve. */
export const approvalHolds = (approved: ApprovedVersions, wanted: readonly ArtworkVersion[]): boolean =>
  wanted.length > 0 && wanted.every(({ artworkId, version }) => approved.get(artworkId) === version);

/** @returns the versions that a proof sheet shows; none of one that is not here or was withdrawn. */
const versionsOn = (proof: OutOf<'proof'> | undefined): readonly ArtworkVersion[] =>
  proof === undefined || proof.withdrawn
    ? []
    : proof.body.goods.flatMap(({ prints }) =>
        prints.map(({ artwork: { artworkId, version } }) => ({ artworkId, version })),
      );
