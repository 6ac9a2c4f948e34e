'use client';

import Link from 'next/link';
import { useMemo } from 'react';
import type { JobInput } from '@/shared/schemas/request';
import { useMaker } from '../_documents/useMaker';
import { useTextContext } from '../_fields/useTextContext';
import { FindingRow } from '../_figures/FindingRow';
import { useSteadyAsks } from '../_studies/useSteadyAsks';
import { type StudyAsk, useStudies } from '../_studies/useStudies';
import { speakerOf } from '../_text/speaker';
import styles from './Lists.module.css';

type JobOnListsProps = Readonly<{ jobId: string; input: JobInput }>;

/** On a job's docket: the price lists that went out with it and whose prices no longer hold. */
export function JobOnLists({ jobId, input }: JobOnListsProps) {
  const { lists } = useMaker();
  const speak = speakerOf(useTextContext());
  const wanted = useMemo(
    () =>
      lists.flatMap(({ id, list }): readonly StudyAsk<'compareItem'>[] => {
        const version = list.versions.at(-1);
        const items = version?.items.filter((item) => item.jobId === jobId) ?? [];
        return version === undefined
          ? []
          : items.map((item) => ({
              key: `${id} ${item.id}`,
              input,
              question: { item, currency: version.currency, taxMode: version.taxMode },
            }));
      }),
    [lists, jobId, input],
  );
  const asks = useSteadyAsks(wanted);
  const told = useStudies('compareItem', asks);
  const worn = lists.flatMap(({ id, list }) => {
    const answers = asks
      .filter(({ key }) => key.startsWith(`${id} `))
      .map(({ key }) => told.get(key)?.answer);
    const count = answers.reduce(
      (sum, answer) => sum + (answer?.kind === 'compared' ? answer.worn.length : 0),
      0,
    );
    return count === 0 ? [] : [{ id, name: list.name, number: list.versions.at(-1)?.number, count }];
  });
  if (worn.length === 0) return null;
  return (
    <ul className={styles.findings} aria-label="Price lists that went out with this job">
      {worn.map(({ id, name, number, count }) => (
        <FindingRow
          key={id}
          severity="note"
          sentence={
            <>
              {speak.count(count, 'price')} of version {number} of{' '}
              <Link href={`/price-lists/${id}`}>{name}</Link> no longer {count === 1 ? 'holds' : 'hold'}.
            </>
          }
          detail="It went out with rates that have moved since. See there which, and by how much."
        />
      ))}
    </ul>
  );
}
