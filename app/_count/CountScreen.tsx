'use client';

import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { NoPlanFixed } from '@/app/_stallBook/NoPlanFixed';
import { noPlanWords } from '@/app/_words/stall/count/countWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { plansCountedBy, plansOf } from '@/lib/stall/car/plansOf';
import { closeInForce } from '@/lib/stall/closeInForce';
import { CountRoom } from './CountRoom';

/** The sales count of the stall day that the address names. */
export const CountOfAddress = () => <CountScreen stallDayId={useIdInAddress('/stall/')} />;

/** Counting sales on a phone: by the plan that was fixed last. */
export function CountScreen({ stallDayId }: Readonly<{ stallDayId: string }>) {
  return (
    <WithWorkspace>
      {(workspace) => <CountOfDay key={stallDayId} {...{ workspace, stallDayId }} />}
    </WithWorkspace>
  );
}

// Helpers

function CountOfDay({ workspace, stallDayId }: Readonly<{ workspace: ReadyWorkspace; stallDayId: string }>) {
  const { papers, entries } = workspace;
  const countedBy = plansCountedBy(entries.stallTap, papers.dayClose);
  const { counts, earlier, withdrawn, isOfSeveral } = plansOf(papers.stallPlan, stallDayId, countedBy);
  if (counts !== null) {
    const locale = usableLocale(workspace.workshop.locale);
    const plans = { counts, former: [...earlier, ...withdrawn] };
    const close = closeInForce(papers.dayClose, stallDayId)?.body ?? null;
    return <CountRoom {...{ workspace, plans, isOfSeveral, close, locale }} />;
  }
  return <NoPlanFixed {...{ workspace, stallDayId }} words={noPlanWords} />;
}
