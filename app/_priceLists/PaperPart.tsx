'use client';

import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import type { IssuedVersions, VersionPaper } from '@/app/_documents/issuedVersions';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { paperNumberText } from '@/app/_words/paperNumberText';
import type { PriceList, PriceListVersion } from '@/shared/schemas/priceList';
import { focusPaper, PAPER_HEADING } from './focusPaper';
import { ListFile } from './ListFile';
import { OwnerFigures } from './OwnerFigures';
import { PriceListPaper } from './PriceListPaper';
import styles from './PriceLists.module.css';
import { paperPages } from './paperPages';
import { WithdrawnVersions } from './WithdrawnVersions';
import { withdrawVersion } from './withdrawing';

/** The choice that is no version yet. */
export const DRAFT = 'draft';

type PaperPartProps = Readonly<{
  issued: IssuedVersions;
  /** Versions that are not what was issued any more. */
  changed: readonly VersionPaper[];
  /** What the draft is called among the versions; null where there is none, because the list is gone. */
  draftName: string | null;
  workspace: ReadyWorkspace;
  /** The version that is looked at; null for the draft. */
  shown: VersionPaper | null;
  onShow: (shown: string, evenWithdrawn?: boolean) => void;
  /** What is on the paper; null where there is nothing to print yet. */
  version: PriceListVersion | null;
  size: PriceList['paper'];
  onSize: (size: PriceList['paper']) => void;
  isBusy: boolean;
}>;

/** The one paper that is looked at: chosen, printed, and beneath it what is for the maker alone. */
export function PaperPart(props: PaperPartProps) {
  const { issued, changed, draftName, workspace, shown, onShow, version, onSize, isBusy } = props;
  const formatter = formatterFor(workspace.workshop);
  const [printed, setPrinted] = useState<'paper' | 'owner'>('paper');
  useEffect(() => {
    const back = () => setPrinted('paper');
    window.addEventListener('afterprint', back);
    return () => window.removeEventListener('afterprint', back);
  }, []);
  const isChanged = shown !== null && changed.includes(shown);
  const standing =
    shown === null ? 'draft' : isChanged ? 'changed' : shown.withdrawn ? 'withdrawn' : 'inForce';
  const print = (what: typeof printed) => {
    // The browser prints what stands on the page at that moment.
    flushSync(() => setPrinted(what));
    window.print();
  };
  const blockedBy = version === null ? 'There is no paper to print yet.' : undefined;
  const pages = version === null ? 1 : paperPages(version, props.size);
  const size = props.size === 'a4' ? 'paperA4' : 'paperLetter';
  const choiceOf = (paper: VersionPaper) => ({
    value: paper.id,
    label: [
      `Version ${paperNumberText(paper.number)}`,
      formatter.day(paper.body.issuedOn),
      ...(changed.includes(paper) ? ['changed'] : paper.withdrawn ? ['withdrawn'] : []),
    ].join(', '),
  });
  return (
    <div className={styles.paperColumn}>
      <section className={classes(styles.part, 'screenOnly')} aria-labelledby={PAPER_HEADING}>
        <h2 id={PAPER_HEADING} tabIndex={-1}>
          The paper
        </h2>
        <div className={styles.acts}>
          <ChoiceField
            label="Shown"
            value={shown?.id ?? DRAFT}
            choices={[
              ...(draftName === null ? [] : [{ value: DRAFT, label: draftName }]),
              ...issued.versions.toReversed().map(choiceOf),
              ...changed.map(choiceOf),
              ...(shown?.withdrawn ? [choiceOf(shown)] : []),
            ]}
            onCommit={onShow}
          />
          <ChoiceField
            label="Printed on"
            value={props.size}
            choices={[
              { value: 'a4', label: 'A4' },
              { value: 'letter', label: 'Letter' },
            ]}
            onCommit={onSize}
          />
          <Button blockedBy={blockedBy} onPress={() => print('paper')}>
            Print
          </Button>
          <Button kind="quiet" blockedBy={blockedBy} onPress={() => print('owner')}>
            Print your own sheet
          </Button>
          {shown?.withdrawn === false && !isChanged && (
            <Button
              kind="quiet"
              onPress={() => {
                withdrawVersion(workspace, shown);
                onShow(draftName === null ? shown.id : DRAFT, draftName === null);
                focusPaper();
              }}
            >
              Withdraw version {paperNumberText(shown.number)}
            </Button>
          )}
        </div>
        <ListFile {...{ workspace, version }} page={props.size} standing={standing} />
        <p className={styles.words}>
          {version === null
            ? isBusy
              ? 'The prices are being made.'
              : 'There is no paper yet: what stands in the way is told beside the items.'
            : pages > 1
              ? `It will likely take ${pages} pages. A list is read best on one: take items off, or make two lists.`
              : 'It fits on one page.'}
        </p>
        {changed.map(({ id, number }) => (
          <p key={id} className={styles.changed}>
            Version {paperNumberText(number)} was changed since it was issued: do not rely on it.
          </p>
        ))}
        <WithdrawnVersions
          papers={issued.withdrawn}
          workspace={workspace}
          onShow={(id) => onShow(id, true)}
        />
      </section>
      {version !== null && (
        <>
          <div className={classes(styles.sheet, printed === 'owner' && 'screenOnly')} aria-busy={isBusy}>
            <PriceListPaper
              version={version}
              standing={standing}
              size={printed === 'paper' ? size : null}
              context={workspace.workshop}
            />
          </div>
          <div className={printed === 'owner' ? size : 'screenOnly'}>
            <OwnerFigures version={version} context={workspace.workshop} />
          </div>
        </>
      )}
    </div>
  );
}
