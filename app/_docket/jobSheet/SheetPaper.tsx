'use client';

import { useId } from 'react';
import { FileActions } from '@/app/_papers/FileActions';
import { nameOfFile } from '@/app/_papers/nameOfFile';
import { PaperFileTold } from '@/app/_papers/PaperFileTold';
import { PaperSheet } from '@/app/_papers/sheet/PaperSheet';
import { usePictureAddresses } from '@/app/_papers/sheet/usePictureAddresses';
import { usePaperFile } from '@/app/_papers/usePaperFile';
import { jobSheetTable } from '@/app/_words/docket/jobSheetTable';
import { type PaperSource, paperOf } from '@/lib/papers/paperOf';
import { picturesOf } from '@/lib/papers/picturesOf';
import { labelsFor } from '@/lib/papers/words/labelsFor';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { PaperSettings } from '@/shared/schemas/seller';
import styles from './JobSheet.module.css';

type SheetPaperProps = Readonly<{
  source: PaperSource;
  heading: string;
  /** What is spoken of it with its buttons. */
  spoken: string;
  says: string;
  words: PaperSettings['words'];
  readFile: (id: string) => Promise<StoredFile | null>;
}>;

/** A paper of a job as it stands in its file, with the ways out: sent, saved. */
export function SheetPaper({ source: wanted, heading, spoken, says, words, readFile }: SheetPaperProps) {
  const id = useId();
  const { source, state, tryAgain } = usePaperFile(wanted, { words, readFile });
  const shown = source ?? wanted;
  const paper = paperOf(shown, labelsFor(shown.body.language, words));
  const pictures = usePictureAddresses(picturesOf(paper), readFile);
  return (
    <section className={styles.paper} aria-labelledby={id}>
      <h2 id={id}>{heading}</h2>
      <p className={styles.says}>{says}</p>
      <div className={styles.acts}>
        <FileActions
          name={nameOfFile(shown, words)}
          content={state.kind === 'written' ? state.made.file : null}
          spoken={spoken}
          saving={jobSheetTable.save}
          blockedBy={jobSheetTable.beingMade}
        />
      </div>
      <PaperFileTold state={state} onAgain={tryAgain} />
      <PaperSheet {...{ paper, pictures }} />
    </section>
  );
}
