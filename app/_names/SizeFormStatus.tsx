'use client';

import { PartGone } from '@/app/_network/PartGone';
import { TryAgain } from '@/app/_network/TryAgain';
import { PART_GONE } from '@/app/_words/missingAnswerWords';
import { sizeFormStateWords } from '@/app/_words/names/sizeFormWords';
import styles from './Names.module.css';
import type { SizeFormFile } from './useSizeFormFile';

/** What became of the form to print. */
export function SizeFormStatus({ state }: Readonly<{ state: SizeFormFile }>) {
  if (state.kind === 'notStarted')
    return state.isGone ? (
      <PartGone>The form was not written: {PART_GONE}.</PartGone>
    ) : (
      <TryAgain failure={state} onAgain={state.again}>
        The form waits: the part of the app that writes it could not be fetched. It is written by itself once
        there is a network.
      </TryAgain>
    );
  return (
    <p role="status" className={styles.more}>
      {sizeFormStateWords(state)}
    </p>
  );
}
