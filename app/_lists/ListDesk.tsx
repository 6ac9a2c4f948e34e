'use client';

import { useState } from 'react';
import { issueList } from '@/lib/price/listDocument/issueList';
import { EditableTitle } from '../_docket/EditableTitle';
import type { KeptList } from '../_documents/makerDocuments';
import { useToday } from '../_documents/useToday';
import type { ReadyMaker } from '../_documents/WithWorkshop';
import { PageHead } from '../_shell/PageHead';
import { speakerOf } from '../_text/speaker';
import { AnswerMissing } from '../_workers/AnswerMissing';
import { DraftPart } from './DraftPart';
import { DRAFT, PaperPart } from './PaperPart';
import { standingLine } from './standingLine';
import { useListOffers } from './useListOffers';
import { useListStates } from './useListStates';
import { VersionStanding } from './VersionStanding';

type ListDeskProps = Readonly<{ kept: KeptList; maker: ReadyMaker }>;

/** A price list with its next version as a draft, the versions that went out, and the one paper that is looked at. */
export function ListDesk({ kept: { id, list }, maker }: ListDeskProps) {
  const speak = speakerOf(maker.workshop);
  const day = useToday();
  const { offers, isBusy } = useListOffers(maker, list.items);
  const newest = list.versions.at(-1);
  const standings = useListStates(maker, newest);
  const failed = [...offers, ...standings].find((one) => one.kind === 'failed');
  const failure = failed?.kind === 'failed' ? failed.failure : null;
  const [chosen, setChosen] = useState(newest === undefined ? DRAFT : String(newest.number));
  // A version that undo took back is no longer there to be shown.
  const version = list.versions.find(({ number }) => String(number) === chosen);
  const draft = issueList(list, offers, maker.workshop.currency, day);
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
      maker={maker}
      shown={version === undefined ? DRAFT : chosen}
      onShow={setChosen}
      paper={version ?? (draft.kind === 'issued' ? draft.version : null)}
      isBusy={version === undefined && isBusy}
    />
  );
  const next = (
    <DraftPart
      key="draft"
      {...{ id, list, offers, isBusy, maker }}
      issued={draft}
      onIssued={(number) => show(String(number))}
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
              longest={120}
              onCommit={(name) =>
                maker.setField({ kind: 'priceList', id }, 'Name of the price list', ['name'], name)
              }
            />
          }
          line={
            newest === undefined
              ? 'Not issued yet.'
              : `Version ${newest.number} went out on ${speak.day(newest.issuedOn)} and is valid until ${speak.day(newest.validUntil)}.`
          }
          aside={newest !== undefined && <a href="#standing-heading">{standingLine(standings, speak)}</a>}
        />
      </div>
      <AnswerMissing what="The prices of this list could not be made" failure={failure} />
      {/* What went out is looked at more often than what comes next. */}
      {newest === undefined ? (
        [next, paper]
      ) : (
        <>
          {paper}
          <VersionStanding
            workshop={maker.workshop}
            version={newest}
            standings={standings}
            today={day}
            onDraft={() => show(DRAFT)}
          />
          {next}
        </>
      )}
    </>
  );
}
