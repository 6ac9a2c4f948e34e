'use client';

import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { FileActions } from '@/app/_papers/FileActions';
import { nameOfFile } from '@/app/_papers/nameOfFile';
import { PaperFileTold } from '@/app/_papers/PaperFileTold';
import { usePaperFile } from '@/app/_papers/usePaperFile';
import { listFileWords } from '@/app/_words/priceLists/listFileWords';
import type { PaperSource } from '@/lib/papers/paperOf';
import styles from './PriceLists.module.css';

type ListFileProps = Readonly<{
  workspace: ReadyWorkspace;
  /** Null where there is nothing to write yet. */
  source: PaperSource | null;
  /** What is spoken of it with its buttons. */
  spoken: string;
  /** What is said of its pages. */
  pagesWords?: (pages: number) => string;
}>;

/** A paper of a list as the file that is sent and saved. */
export function ListFile({ workspace, source: wanted, spoken, pagesWords }: ListFileProps) {
  const { papers } = workspace.workshop;
  const { source, state, tryAgain } = usePaperFile(wanted, {
    words: papers.words,
    readFile: workspace.readFile,
  });
  const { saving, nothing, beingMade, toPrint } = listFileWords;
  return (
    <>
      <div className={styles.acts}>
        <FileActions
          name={source === null ? '' : nameOfFile(source, papers.words)}
          content={state.kind === 'written' ? state.made.file : null}
          spoken={spoken}
          saving={saving}
          blockedBy={source === null ? nothing : beingMade}
        />
      </div>
      <PaperFileTold state={state} onAgain={tryAgain} />
      {pagesWords !== undefined && state.kind === 'written' && (
        <p className={styles.words}>
          {pagesWords(state.made.pages)} {toPrint}
        </p>
      )}
    </>
  );
}
