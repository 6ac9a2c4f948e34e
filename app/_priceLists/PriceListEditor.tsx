'use client';

import { useMemo, useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { PageHead } from '@/app/_controls/PageHead';
import { usePageName } from '@/app/_controls/usePageName';
import { Carry } from '@/app/_copies/Carry';
import type { PriceListRecord } from '@/app/_documents/documentsByKind';
import { EditableTitle } from '@/app/_fields/EditableTitle';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { paperNumberText } from '@/app/_words/paperNumberText';
import { standingLine } from '@/app/_words/priceLists/standingLineWords';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { nextVersion } from '@/lib/priceLists/nextVersion';
import { nextNumber } from '@/lib/priceLists/versionOrder';
import { textLimits } from '@/shared/limits';
import { priceListSchema } from '@/shared/schemas/priceList';
import { changedVersions } from './changedVersions';
import { DraftPart } from './DraftPart';
import { focusPaper } from './focusPaper';
import { DRAFT, PaperPart } from './PaperPart';
import styles from './PriceLists.module.css';
import { useListOffers } from './useListOffers';
import { useListStates } from './useListStates';
import { VersionStanding } from './VersionStanding';

type PriceListEditorProps = Readonly<{ kept: PriceListRecord; workspace: ReadyWorkspace }>;

interface Chosen {
  readonly id: string;
  readonly evenWithdrawn: boolean;
}

/** A price list with its next version as a draft, the versions that went out, and the one paper that is looked at. */
export function PriceListEditor({ kept: { id, list, issued }, workspace }: PriceListEditorProps) {
  usePageName(`${list.name} · Pressminute`);
  const formatter = formatterFor(workspace.workshop);
  const day = useToday();
  const { offers, isBusy } = useListOffers(workspace, list.items);
  const { versions, withdrawn, newest } = issued;
  const changed = useMemo(() => changedVersions(workspace.unreadable, id), [workspace.unreadable, id]);
  const standings = useListStates(workspace, newest?.body);
  const failed = [...offers, ...standings].find((one) => one.kind === 'failed');
  const failure = failed?.kind === 'failed' ? failed.failure : null;
  const [chosen, setChosen] = useState<Chosen>({ id: newest?.id ?? DRAFT, evenWithdrawn: false });
  // A version that undo took out of force makes room for the draft, unless it is looked at as what it is.
  const seen = [...versions, ...changed, ...(chosen.evenWithdrawn ? withdrawn : [])];
  const shown = seen.find((paper) => paper.id === chosen.id) ?? null;
  const look = (next: string, evenWithdrawn = false) => setChosen({ id: next, evenWithdrawn });
  const draft = nextVersion(list, offers, workspace.workshop.currency, day);
  const number = nextNumber([...versions, ...withdrawn, ...changed], workspace.device?.letter ?? null);
  const name = paperNumberText(number);
  const show = (next: string) => {
    look(next);
    focusPaper();
  };
  const paper = (
    <PaperPart
      key="paper"
      issued={issued}
      changed={changed}
      draftName={`Version ${name}, draft`}
      workspace={workspace}
      shown={shown}
      onShow={look}
      version={shown?.body ?? (draft.kind === 'ready' ? draft.version(number) : null)}
      size={list.paper}
      onSize={(size) =>
        workspace.changePriceList(id, 'Paper of the list', (now) => ({ ...now, paper: size }))
      }
      isBusy={shown === null && isBusy}
    />
  );
  const next = (
    <DraftPart key="draft" {...{ id, list, offers, isBusy, name, workspace }} next={draft} onIssued={show} />
  );
  const standing = newest !== null && (
    <VersionStanding
      workshop={workspace.workshop}
      version={newest.body}
      nextName={name}
      standings={standings}
      today={day}
      onDraft={() => show(DRAFT)}
    />
  );
  return (
    <>
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
          newest === null
            ? withdrawn.length > 0
              ? 'Nothing of it is in force.'
              : 'Not issued yet.'
            : `Version ${paperNumberText(newest.number)} went out on ${formatter.day(newest.body.issuedOn)} and is valid until ${formatter.day(newest.body.validUntil)}.`
        }
        aside={
          <>
            {newest !== null && <a href="#standing-heading">{standingLine(standings, formatter)}</a>}{' '}
            <a className={styles.toPaper} href="#paper-heading">
              See the paper
            </a>
          </>
        }
      />
      <AnswerMissing what="The prices of this list could not be made" failure={failure} />
      <div className={styles.columns}>
        {standing}
        {/* On a phone what went out is looked at more often than what comes next. */}
        {newest === null ? [next, paper] : [paper, next]}
      </div>
      <Carry store={workspace} what={{ kind: 'priceList', id, name: list.name }} />
    </>
  );
}
