import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import { begunLate, doneLate } from '@/lib/making/check/doneLate';
import type { RunPlan } from '@/lib/making/runPlan';
import { type recipesPressed, withoutPressed } from '@/lib/pressing/withoutPressed';
import type { Finding } from '@/shared/finding';
import type { RunStandard } from '@/shared/schemas/making/runPapers';

interface FoundOnScreen extends Pick<RunOnScreen, 'id' | 'jobs' | 'answer'> {
  /** By the log. */
  readonly pressed: ReturnType<typeof recipesPressed>;
}

/** What the bench is to watch: what is done too late by the clock of the sheet, before what is found of the jobs. */
export const sheetFindings = (
  { id, jobs, answer, pressed }: FoundOnScreen,
  of: { readonly plan: Pick<RunPlan, 'lastDay'> } | { readonly standard: RunStandard },
): readonly Finding[] => [
  ...('standard' in of ? begunLate(of.standard, jobs) : doneLate(id, jobs, of.plan)),
  ...(answer?.found.flatMap((one) =>
    one.kind === 'costed' ? withoutPressed(one.findings, one.input.job, pressed) : [],
  ) ?? []),
];
