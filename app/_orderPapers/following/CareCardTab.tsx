'use client';

import { PaperPreview } from '@/app/_orderPapers/issuing/PaperPreview';
import styles from '@/app/_orderPapers/OrderPapers.module.css';
import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { TabHead } from '@/app/_orderPapers/TabHead';
import { FileActions } from '@/app/_papers/FileActions';
import { nameOfFile } from '@/app/_papers/nameOfFile';
import { PaperFileTold } from '@/app/_papers/PaperFileTold';
import { usePaperFile } from '@/app/_papers/usePaperFile';
import { careAnswer, goodsProblemWords } from '@/app/_words/orders/papers/followingWords';
import { careCardsOf, MOST_CARDS } from '@/lib/quotes/following/goodsPapers';

/** Cards to go with the pieces: they bear no name and no number, so they are saved and not issued. */
export function CareCardTab({ of }: Readonly<{ of: OrderOnPaper }>) {
  const { workspace, goods } = of;
  const { words } = workspace.workshop.papers;
  const body = careCardsOf(goods);
  const writer = usePaperFile(body === null ? null : { kind: 'careCard', body }, {
    words,
    readFile: workspace.readFile,
  });
  const { source, state } = writer;
  if (body === null || source === null)
    return <p className={styles.quiet}>{goodsProblemWords({ kind: 'nothingOrdered' })}</p>;
  return (
    <>
      <TabHead answer={careAnswer(body.cards.length, body.cards.length === MOST_CARDS)} />
      <PaperFileTold state={state} onAgain={writer.tryAgain} />
      <div className={styles.acts}>
        <FileActions
          name={nameOfFile(source, words)}
          content={state.kind === 'written' ? state.made.file : null}
          spoken="the care cards"
          blockedBy={state.kind === 'written' ? undefined : 'The file is being written.'}
        />
      </div>
      <PaperPreview {...{ source, words }} readFile={workspace.readFile} />
    </>
  );
}
