'use client';

import Link from 'next/link';
import { PageHead } from '@/app/_controls/PageHead';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { NotHere } from '@/app/_keeping/NotHere';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
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
  const stallDay = workspace.stallDays[stallDayId];
  if (counts !== null) {
    const locale = usableLocale(workspace.workshop.locale);
    const plans = { counts, former: [...earlier, ...withdrawn] };
    const close = closeInForce(papers.dayClose, stallDayId)?.body ?? null;
    return <CountRoom {...{ workspace, plans, isOfSeveral, close, locale }} />;
  }
  if (stallDay === undefined) {
    return (
      <NotHere
        {...{ workspace, id: stallDayId }}
        what="stall day"
        back={{ href: '/', words: 'To the start' }}
      />
    );
  }
  return (
    <>
      <PageHead title={noPlanWords.title} line={`${stallDay.name}. ${noPlanWords.line}`} />
      <p>
        <Link href={`/stall/${encodeURIComponent(stallDayId)}`}>{noPlanWords.link}</Link>
      </p>
    </>
  );
}
