import { useMemo } from 'react';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { cameToWords } from '@/app/_words/making/runs/cameToWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { RunFacts } from '@/lib/making/runFacts';
import { resultOfRun } from '@/lib/variances/resultOfRun';
import { sharedHours } from '@/lib/variances/sharedHours';

type RunCameToProps = Readonly<{
  facts: RunFacts;
  workspace: Pick<ReadyWorkspace, 'entries' | 'papers' | 'workshop'>;
}>;

/** What a closed run came to, in a phrase. */
export function RunCameTo({ facts, workspace: { entries, papers, workshop } }: RunCameToProps) {
  const { goodsIn, hours } = entries;
  const { runStandard } = papers;
  const result = useMemo(
    () => resultOfRun(facts, goodsIn, sharedHours(hours, runStandard)),
    [facts, goodsIn, hours, runStandard],
  );
  const { standard } = facts;
  if (result === null || standard === null) return null;
  return <p>{cameToWords(standard.body, result, usableLocale(workshop.locale))}</p>;
}
