'use client';

import { useMemo } from 'react';
import { classes } from '@/app/_controls/classes';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { contentsWords } from '@/app/_words/store/contentsWords';
import { deviceNameWords } from '@/app/_words/store/deviceWords';
import type { ArrivalPlan } from '@/lib/copies/arrival';
import type { Holdings } from '@/lib/copies/holdings';
import styles from './ArrivalPreview.module.css';
import { arrivalFacts } from './arrivalFacts';
import { isReadWhole } from './isReadWhole';
import { momentWords } from './momentWords';

/** What is here and what is in the copy, side by side; of a carried draft only where it comes from. */
export function ArrivalSides({ plan }: Readonly<{ plan: ArrivalPlan }>) {
  const context = useTextContext();
  const formatter = formatterFor(context);
  const { copy } = plan;
  const { here, inCopy, hereChangedAt, isSameDevice } = useMemo(() => arrivalFacts(plan), [plan]);
  const madeOn = isSameDevice
    ? 'this device'
    : deviceNameWords({ name: copy.madeOn, letter: copy.device?.letter ?? null });
  const made = copy.madeAt === null ? 'on a day that cannot be read' : momentWords(copy.madeAt, context);
  if (copy.of !== 'everything') {
    return (
      <p className={styles.carried}>
        Made {made}, on {madeOn}.
      </p>
    );
  }
  /** Beside the jobs, which stand above in large figures. */
  const rest = (holdings: Holdings, told: string | null) =>
    [contentsWords({ ...holdings, kinds: { ...holdings.kinds, job: 0 } }, null, formatter), told ?? '']
      .filter((part) => part !== '')
      .join('; ');
  const changed = hereChangedAt === null ? null : `changed ${momentWords(hereChangedAt, context)}`;
  return (
    <div className={styles.sides}>
      <p className={styles.side}>
        <span className={styles.sideName}>Here, today</span>
        <strong>{formatter.count(here.kinds.job ?? 0, 'job')}</strong>
        <span>{rest(here, changed)}</span>
      </p>
      <p className={classes(styles.side, styles.copy)}>
        <span className={styles.sideName}>{isReadWhole(plan) ? 'In the copy' : 'Read from the copy'}</span>
        <strong>{formatter.count(inCopy.kinds.job ?? 0, 'job')}</strong>
        <span>{rest(inCopy, `${made}, ${madeOn}`)}</span>
      </p>
    </div>
  );
}
