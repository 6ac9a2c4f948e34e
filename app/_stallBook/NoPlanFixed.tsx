import Link from 'next/link';
import { PageHead } from '@/app/_controls/PageHead';
import { NotHere } from '@/app/_keeping/NotHere';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';

type NoPlanFixedProps = Readonly<{
  workspace: ReadyWorkspace;
  stallDayId: string;
  /** What the screen goes by, and where it comes from. */
  words: Readonly<{ title: string; line: string; link: string }>;
}>;

/** In the place of a screen that goes by the fixed plan of a stall day: there is none, or the day is not here. */
export function NoPlanFixed({ workspace, stallDayId, words }: NoPlanFixedProps) {
  const stallDay = workspace.stallDays[stallDayId];
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
      <PageHead title={words.title} line={`${stallDay.name}. ${words.line}`} />
      <p>
        <Link href={`/stall/${encodeURIComponent(stallDayId)}`}>{words.link}</Link>
      </p>
    </>
  );
}
