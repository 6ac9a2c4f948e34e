import { applyWaivers } from '@/lib/findings/applyWaivers';
import { orderFindings } from '@/lib/findings/orderFindings';
import type { CheckedJob, ResolvedJob } from '@/lib/job/checkedJob';
import { type RatesInUse, ratesInUse } from '@/lib/job/ratesInUse';
import { resolveJob } from '@/lib/job/resolveJob';
import type { Finding } from '@/shared/finding';
import { isStanding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import { rules } from './rules';

interface CheckAnswer {
  /** Stops first, then cautions, then notes; waived stops carry their reason. */
  readonly findings: readonly Finding[];
  /** Null while any stop stands. */
  readonly checked: CheckedJob | null;
  /** The job as far as it is known, for screens that show it while a stop stands. */
  readonly resolved: ResolvedJob | null;
  /** The figures it stands on. */
  readonly rates: RatesInUse;
}

/**
 * Judges a job before any sum is made of it. Same documents, same findings.
 *
 * @param input documents that their schemas have read
 * @returns findings of every rule that needs no cost, and the licence to cost it where no stop stands
 */
export function checkJob(input: JobInput): CheckAnswer {
  const { resolved, findings: found, usedRates } = resolveJob(input);
  const judged = resolved === null ? [] : rules.flatMap((rule) => rule({ resolved, usedRates }));
  const findings = orderFindings(applyWaivers([...found, ...judged], input.job.waivers));
  const passes = resolved !== null && !findings.some(isStanding);
  // The one place where the brand is given.
  return {
    findings,
    checked: passes ? (resolved as CheckedJob) : null,
    resolved,
    rates: ratesInUse(usedRates, resolved),
  };
}
