'use client';

import { Button } from '@/app/_controls/Button';
import type { IssuedVersions, VersionPaper } from '@/app/_documents/issuedVersions';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { paperNumberText } from '@/app/_words/paperNumberText';
import { listFileWords, listPagesWords } from '@/app/_words/priceLists/listFileWords';
import type { PriceList, PriceListVersion } from '@/shared/schemas/priceList';
import { focusPaper, PAPER_HEADING } from './focusPaper';
import { ListFile } from './ListFile';
import { listSource } from './listSources';
import { OwnerFigures } from './OwnerFigures';
import { PriceListPaper } from './PriceListPaper';
import styles from './PriceLists.module.css';
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
  /** What is on the paper; null where there is none yet. */
  version: PriceListVersion | null;
  size: PriceList['paper'];
  onSize: (size: PriceList['paper']) => void;
  isBusy: boolean;
}>;

/** The one paper that is looked at: chosen, saved or sent, and beneath it what is for the maker alone. */
export function PaperPart(props: PaperPartProps) {
  const { issued, changed, draftName, workspace, shown, onShow, version, onSize, isBusy } = props;
  const formatter = formatterFor(workspace.workshop);
  const isChanged = shown !== null && changed.includes(shown);
  const standing =
    shown === null ? 'draft' : isChanged ? 'changed' : shown.withdrawn ? 'withdrawn' : 'inForce';
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
      <section className={styles.part} aria-labelledby={PAPER_HEADING}>
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
        <ListFile
          workspace={workspace}
          source={
            version === null ? null : listSource({ version, standing, page: props.size }, workspace.workshop)
          }
          spoken={listFileWords.spoken}
          pagesWords={listPagesWords}
        />
        {version === null && (
          <p className={styles.words}>
            {isBusy
              ? 'The prices are being made.'
              : 'There is no paper yet: what stands in the way is told beside the items.'}
          </p>
        )}
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
          <div className={styles.sheet} aria-busy={isBusy}>
            <PriceListPaper version={version} standing={standing} context={workspace.workshop} />
          </div>
          <OwnerFigures version={version} page={props.size} workspace={workspace} />
        </>
      )}
    </div>
  );
}
