'use client';

import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { FileActions } from '@/app/_papers/FileActions';
import { nameOfFile } from '@/app/_papers/nameOfFile';
import { PaperFileTold } from '@/app/_papers/PaperFileTold';
import { usePaperFile } from '@/app/_papers/usePaperFile';
import { usableLocale } from '@/app/_words/usableLocale';
import type { PriceListBody } from '@/lib/papers/bodies/priceListPaper';
import type { PriceListVersion } from '@/shared/schemas/priceList';
import styles from './PriceLists.module.css';

type ListFileProps = Readonly<{
  workspace: ReadyWorkspace;
  /** Null where there is nothing to write yet. */
  version: PriceListVersion | null;
  standing: PriceListBody['standing'];
  page: PriceListBody['page'];
}>;

/** The paper of a list as the file that is sent and saved. */
export function ListFile({ workspace, version, standing, page }: ListFileProps) {
  const { locale, units, papers } = workspace.workshop;
  const marks = usableLocale(locale);
  const { source, state, tryAgain } = usePaperFile(
    version === null
      ? null
      : {
          kind: 'priceList',
          body: {
            ...{ version, standing, page, locale: marks, length: units.length },
            language: marks.split('-')[0] ?? 'en',
          },
        },
    { words: papers.words, readFile: workspace.readFile },
  );
  return (
    <>
      <div className={styles.acts}>
        <FileActions
          name={source === null ? '' : nameOfFile(source, papers.words)}
          content={state.kind === 'written' ? state.made.file : null}
          spoken="of the price list"
          saving="Save as PDF"
          blockedBy={source === null ? 'There is no paper to save yet.' : 'The file is being made.'}
        />
      </div>
      <PaperFileTold state={state} onAgain={tryAgain} />
    </>
  );
}
