'use client';

import Link from 'next/link';
import { Button } from '@/app/_controls/Button';
import { SeverityShape } from '@/app/_controls/SeverityShape';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { copyAgeWords } from '@/app/_words/store/copyStandingWords';
import styles from './CopyDue.module.css';
import type { CopyStanding } from './copyStanding';

type CopyDueProps = Readonly<{
  standing: Extract<CopyStanding, { isDue: boolean }>;
  /** False while the newest is on its way to the device. */
  isKept: boolean;
  isBusy: boolean;
  onMake: () => void;
}>;

/** In the header: that the last copy is old, and the button that makes one. */
export function CopyDue({ standing, isKept, isBusy, onMake }: CopyDueProps) {
  const formatter = formatterFor(useTextContext());
  return (
    <div className={styles.due}>
      <Link className={styles.told} href="/workshop#copies">
        <SeverityShape severity="caution" />
        <span>
          <span className={styles.long}>
            {isKept ? 'Kept here,' : 'Keeping…'}
            {standing.state === 'copied' && ' copy is'}
          </span>
          {standing.state === 'copied' && <span className={styles.short}>Copy</span>}{' '}
          <strong>
            {standing.state === 'never' ? 'no copy yet' : copyAgeWords(standing.daysOld, formatter)}
          </strong>
        </span>
      </Link>
      <Button onPress={onMake} blockedBy={isBusy ? 'The copy is being made.' : undefined}>
        Make a copy
      </Button>
    </div>
  );
}
