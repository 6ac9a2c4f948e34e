'use client';

import Link from 'next/link';
import { useMemo } from 'react';
import { FindingRow } from '@/app/_controls/FindingRow';
import { useWorkspace } from '@/app/_documents/useWorkspace';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useSteadyAsks } from '@/app/_studies/useSteadyAsks';
import { type StudyAsk, useStudies } from '@/app/_studies/useStudies';
import { formatterFor } from '@/app/_words/formatter';
import { paperNumberText } from '@/app/_words/paperNumberText';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import type { JobInput } from '@/shared/schemas/request';
import styles from './PriceLists.module.css';

type JobOnPriceListsProps = Readonly<{ jobId: string; input: JobInput }>;

/** On a job's docket: the price lists that went out with it and whose prices no longer hold. */
export function JobOnPriceLists({ jobId, input }: JobOnPriceListsProps) {
  const { lists } = useWorkspace();
  const formatter = formatterFor(useTextContext());
  const wanted = useMemo(
    () =>
      lists.flatMap(({ id, issued }): readonly StudyAsk<'compareItem'>[] => {
        const version = issued.newest?.body;
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
  const worn = lists.flatMap(({ id, list, issued: { newest } }) => {
    const answers = asks
      .filter(({ key }) => key.startsWith(`${id} `))
      .map(({ key }) => told.get(key)?.answer);
    const count = answers.reduce(
      (sum, answer) => sum + (answer?.kind === 'compared' ? answer.worn.length : 0),
      0,
    );
    return count === 0 || newest === null
      ? []
      : [{ id, name: list.name, number: paperNumberText(newest.number), count }];
  });
  const failure = asks.map(({ key }) => told.get(key)?.failure).find((one) => one != null) ?? null;
  const missing = <AnswerMissing what="Its price lists could not be looked at" failure={failure} />;
  if (worn.length === 0) return failure && missing;
  return (
    <>
      {missing}
      <ul className={styles.findings} aria-label="Price lists that went out with this job">
        {worn.map(({ id, name, number, count }) => (
          <FindingRow
            key={id}
            severity="note"
            sentence={
              <>
                {formatter.count(count, 'price')} of version {number} of{' '}
                <Link href={`/price-lists/${id}`}>{name}</Link> no longer {count === 1 ? 'holds' : 'hold'}.
              </>
            }
            detail="It went out with rates that have moved since. See there which, and by how much."
          />
        ))}
      </ul>
    </>
  );
}
