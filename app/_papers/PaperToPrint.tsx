'use client';

import { useMemo } from 'react';
import { type PaperSource, paperOf } from '@/lib/papers/paperOf';
import { labelsFor } from '@/lib/papers/words/labelsFor';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { PaperSettings } from '@/shared/schemas/seller';
import { FileActions } from './FileActions';
import styles from './FileActions.module.css';
import { nameOfFile } from './nameOfFile';
import { PaperFileTold } from './PaperFileTold';
import { PaperSheet } from './sheet/PaperSheet';
import { usePaperFile } from './usePaperFile';

type PaperToPrintProps = Readonly<{
  source: PaperSource;
  words: PaperSettings['words'];
  readFile: (id: string) => Promise<StoredFile | null>;
  /** What is spoken of it with its buttons. */
  spoken: string;
}>;

const noPictures: ReadonlyMap<string, string> = new Map();

/** A paper without pictures that bears no number and is never issued: its file, and what stands on it. */
export function PaperToPrint({ source: wanted, words, readFile, spoken }: PaperToPrintProps) {
  const { source, state, tryAgain } = usePaperFile(wanted, { words, readFile });
  const paper = useMemo(() => paperOf(wanted, labelsFor(wanted.body.language, words)), [wanted, words]);
  return (
    <div className={styles.paper}>
      <PaperFileTold state={state} onAgain={tryAgain} />
      <div className={styles.acts}>
        <FileActions
          name={source === null ? '' : nameOfFile(source, words)}
          content={state.kind === 'written' ? state.made.file : null}
          spoken={spoken}
          blockedBy={state.kind === 'written' ? undefined : 'The file is being written.'}
        />
      </div>
      <PaperSheet paper={paper} pictures={noPictures} />
    </div>
  );
}
