'use client';

import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { gainOf, gainShort, gainWords } from '@/app/_words/docket/leverAnswerWords';
import { formatterFor } from '@/app/_words/formatter';
import { leverWords } from '@/app/_words/leverWords';
import type { Lever } from '@/lib/studies/levers/lever';
import type { LeverAim } from '@/lib/studies/levers/levers';
import styles from './LeverSection.module.css';

type LeverListProps = Readonly<{
  levers: readonly Lever[];
  aim: LeverAim;
  /** The largest gain of all that are drawn alike. */
  most: number;
  name: string;
  /** Whether all that a lever brings is told, and not only what is to grow. */
  full?: boolean;
  blockedBy: string | undefined;
  onTake: (lever: Lever) => void;
}>;

/** Changes one beneath the other, each with a bar of what it brings and a button that tries it. */
export function LeverList({ levers, aim, most, name, full = false, blockedBy, onTake }: LeverListProps) {
  const context = useTextContext();
  const formatter = formatterFor(context);
  return (
    <ul className={styles.list} aria-label={name}>
      {levers.map((lever) => {
        const says = leverWords(lever, context);
        return (
          <li className={styles.lever} key={`${lever.id} ${says}`}>
            <p className={styles.says}>
              {says}
              {full && <span className={styles.gain}>{gainWords(lever, formatter)}</span>}
            </p>
            <svg className={styles.bar} viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
              <rect width={Math.max(1, (gainOf(lever, aim) / most) * 100)} height="10" rx="1" />
            </svg>
            <strong className={styles.short}>{gainShort(lever, aim, formatter, context)}</strong>
            <Button spoken={`Try: ${says}`} blockedBy={blockedBy} onPress={() => onTake(lever)}>
              Try
            </Button>
          </li>
        );
      })}
    </ul>
  );
}
