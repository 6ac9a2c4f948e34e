'use client';

import { useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { PageHead } from '@/app/_controls/PageHead';
import type { PriceListRecord } from '@/app/_documents/documentsByKind';
import { EditableTitle } from '@/app/_fields/EditableTitle';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { standingLine } from '@/app/_words/priceLists/standingLineWords';
import { issuePriceList } from '@/lib/priceLists/issuePriceList';
import { DraftPart } from './DraftPart';
import { DRAFT, PaperPart } from './PaperPart';
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
                workspace.setField({ kind: 'priceList', id }, 'Name of the price list', ['name'], name)
              }
            />
          }
          line={
            newest === undefined
              ? 'Not issued yet.'
              : `Version ${newest.number} went out on ${formatter.day(newest.issuedOn)} and is valid until ${formatter.day(newest.validUntil)}.`
          }
          aside={newest !== undefined && <a href="#standing-heading">{standingLine(standings, formatter)}</a>}
        />
      </div>
      {/* What went out is looked at more often than what comes next. */}
      {newest === undefined ? (
        [next, paper]
      ) : (
        <>
          {paper}
          <VersionStanding
            workshop={workspace.workshop}
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
