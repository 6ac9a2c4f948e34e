'use client';

import { useState } from 'react';
import { issueList } from '@/lib/price/listDocument/issueList';
import { EditableTitle } from '../_docket/EditableTitle';
import type { KeptList } from '../_documents/makerDocuments';
import { useToday } from '../_documents/useToday';
import type { ReadyMaker } from '../_documents/WithWorkshop';
import { PageHead } from '../_shell/PageHead';
import { speakerOf } from '../_text/speaker';
import { DraftItems } from './DraftItems';
import { IssuePart } from './IssuePart';
import styles from './Lists.module.css';
import { ListWording } from './ListWording';
import { DRAFT, PaperPart } from './PaperPart';
import { useListOffers } from './useListOffers';
import { VersionStanding } from './VersionStanding';

type ListDeskProps = Readonly<{ kept: KeptList; maker: ReadyMaker }>;

/** A price list with its next version as a draft, the versions that went out, and the one paper that is looked at. */
export function ListDesk({ kept: { id, list }, maker }: ListDeskProps) {
  const speak = speakerOf(maker.workshop);
  const day = useToday();
  const { offers, isBusy } = useListOffers(maker, list.items);
  const newest = list.versions.at(-1);
  const [chosen, setChosen] = useState(newest === undefined ? DRAFT : String(newest.number));
  // A version that undo took back is no longer there to be shown.
  const version = list.versions.find(({ number }) => String(number) === chosen);
  const shown = version === undefined ? DRAFT : chosen;
  const draft = issueList(list, offers, maker.workshop.currency, day);
  const paper = version ?? (draft.kind === 'issued' ? draft.version : null);
  return (
    <>
      <div className="screenOnly">
        <PageHead
          title={
            <EditableTitle
              value={list.name}
              label="Name of the price list"
              longest={120}
              onCommit={(name) => maker.changeList(id, 'Name of the price list', (now) => ({ ...now, name }))}
            />
          }
          line={
            newest === undefined
              ? 'Not issued yet.'
              : `Version ${newest.number} went out on ${speak.day(newest.issuedOn)} and is valid until ${speak.day(newest.validUntil)}.`
          }
        />
        {newest !== undefined && <VersionStanding maker={maker} version={newest} today={day} />}
        <section className={styles.part} aria-labelledby="next-heading">
          <h2 id="next-heading">Version {(newest?.number ?? 0) + 1}, a draft</h2>
          <p className={styles.words}>
            It follows your jobs and today’s rates until you issue it. From then on its prices stay as they
            are, whatever moves.
          </p>
          <DraftItems id={id} list={list} offers={offers} maker={maker} />
          <ListWording id={id} list={list} maker={maker} />
          <IssuePart
            id={id}
            list={list}
            isBusy={isBusy}
            issued={draft}
            maker={maker}
            onIssued={(number) => setChosen(String(number))}
          />
        </section>
      </div>
      <PaperPart
        id={id}
        list={list}
        maker={maker}
        shown={shown}
        onShow={setChosen}
        paper={paper}
        isBusy={version === undefined && isBusy}
      />
    </>
  );
}
