'use client';

import Link from 'next/link';
import { Button } from '@/app/_controls/Button';
import type { JobRecord } from '@/app/_documents/documentsByKind';
import { formatterFor } from '@/app/_words/formatter';
import { usableLocale } from '@/app/_words/usableLocale';
import { jobFacts } from '@/lib/drafts/jobFacts';
import { formatMinor, toMinor } from '@/shared/money';
import type { Workshop } from '@/shared/schemas/workshop';
import styles from './JobList.module.css';

type JobLineProps = Readonly<{
  kept: JobRecord;
  workshop: Workshop;
  onCopy: () => void;
  onRemove: () => void;
}>;

/** One job of the list: its name, its customer, how many pieces, by when, at what price. */
export function JobLine({ kept: { id, job }, workshop, onCopy, onRemove }: JobLineProps) {
  const { currency, locale } = workshop;
  const formatter = formatterFor(workshop);
  const { pieces, asked } = jobFacts(job);
  const price =
    asked === null
      ? 'no price yet'
      : asked.from === asked.to
        ? formatter.money(asked.from)
        : `${formatMinor(toMinor(asked.from, currency), currency, usableLocale(locale))} to ${formatter.money(asked.to)}`;
  return (
    <li className={styles.job}>
      <div className={styles.who}>
        <h2 className={styles.name}>
          <Link href={`/jobs/${id}`}>{job.name}</Link>
        </h2>
        <p className={styles.quiet}>
          {job.customer || (job.madeFor === 'stock' ? 'made to stock' : 'to order')}
        </p>
      </div>
      <p className={styles.fact}>{formatter.count(pieces, 'piece')}</p>
      <p className={styles.fact}>{job.wantedOn === null ? 'no day set' : formatter.day(job.wantedOn)}</p>
      <p className={styles.price}>{price}</p>
      <div className={styles.acts}>
        <Button kind="quiet" onPress={onCopy}>
          Copy <span className="visuallyHidden">{job.name}</span>
        </Button>
        <Button kind="quiet" onPress={onRemove}>
          Remove <span className="visuallyHidden">{job.name}</span>
        </Button>
      </div>
    </li>
  );
}
