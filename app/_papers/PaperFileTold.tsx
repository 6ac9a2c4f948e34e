'use client';

import { PartGone } from '@/app/_network/PartGone';
import { TryAgain } from '@/app/_network/TryAgain';
import { drawnLettersWords, leftOutWords } from '@/app/_words/docket/coverWords';
import { PART_GONE } from '@/app/_words/missingAnswerWords';
import { lostPicturesWords } from '@/app/_words/orders/papers/paperIssueWords';
import styles from './FileActions.module.css';
import type { PaperFileState } from './usePaperFile';

type PaperFileToldProps = Readonly<{ state: PaperFileState; onAgain: () => void }>;

/** What the maker has to know of the file of a paper before it goes out. */
export function PaperFileTold({ state, onAgain }: PaperFileToldProps) {
  const missing = state.kind === 'written' ? state.made.missing : [];
  const drawn = drawnLettersWords(
    missing.flatMap(({ letter, fate }) => (fate === 'picture' ? [letter] : [])),
  );
  const leftOut = leftOutWords(
    missing.flatMap(({ codePoints, fate }) => (fate === 'leftOut' ? [codePoints] : [])),
  );
  const lost = state.kind === 'written' ? lostPicturesWords(state.made.lost.length) : '';
  return (
    <>
      {[drawn, leftOut, lost]
        .filter((sentence) => sentence !== '')
        .map((sentence) => (
          <p key={sentence} className={styles.careful}>
            {sentence}
          </p>
        ))}
      {state.kind === 'failed' && (
        <TryAgain failure={state} onAgain={onAgain}>
          The file could not be written: {state.why}. Nothing went out.
        </TryAgain>
      )}
      {state.kind === 'notStarted' &&
        (state.isGone ? (
          <PartGone>The file was not written: {PART_GONE}.</PartGone>
        ) : (
          <TryAgain failure={state} onAgain={state.again}>
            The part of the app that writes papers could not be fetched. The file is written by itself once
            there is a network.
          </TryAgain>
        ))}
    </>
  );
}
