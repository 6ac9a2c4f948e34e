'use client';

import { useEffect, useRef } from 'react';
import { Button } from '@/app/_controls/Button';
import { PartGone } from '@/app/_network/PartGone';
import { TryAgain } from '@/app/_network/TryAgain';
import { writtenWords } from '@/app/_words/docket/transferWords';
import type { Formatter } from '@/app/_words/formatter';
import { PART_GONE } from '@/app/_words/missingAnswerWords';
import styles from './TransferStatus.module.css';
import type { TransferState } from './useWrittenFile';

type TransferStatusProps = Readonly<{
  state: TransferState;
  formatter: Formatter;
  onCancel: () => void;
}>;

/** How far the file is, with the way to end it; then what became of it. */
export function TransferStatus({ state, formatter, onCancel }: TransferStatusProps) {
  const status = useRef<HTMLParagraphElement>(null);
  const isStopped = state.kind === 'cancelled';
  useEffect(() => {
    // The button that stops it is gone by then, and the focus must not fall out of the page.
    if (isStopped) status.current?.focus({ preventScroll: true });
  }, [isStopped]);
  return (
    <>
      {state.kind === 'writing' && (
        <div className={styles.progress}>
          <progress max={1} value={state.share} aria-label={`Writing “${state.name}”`} />
          <Button kind="quiet" onPress={onCancel}>
            Stop
          </Button>
        </div>
      )}
      {state.kind === 'notStarted' && (
        <div className={styles.progress}>
          {state.isGone ? (
            <PartGone>The file was not written: {PART_GONE}.</PartGone>
          ) : (
            <TryAgain failure={state} onAgain={state.again}>
              “{state.name}” waits: the part of the app that writes it could not be fetched. It is written by
              itself once there is a network.
            </TryAgain>
          )}
          <Button kind="quiet" onPress={onCancel}>
            Stop
          </Button>
        </div>
      )}
      <p ref={status} role="status" tabIndex={-1} className={styles.words}>
        {wordsOf(state, formatter)}
      </p>
    </>
  );
}

function wordsOf(state: TransferState, formatter: Formatter): string {
  switch (state.kind) {
    case 'idle':
      return '';
    case 'writing':
      return `“${state.name}” is being written.`;
    case 'written':
      return writtenWords(state.facts, formatter);
    case 'cancelled':
      return `“${state.name}” was stopped; nothing was saved.`;
    case 'failed':
      return `“${state.name}” could not be written: ${state.why}. Nothing was saved; files saved before stay as they are.`;
    case 'notStarted':
      return '';
    default:
      return state satisfies never;
  }
}
