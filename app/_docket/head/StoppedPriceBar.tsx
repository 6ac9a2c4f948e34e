'use client';

import { type Ref, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { SeverityShape } from '@/app/_controls/SeverityShape';
import { fieldIdOf } from '@/app/_docket/common/fieldId';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { findingWords } from '@/app/_words/findings/findingWords';
import { isStanding } from '@/shared/finding';
import { PriceBar } from './PriceBar';
import styles from './StoppedPriceBar.module.css';

type StoppedPriceBarProps = Readonly<{
  /** “19.00”; null where there was never a price. */
  lastGood: string | null;
  at: Ref<HTMLElement>;
}>;

/** The price bar while a stop stands: no price, what is wrong, and the button that mends it. */
export function StoppedPriceBar({ lastGood, at }: StoppedPriceBarProps) {
  const { jobId, input, findings, workspace, show } = useJob();
  const context = useTextContext();
  const [refused, setRefused] = useState(false);
  const stops = findings.filter(isStanding);
  const first = stops[0];
  const words = first === undefined ? null : findingWords(first, context);
  const field = first === undefined ? null : fieldIdOf(first.where, input.job);
  const mend = () => {
    if (first?.fix == null || words?.fixLabel == null) return;
    const outcome = workspace.applyFix(jobId, words.fixLabel, first.fix.changes);
    setRefused(outcome.state === 'refused');
  };
  return (
    <PriceBar
      isDashed
      at={at}
      price={
        <>
          <p className={styles.none}>no price</p>
          <p className={styles.until}>until this is mended</p>
          {lastGood !== null && <p className={styles.last}>last good price {lastGood}</p>}
        </>
      }
      end={
        words?.fixLabel != null && !refused ? (
          <Button kind="strong" onPress={mend}>
            {words.fixLabel}
          </Button>
        ) : field !== null ? (
          <Button onPress={() => show(field)}>Show where</Button>
        ) : (
          <a href="#checks">See the checks</a>
        )
      }
    >
      {words !== null && (
        <div className={styles.why}>
          <SeverityShape severity="stop" />
          <div>
            <p className={styles.sentence}>{words.sentence}</p>
            <p>{refused ? 'That button cannot be used just now. Change the field by hand.' : words.detail}</p>
            {stops.length > 1 && (
              <p>
                <a href="#checks">
                  {stops.length - 1} more {stops.length === 2 ? 'stop stands' : 'stops stand'} under “Checks”
                </a>
              </p>
            )}
          </div>
        </div>
      )}
    </PriceBar>
  );
}
