'use client';

import Link from 'next/link';
import { memo, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import type { findingWords } from '@/app/_words/findings/findingWords';
import { formatterFor } from '@/app/_words/formatter';
import { jobStateChoices, stoppedWords } from '@/app/_words/jobs/jobListWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { JobFigures } from '@/lib/costing/jobFigures';
import { formatMinor, toMinor } from '@/shared/money';
import type { Workshop } from '@/shared/schemas/workshop';
import styles from './JobTable.module.css';
import type { JobEntry } from './jobEntries';
import { MarginBar } from './MarginBar';
import type { JobActions } from './useJobActions';

type JobRowProps = Readonly<{
  entry: JobEntry;
  /** Null until they are made. */
  figures: JobFigures | null;
  /** Null until the words of findings are here. */
  sayStop: typeof findingWords | null;
  actions: JobActions;
  workshop: Workshop;
}>;

/** One job of the list. Drawn again only when something of it changes, so that a long list stays quick. */
export const JobRow = memo(function JobRow({ entry, figures, sayStop, actions, workshop }: JobRowProps) {
  const { kept, piecesInWords, askedInWords } = entry;
  const { id, job } = kept;
  const formatter = formatterFor(workshop);
  const name = <span className="visuallyHidden">{job.name}</span>;
  const [isMore, setMore] = useState(false);
  const isAway = job.archivedOn !== null;
  const customer = job.customer || (job.madeFor === 'stock' ? 'made to stock' : null);
  const wanted = job.wantedOn === null ? null : formatter.day(job.wantedOn);
  return (
    <>
      <tr className={classes(isAway && styles.away, isMore && styles.opened)}>
        <th scope="row" className={styles.job}>
          <Link className={styles.name} href={`/jobs/${id}`} prefetch={false}>
            <bdi>{job.name}</bdi>
          </Link>
          <span className={styles.besides}>
            {piecesInWords}
            {customer !== null && (
              <>
                , <bdi>{customer}</bdi>
              </>
            )}
            {wanted !== null && `, ${wanted}`}
          </span>
          {isAway && <span className={styles.under}>put away on {formatter.day(job.archivedOn ?? '')}</span>}
          {figures?.kind === 'stopped' && (
            <span className={styles.stop}>Stop: {stoppedWords(figures, sayStop, workshop)}</span>
          )}
        </th>
        <td className={styles.customer}>
          <bdi>{customer ?? 'not named'}</bdi>
        </td>
        <td className={styles.state}>
          <Label>state</Label>
          <ChoiceField
            label={`State of ${job.name}`}
            labelled
            value={job.state}
            choices={jobStateChoices}
            onCommit={(state) => actions.setState(kept, state)}
          />
        </td>
        <td className={styles.wanted}>
          <Label>wanted</Label>
          {wanted ?? 'no day set'}
        </td>
        <td className={classes(styles.figure, styles.pieces)}>
          <Label>pieces</Label>
          {piecesInWords}
        </td>
        <td className={styles.figure}>
          <Label>price</Label>
          {figures?.kind === 'stopped' ? (
            <span className={styles.none}>no price</span>
          ) : (
            (askedInWords ?? <span className={styles.none}>not decided</span>)
          )}
        </td>
        <td className={styles.figure}>
          <Label>margin</Label>
          {figures === null ? (
            <Waiting />
          ) : figures.kind === 'stopped' ? (
            <Nothing />
          ) : (
            <span className={styles.margin}>
              <MarginBar margin={figures.margin} />
              {formatter.share(figures.margin)}
            </span>
          )}
        </td>
        <td className={styles.pay}>
          <Label>pays an hour</Label>
          {figures === null ? (
            <Waiting />
          ) : figures.kind === 'stopped' ? (
            <Nothing />
          ) : (
            <Pay isDecided={askedInWords !== null} {...{ figures, workshop }} />
          )}
        </td>
        <td className={styles.acts}>
          <Button kind="quiet" expanded={isMore} onPress={() => setMore(!isMore)}>
            More <span className="visuallyHidden">for {job.name}</span>
          </Button>
        </td>
      </tr>
      {isMore && (
        <tr className={styles.more}>
          <td colSpan={9}>
            <div className={styles.moreActs}>
              <Button onPress={() => actions.copy(kept)}>Duplicate {name}</Button>
              <Button onPress={() => actions.putAway(kept, !isAway)}>
                {isAway ? 'Bring back' : 'Put away'} {name}
              </Button>
              <Button spoken={`Carry ${job.name} to another device`} onPress={() => actions.carry(kept)}>
                Carry
              </Button>
              <Button onPress={() => actions.remove(kept)}>Remove {name}</Button>
            </div>
          </td>
        </tr>
      )}
    </>
  );
});

// Helpers

type PayProps = Readonly<{
  figures: Extract<JobFigures, { kind: 'priced' }>;
  /** False where no price is decided, so that the pay is that of the suggested one. */
  isDecided: boolean;
  workshop: Workshop;
}>;

function Pay({ figures, isDecided, workshop }: PayProps) {
  const { currency, locale, rates } = workshop;
  const money = (amount: number) => formatMinor(toMinor(amount, currency), currency, usableLocale(locale));
  const wage = rates.wage?.value ?? null;
  const isUnder = wage !== null && figures.payPerHour < wage;
  return (
    <>
      <strong className={isUnder ? styles.less : undefined}>{money(figures.payPerHour)}</strong>
      {isUnder && <span className={styles.under}>under your {money(wage)}</span>}
      {!isDecided && <span className={styles.under}>as suggested</span>}
    </>
  );
}

/** What a figure is; on a wide screen the heading says it. */
const Label = ({ children }: Readonly<{ children: string }>) => (
  <span className={styles.label} aria-hidden="true">
    {children}
  </span>
);

const Waiting = () => (
  <span className={styles.none}>
    <span aria-hidden="true">…</span>
    <span className="visuallyHidden">being worked out</span>
  </span>
);

const Nothing = () => (
  <span className={styles.none}>
    <span aria-hidden="true">–</span>
    <span className="visuallyHidden">none</span>
  </span>
);
