import type { Finding, FindingDraft } from '@/shared/finding';
import { neverWaived } from '@/shared/tables/thresholds';

/**
 * Completes a finding: only a stop can be waived, and some rules never.
 *
 * @returns a finding with nothing left out
 */
export function makeFinding(draft: FindingDraft): Finding {
  const { found = null, limit = null, fix = null, waivable = true, ...told } = draft;
  return {
    // First what an answer is read by, whatever order the rule wrote it in.
    ...{ id: draft.id, severity: draft.severity, where: draft.where, found, limit },
    ...told,
    fix,
    waivable: draft.severity === 'stop' && waivable && !neverWaived.includes(draft.id),
  };
}
