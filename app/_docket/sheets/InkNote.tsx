'use client';

import Link from 'next/link';
import { useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { OriginMark } from '@/app/_controls/OriginMark';
import { useJob } from '@/app/_docket/common/useJob';
import { newId } from '@/app/_documents/newId';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { type CostSheet, wholeJob } from '@/lib/grid/costSheet';
import type { LaidOutPrint } from '@/lib/layout/layOutJob';
import { inkRunsOf } from '@/lib/studies/sheets/inkRunsOf';
import styles from './InkNote.module.css';

type InkNoteProps = Readonly<{
  sheet: CostSheet;
  prints: readonly LaidOutPrint[];
}>;

/** How sure the ink of the job is, and the way to note its prints in the workshop's record once they are made. */
export function InkNote({ sheet, prints }: InkNoteProps) {
  const { workspace, costs } = useJob();
  const { changeWorkshop, workshop } = workspace;
  const { job, workshop: countedWith } = costs.madeOf;
  const formatter = formatterFor(useTextContext());
  const today = useToday();
  const [noted, setNoted] = useState<{ readonly ids: readonly string[]; readonly day: string } | null>(null);
  const laydown = job.rates.laydown ?? countedWith.rates.laydown;
  // Nothing spoiled, as the cost table has it.
  const cost = wholeJob(sheet, 'ink');
  const share = sheet.fullCost > 0 ? cost / sheet.fullCost : 0;
  const isThere =
    noted !== null && workshop?.inkRecord.runs.some(({ id }) => noted.ids.includes(id)) === true;
  const note = () => {
    const runs = inkRunsOf(job, sheet, prints, today, newId);
    changeWorkshop(`Prints of ${job.name}, noted`, (now) => ({
      ...now,
      inkRecord: { ...now.inkRecord, runs: [...now.inkRecord.runs, ...runs] },
    }));
    setNoted({ ids: runs.map(({ id }) => id), day: today });
  };
  return (
    <div className={styles.ink}>
      <p className={styles.words}>
        Ink laid down where one channel covers fully is{' '}
        <OriginMark origin={laydown?.origin ?? 'typical'} count={laydown?.count} />. Ink is{' '}
        {formatter.money(cost)} of this job, {formatter.share(share)} of its full cost: were it a fifth more,
        the job would cost {formatter.money(cost / 5)} more.{' '}
        <Link href="/workshop#ink-record">Your refills measure it.</Link>
      </p>
      {!costs.stale && <Button onPress={note}>Note these prints in the ink record</Button>}
      <p className={styles.noted} role="status">
        {isThere && noted !== null && `Noted for ${formatter.day(noted.day)}.`}
      </p>
    </div>
  );
}
