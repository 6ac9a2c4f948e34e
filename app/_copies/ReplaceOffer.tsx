'use client';

import { useMemo, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { isOfNewer, lacksRecords } from '@/app/_words/store/copyFileWords';
import { lossSentences, lossWords } from '@/app/_words/store/lossWords';
import type { ArrivalPlan } from '@/lib/copies/arrival';
import styles from './ArrivalPreview.module.css';
import { arrivalLoss } from './arrivalFacts';

type ReplaceOfferProps = Readonly<{
  plan: ArrivalPlan;
  busy: string | undefined;
  /** What the copy should hold and does not. */
  lacks: readonly string[];
  /** What is here could not be saved whole before it makes way. */
  isUnsaved: boolean;
  onReplace: () => void;
}>;

/** The copy in place of everything: beside the point, and its loss is named before it is asked for. */
export function ReplaceOffer({ plan, busy, lacks, isUnsaved, onReplace }: ReplaceOfferProps) {
  const [asked, setAsked] = useState<'notYet' | 'now' | 'before'>('notYet');
  const loss = useMemo(() => arrivalLoss(plan), [plan]);
  if (lacksRecords(plan.copy.lacks) || plan.copy.unreadable.some(isOfNewer)) {
    return (
      <p className={styles.foot}>
        It cannot be put in place of all this: what could not be read of it would be gone here too.
      </p>
    );
  }
  if (asked !== 'now') {
    return (
      <p className={styles.foot}>
        <Button kind="quiet" ref={asked === 'before' ? takeFocus : undefined} onPress={() => setAsked('now')}>
          Put the copy in place of all this
        </Button>{' '}
        {lossWords(loss)}
      </p>
    );
  }
  return (
    <div className={styles.loss} ref={takeFocus} tabIndex={-1}>
      <p>
        All this makes way for the copy. {[...lossSentences(loss), ...lacks].join(' ')}{' '}
        {isUnsaved ? 'Undo takes it back.' : 'A copy of today is saved first, and Undo takes it back.'}
      </p>
      <Button kind="strong" blockedBy={busy} onPress={onReplace}>
        {isUnsaved ? 'Put the copy in its place all the same' : 'Put the copy in its place'}
      </Button>
      <Button onPress={() => setAsked('before')}>Keep what is here</Button>
    </div>
  );
}

// Helpers

/** What is pressed goes away, and the focus must not fall out of the page. */
const takeFocus = (element: HTMLElement | null) => element?.focus();
