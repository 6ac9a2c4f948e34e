import { checkJob } from '@/lib/check/checkJob';
import type { CostFacts } from '@/lib/check/costFacts';
import { reviewCosts } from '@/lib/check/reviewCosts';
import type { CheckedJob, ResolvedJob } from '@/lib/job/checkedJob';
import { layOutJob } from '@/lib/layout/layOutJob';
import type { JobInput } from '@/shared/schemas/request';

declare const input: JobInput;
declare const resolved: ResolvedJob;
declare const facts: CostFacts;

// @ts-expect-error a resolved job has not been judged
layOutJob(resolved);

// @ts-expect-error nor may its costs be looked at
reviewCosts(resolved, facts);

// @ts-expect-error documents are no checked job
layOutJob(input);

// @ts-expect-error nobody outside the check can write the mark of a checked job
const handMade: CheckedJob = { ...resolved, checked: true };

// @ts-expect-error the answer may hold no checked job, and that must be looked at first
layOutJob(checkJob(input).checked);

const { checked } = checkJob(input);
if (checked !== null) {
  layOutJob(checked);
  reviewCosts(checked, facts);
}

export { handMade };
