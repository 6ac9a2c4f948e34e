'use client';

import { useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { PageHead } from '@/app/_controls/PageHead';
import type { PriceListRecord } from '@/app/_documents/documentsByKind';
import { EditableTitle } from '@/app/_fields/EditableTitle';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { standingLine } from '@/app/_words/priceLists/standingLineWords';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { issuePriceList } from '@/lib/priceLists/issuePriceList';
import { textLimits } from '@/shared/limits';
import { priceListSchema } from '@/shared/schemas/priceList';
import { DraftPart } from './DraftPart';
import { DRAFT, PaperPart } from './PaperPart';
import styles from './PriceLists.module.css';
import { useListOffers } from './useListOffers';
import { useListStates } from './useListStates';
import { VersionStanding } from './VersionStanding';

type PriceListEditorProps = Readonly<{ kept: PriceListRecord; workspace: ReadyWorkspace }>;

/** A price list with its next version as a draft, the versions that went out, and the one paper that is looked at. */
export function PriceListEditor({ kept: { id, list }, workspace }: PriceListEditorProps) {
  const formatter = formatterFor(workspace.workshop);
  const day = useToday();
  const { offers, isBusy } = useListOffers(workspace, list.items);
  const newest = list.versions.at(-1);
  const standings = useListStates(workspace, newest);
  const failed = [...offers, ...standings].find((one) => one.kind === 'failed');
  const failure = failed?.kind === 'failed' ? failed.failure : null;
  const [chosen, setChosen] = useState(newest === undefined ? DRAFT : String(newest.number));
  // A version that undo took back is no longer there to be shown.
  const version = list.versions.find(({ number }) => String(number) === chosen);
  const draft = issuePriceList(list, offers, workspace.workshop.currency, day);
  const show = (shown: string) => {
    setChosen(shown);
    // Once the parts have changed places.
    requestAnimationFrame(() => document.getElementById('paper-heading')?.focus());
  };
  const paper = (
    <PaperPart
      key="paper"
      id={id}
      list={list}
      workspace={workspace}
      shown={version === undefined ? DRAFT : chosen}
      onShow={setChosen}
      paper={version ?? (draft.kind === 'issued' ? draft.version : null)}
      isBusy={version === undefined && isBusy}
    />
  );
  const next = (
    <DraftPart
      key="draft"
      {...{ id, list, offers, isBusy, workspace }}
      issued={draft}
      onIssued={(number) => show(String(number))}
    />
  );
  const standing = newest !== undefined && (
    <VersionStanding
      workshop={workspace.workshop}
      version={newest}
      standings={standings}
      today={day}
      onDraft={() => show(DRAFT)}
    />
  );
  return (
    <>
      <div className="screenOnly">
        <PageHead
          title={
            <EditableTitle
              value={list.name}
              label="Name of the price list"
              limits={textLimits(priceListSchema, ['name'])}
              onCommit={(name) =>
                workspace.setField({ kind: 'priceList', id }, 'Name of the price list', ['name'], name)
              }
            />
          }
          line={
            newest === undefined
              ? 'Not issued yet.'
              : `Version ${newest.number} went out on ${formatter.day(newest.issuedOn)} and is valid until ${formatter.day(newest.validUntil)}.`
          }
          aside={
            <>
              {newest !== undefined && <a href="#standing-heading">{standingLine(standings, formatter)}</a>}{' '}
              <a className={styles.toPaper} href="#paper-heading">
                See the paper
              </a>
            </>
          }
        />
      </div>
      <AnswerMissing what="The prices of this list could not be made" failure={failure} />
      <div className={styles.columns}>
        {standing}
        {/* On a phone what went out is looked at more often than what comes next. */}
        {newest === undefined ? [next, paper] : [paper, next]}
      </div>
    </>
  );
}
