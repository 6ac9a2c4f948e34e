'use client';

import { dayOf } from '@/app/_clock/dayOf';
import { classes } from '@/app/_controls/classes';
import { useTextContext } from '@/app/_fields/useTextContext';
import { type Formatter, formatterFor } from '@/app/_words/formatter';
import { groupNames, groupWords } from '@/app/_words/store/arrivalWords';
import { arrivingIn } from '@/app/_words/store/fateWords';
import type { ArrivalPlan } from '@/lib/copies/arrival';
import { type ArrivalGroup, losing } from '@/lib/copies/arrivalGroups';
import { papersCounted } from '@/lib/copies/entryCounts';
import styles from './ArrivalPreview.module.css';
import { isReadWhole } from './isReadWhole';

type ArrivalGroupRowProps = Readonly<{ group: ArrivalGroup; plan: ArrivalPlan }>;

/** How many drafts fare alike, and which. */
export function ArrivalGroupRow({ group, plan }: ArrivalGroupRowProps) {
  const { copy, counts } = plan;
  const isWhole = isReadWhole(plan);
  const formatter = formatterFor(useTextContext());
  const { fate, drafts, isChange } = group;
  const names = groupNames(group, (at) => formatter.day(dayOf(new Date(at))));
  const alike =
    counts.papers > 0 && counts.newPapers + papersCounted(counts.newEntries) === 0
      ? ` and ${isWhole ? allPapers(counts.papers, formatter) : formatter.count(counts.papers, 'paper')}`
      : '';
  return (
    <li
      className={classes(
        styles.group,
        losing.includes(fate) ? styles.loses : isChange ? styles.changes : undefined,
      )}
    >
      <span className={styles.count}>{formatter.number(drafts.length)}</span>
      <div>
        <p>{groupWords(group, arrivingIn(copy.of), isWhole)}</p>
        <p className={styles.names}>
          <bdi>{names}</bdi>
          {fate === 'same' && alike}
        </p>
      </div>
    </li>
  );
}

// Helpers

const allPapers = (count: number, formatter: Formatter): string =>
  count === 1 ? 'the one paper' : `all ${formatter.number(count)} papers`;
