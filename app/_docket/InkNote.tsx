'use client';

import Link from 'next/link';
import { useState } from 'react';
import { type CostSheet, wholeJob } from '@/lib/grid/costSheet';
import { inkRunsOf } from '@/lib/jobs/inkRunsOf';
import type { LaidOutPrint } from '@/lib/sheets/layOutJob';
import type { JobInput } from '@/shared/schemas/request';
import { newId } from '../_documents/newId';
import { useMaker } from '../_documents/useMaker';
import { useToday } from '../_documents/useToday';
import { useTextContext } from '../_fields/useTextContext';
import { OriginMark } from '../_figures/OriginMark';
import { Button } from '../_shell/Button';
import { speakerOf } from '../_text/speaker';
import styles from './InkNote.module.css';

type InkNoteProps = Readonly<{
  input: JobInput;
  sheet: CostSheet;
  prints: readonly LaidOutPrint[];
  stale: boolean;
}>;

/** How sure the ink of the job is, and the way to note its prints in the workshop's record once they are made. */
export function InkNote({ input, sheet, prints, stale }: InkNoteProps) {
  const { changeWorkshop, workshop } = useMaker();
  const speak = speakerOf(useTextContext());
  const today = useToday();
  const [noted, setNoted] = useState<{ readonly ids: readonly string[]; readonly day: string } | null>(null);
  const laydown = input.job.rates.laydown ?? input.workshop.rates.laydown;
  // Nothing spoiled, as the cost table has it.
  const cost = wholeJob(sheet, 'ink');
  const share = sheet.fullCost > 0 ? cost / sheet.fullCost : 0;
  const isThere =
    noted !== null && workshop?.inkRecord.runs.some(({ id }) => noted.ids.includes(id)) === true;
  const note = () => {
    const runs = inkRunsOf(input.job, sheet, prints, today, newId);
    changeWorkshop(`Prints of ${input.job.name}, noted`, (now) => ({
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
        {speak.money(cost)} of this job, {speak.share(share)} of its full cost: were it a fifth more, the job
        would cost {speak.money(cost / 5)} more.{' '}
        <Link href="/workshop#ink-record">Your refills measure it.</Link>
      </p>
      {!stale && <Button onPress={note}>Note these prints in the ink record</Button>}
      <p className={styles.noted} role="status">
        {isThere && noted !== null && `Noted for ${speak.day(noted.day)}.`}
      </p>
    </div>
  );
}
