import type { Facts, Finding, Fix, Quantity, Severity, Where } from '@/shared/finding';
import type { FindingId } from '@/shared/tables/findingIds';
import { neverWaived } from '@/shared/tables/thresholds';

export interface FindingDraft {
  readonly id: FindingId;
  readonly severity: Severity;
  readonly where: Where;
  readonly found?: Quantity | string | null;
  readonly limit?: Quantity | string | null;
  readonly variant?: string;
  readonly facts?: Facts;
  readonly fix?: Fix | null;
  /** False keeps this one stop from being waived where the rule as a whole may be. */
  readonly waivable?: boolean;
}

/**
 * Completes a finding: only a stop can be waived, and some rules never.
 *
 * @returns a finding with nothing left out
 */
export function makeFinding(draft: FindingDraft): Finding {
  return {
    id: draft.id,
    severity: draft.severity,
    where: draft.where,
    found: draft.found ?? null,
    limit: draft.limit ?? null,
    ...(draft.variant === undefined ? {} : { variant: draft.variant }),
    facts: draft.facts ?? {},
    fix: draft.fix ?? null,
    waivable: draft.severity === 'stop' && (draft.waivable ?? true) && !neverWaived.includes(draft.id),
  };
}
