'use client';

import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import type { PriceList, PriceListVersion } from '@/shared/schemas/priceList';
import { OwnerFigures } from './OwnerFigures';
import { PriceListPaper } from './PriceListPaper';
import styles from './PriceLists.module.css';
import { paperPages } from './paperPages';

/** The choice that is no version yet. */
export const DRAFT = 'draft';

type PaperPartProps = Readonly<{
  id: string;
  list: PriceList;
  workspace: ReadyWorkspace;
  /** What is looked at: the draft, or the number of a version. */
  shown: string;
  onShow: (shown: string) => void;
  /** Null where there is nothing to print yet. */
  paper: PriceListVersion | null;
  isBusy: boolean;
}>;

/** The one paper that is looked at: chosen, printed, and beneath it what is for the maker alone. */
export function PaperPart({ id, list, workspace, shown, onShow, paper, isBusy }: PaperPartProps) {
  const formatter = formatterFor(workspace.workshop);
  const [printed, setPrinted] = useState<'paper' | 'owner'>('paper');
  useEffect(() => {
    const back = () => setPrinted('paper');
    window.addEventListener('afterprint', back);
    return () => window.removeEventListener('afterprint', back);
  }, []);
  const print = (what: typeof printed) => {
    // The browser prints what stands on the page at that moment.
    flushSync(() => setPrinted(what));
    window.print();
  };
  const blockedBy = paper === null ? 'There is no paper to print yet.' : undefined;
  const pages = paper === null ? 1 : paperPages(paper, list.paper);
  const size = list.paper === 'a4' ? 'paperA4' : 'paperLetter';
  return (
    <div className={styles.paperColumn}>
      <section className={classes(styles.part, 'screenOnly')} aria-labelledby="paper-heading">
        <h2 id="paper-heading" tabIndex={-1}>
          The paper
        </h2>
        <div className={styles.acts}>
          <ChoiceField
            label="Shown"
            value={shown}
            choices={[
              { value: DRAFT, label: `Version ${(list.versions.at(-1)?.number ?? 0) + 1}, draft` },
              ...list.versions.toReversed().map(({ number, issuedOn }) => ({
                value: String(number),
                label: `Version ${number}, ${formatter.day(issuedOn)}`,
              })),
            ]}
            onCommit={onShow}
          />
          <ChoiceField
            label="Printed on"
            value={list.paper}
            choices={[
              { value: 'a4', label: 'A4' },
              { value: 'letter', label: 'Letter' },
            ]}
            onCommit={(chosen) =>
              workspace.changePriceList(id, 'Paper of the list', (now) => ({ ...now, paper: chosen }))
            }
          />
          <Button blockedBy={blockedBy} onPress={() => print('paper')}>
            Print or save as PDF
          </Button>
          <Button kind="quiet" blockedBy={blockedBy} onPress={() => print('owner')}>
            Print your own sheet
          </Button>
        </div>
        <p className={styles.words}>
          {paper === null
            ? isBusy
              ? 'The prices are being made.'
              : 'There is no paper yet: what stands in the way is told beside the items.'
            : pages > 1
              ? `It will likely take ${pages} pages. A list is read best on one: take items off, or make two lists.`
              : 'It fits on one page.'}
        </p>
      </section>
      {paper !== null && (
        <>
          <div className={classes(styles.sheet, printed === 'owner' && 'screenOnly')} aria-busy={isBusy}>
            <PriceListPaper
              version={paper}
              isDraft={shown === DRAFT}
              size={printed === 'paper' ? size : null}
              context={workspace.workshop}
            />
          </div>
          <div className={printed === 'owner' ? size : 'screenOnly'}>
            <OwnerFigures version={paper} context={workspace.workshop} />
          </div>
        </>
      )}
    </div>
  );
}
