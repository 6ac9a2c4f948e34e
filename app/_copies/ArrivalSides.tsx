'use client';

import { classes } from '@/app/_controls/classes';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { contentsWords } from '@/app/_words/store/contentsWords';
import { deviceNameWords } from '@/app/_words/store/deviceWords';
import type { ArrivalPlan } from '@/lib/copies/arrival';
import styles from './ArrivalPreview.module.css';
import { arrivalFacts } from './arrivalFacts';
import { momentWords } from './momentWords';

/** What is here and what is in the copy, side by side; of a carried draft only where it comes from. */
export function ArrivalSides({ plan }: Readonly<{ plan: ArrivalPlan }>) {
  const context = useTextContext();
  const formatter = formatterFor(context);
  const { copy, counts } = plan;
  const { hereKinds, hereChangedAt, isSameDevice } = arrivalFacts(plan);
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
  const rest = (kinds: Readonly<Record<string, number>>) => {
    const { job = 0, priceList = 0, blank = 0, artwork = 0 } = kinds;
    const others = { lists: priceList, blanks: blank, pictures: artwork };
    return job + priceList + blank + artwork === job
      ? ''
      : `${contentsWords({ jobs: 0, ...others, papers: 0, bytes: null }, formatter)}; `;
  };
  return (
    <div className={styles.sides}>
      <p className={styles.side}>
        <span className={styles.sideName}>Here, today</span>
        <strong>{formatter.count(hereKinds.job ?? 0, 'job')}</strong>
        <span>
          {rest(hereKinds)}
          {hereChangedAt !== null && `changed ${momentWords(hereChangedAt, context)}`}
        </span>
      </p>
      <p className={classes(styles.side, styles.copy)}>
        <span className={styles.sideName}>In the copy</span>
        <strong>{formatter.count(counts.kinds.job ?? 0, 'job')}</strong>
        <span>
          {rest(counts.kinds)}
          {made}, {madeOn}
        </span>
      </p>
    </div>
  );
}
