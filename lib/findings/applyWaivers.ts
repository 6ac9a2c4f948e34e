import type { Finding } from '@/shared/finding';
import type { Job } from '@/shared/schemas/job';

/**
 * Lets stops pass for which the maker has given a reason. A waiver that names no line or placement covers
 * the rule in the whole job; a stop that is never waived stands whatever is written.
 *
 * @returns the same findings, the waived ones with the reason on them
 */
export const applyWaivers = (findings: readonly Finding[], waivers: Job['waivers']): readonly Finding[] =>
  findings.map((finding) => {
    if (!finding.waivable || finding.severity !== 'stop') return finding;
    const waiver = waivers.find(
      ({ finding: id, lineId, placementId }) =>
        id === finding.id &&
        (lineId === null || lineId === finding.where.lineId) &&
        (placementId === null || placementId === finding.where.placementId),
    );
    return waiver === undefined ? finding : { ...finding, waivedBecause: waiver.reason };
  });
