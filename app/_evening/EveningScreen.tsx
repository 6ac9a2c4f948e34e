'use client';

import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { NoPlanFixed } from '@/app/_stallBook/NoPlanFixed';
import { noPlanWords } from '@/app/_words/stall/evening/eveningWords';
import { plansCountedBy, plansOf } from '@/lib/stall/car/plansOf';
import { closeInForce } from '@/lib/stall/closeInForce';
import { EveningRoom } from './EveningRoom';

/** The evening of the stall day that the address names. */
export const EveningOfAddress = () => <EveningScreen stallDayId={useIdInAddress('/stall/')} />;

/** The evening after a stall day: money and goods held against what was noted, and what it taught. */
export function EveningScreen({ stallDayId }: Readonly<{ stallDayId: string }>) {
  return (
    <WithWorkspace>
      {(workspace) => <EveningOfDay key={stallDayId} {...{ workspace, stallDayId }} />}
    </WithWorkspace>
  );
}

// Helpers

function EveningOfDay({
  workspace,
  stallDayId,
}: Readonly<{ workspace: ReadyWorkspace; stallDayId: string }>) {
  const { papers, entries } = workspace;
  const countedBy = plansCountedBy(entries.stallTap, papers.dayClose);
  const { counts, isOfSeveral } = plansOf(papers.stallPlan, stallDayId, countedBy);
  const close = closeInForce(papers.dayClose, stallDayId);
  if (counts !== null) {
    // A close is where the next correction begins.
    return <EveningRoom key={close?.id ?? 'open'} {...{ workspace, fixed: counts, isOfSeveral, close }} />;
  }
  return <NoPlanFixed {...{ workspace, stallDayId }} words={noPlanWords} />;
}
