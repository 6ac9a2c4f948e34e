'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { leftOutWords } from '@/app/_words/jobs/jobListWords';
import styles from './CopiedNote.module.css';
import { lastCopy } from './lastCopy';

/** On a job that was just made as a copy: what it was made of, and what was left out. */
export function CopiedNote({ jobId }: Readonly<{ jobId: string }>) {
  const formatter = formatterFor(useTextContext());
  const [copied] = useState(() => lastCopy.recall(jobId));
  const [isSeen, setSeen] = useState(false);
  return (
    <div role="status">
      {copied !== null && !isSeen && (
        <div className={styles.note}>
          <p>
            This is a copy of <bdi>{copied.of}</bdi>. {leftOutWords(copied.leftOut, formatter)}
          </p>
          <Button kind="quiet" onPress={() => setSeen(true)}>
            I have seen it
          </Button>
        </div>
      )}
    </div>
  );
}
