'use client';

import Link from 'next/link';
import { useMemo } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { OriginMark } from '@/app/_controls/OriginMark';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { greyWords, lightInkWords } from '@/app/_words/docket/inkOfPictureWords';
import { formatterFor } from '@/app/_words/formatter';
import { type CostSheet, wholeJob } from '@/lib/grid/costSheet';
import { blackShareOf, needsBlackShare } from '@/lib/job/blackShareOf';
import type { LaidOutPrint } from '@/lib/layout/layOutJob';
import { inkRunsOf } from '@/lib/studies/sheets/inkRunsOf';
import styles from './InkNote.module.css';

type InkNoteProps = Readonly<{
  sheet: CostSheet;
  prints: readonly LaidOutPrint[];
}>;

/** How sure the ink of the job is, and the way to note its prints in the workshop's record once they are made. */
export function InkNote({ sheet, prints }: InkNoteProps) {
  const { jobId, workspace, costs } = useJob();
  const { note, entries } = workspace;
  const { job, workshop: countedWith } = costs.madeOf;
  const formatter = formatterFor(useTextContext());
  const today = useToday();
  const printer = countedWith.printers.find(({ id }) => id === job.printerId);
  const laydown = job.rates.laydown ?? countedWith.rates.laydown;
  // Nothing spoiled, as the cost table has it.
  const cost = wholeJob(sheet, 'ink');
  const share = sheet.fullCost > 0 ? cost / sheet.fullCost : 0;
  const days = useMemo(() => {
    const own = entries.inkPrints.filter(({ body }) => body.jobId === jobId);
    return [...new Set(own.map(({ body }) => body.day))].sort();
  }, [entries.inkPrints, jobId]);
  const noteThem = () =>
    note(
      `Prints of ${job.name}, noted`,
      inkRunsOf(jobId, job, sheet, prints, today).map((body) => ({ kind: 'inkPrints', body })),
    );
  return (
    <div className={styles.ink}>
      <p className={styles.words}>
        Ink laid down where one channel covers fully is{' '}
        <OriginMark origin={laydown?.origin ?? 'typical'} count={laydown?.count} />. Ink is{' '}
        {formatter.money(cost)} of this job, {formatter.share(share)} of its full cost: were it a fifth more,
        the job would cost {formatter.money(cost / 5)} more.{' '}
        <Link href="/workshop#ink-record">Your refills measure it.</Link>
      </p>
      {needsBlackShare(costs.madeOf) && (
        <p className={styles.words}>
          {greyWords(printer?.name ?? 'The printer', blackShareOf(costs.madeOf), formatter)}{' '}
          <OriginMark origin={printer?.blackShare?.origin ?? 'typical'} count={printer?.blackShare?.count} />
          {printer?.lightInks === true && ` ${lightInkWords(printer.name)}`}
        </p>
      )}
      {!costs.stale && (
        <Button kind={days.length === 0 ? 'plain' : 'quiet'} onPress={noteThem}>
          {days.length === 0 ? 'Note these prints in the ink record' : 'Note them once more'}
        </Button>
      )}
      <p className={styles.noted} role="status">
        {days.length > 0 &&
          `Noted in the ink record on ${days.map(formatter.day).join(', ')}. Note them once more only if they are printed again.`}
      </p>
    </div>
  );
}
