'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { SeverityShape } from '@/app/_controls/SeverityShape';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { findingWords } from '@/app/_words/findings/findingWords';
import type { Finding } from '@/shared/finding';
import styles from './PriceStop.module.css';

/** A price that does not pay its own bills: what is wrong with it and both ways on, in the plate of the price itself. */
export function PriceStop({ stop }: Readonly<{ stop: Finding }>) {
  const { jobId, workspace } = useJob();
  const { sentence, fixLabel } = findingWords(stop, useTextContext());
  const [refused, setRefused] = useState(false);
  const { fix } = stop;
  return (
    <div className={styles.stop}>
      <SeverityShape severity="stop" />
      <p className={styles.sentence}>
        {refused ? 'That button cannot be used just now. Change the price by hand.' : sentence}
      </p>
      {fix != null && fixLabel !== null && !refused && (
        <Button
          kind="strong"
          onPress={() => setRefused(workspace.applyFix(jobId, fixLabel, fix.changes).state === 'refused')}
        >
          {fixLabel}
        </Button>
      )}
      {/* A reason is asked for there, where the stop stands open. */}
      <a href="#checks">Go on in spite of it</a>
    </div>
  );
}
