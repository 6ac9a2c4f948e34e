'use client';

import { useRouter } from 'next/navigation';
import { useMemo } from 'react';
import { Button } from '@/app/_controls/Button';
import { ButtonLink } from '@/app/_controls/ButtonLink';
import { CardSection } from '@/app/_controls/CardSection';
import { newId } from '@/app/_documents/newId';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import styles from '@/app/_runs/run/Run.module.css';
import { runTable } from '@/app/_words/making/runs/runTable';
import { blanksAtHome } from '@/lib/making/list/blanksAtHome';
import { buyingListSchema } from '@/shared/schemas/making/supply';

/** Blanks the run takes beside what lies at home; what is short leads to a buying list made for it. */
export function GoodsSection({ on, numeral }: Readonly<{ on: RunOnScreen; numeral: number }>) {
  const { run, jobs, kept, workspace, formatter } = on;
  const { onHand, buyingLists } = workspace;
  const rows = useMemo(() => blanksAtHome(jobs, run.cover, onHand, kept), [jobs, run.cover, onHand, kept]);
  const short = rows.reduce((sum, row) => sum + (row.isBrought ? 0 : row.short), 0);
  const blanks = new Set(rows.map(({ blankId }) => blankId)).size;
  const router = useRouter();
  const own = new Set(run.works.map(({ jobId }) => jobId));
  const known = Object.entries(buyingLists).find(
    ([, list]) => list.archivedOn === null && list.works.some(({ jobId }) => own.has(jobId)),
  );
  const buy = () => {
    const id = newId();
    const works = run.works.map(({ jobId, orderId }) => ({ jobId, orderId }));
    const body = buyingListSchema.parse({ name: run.name, works, cover: run.cover });
    const label = `Buying list for ${run.name}`;
    const outcome = workspace.edit(label, [{ do: 'add', kind: 'buyingList', id, body }]);
    if (outcome.state === 'shown') router.push(`/making/buying/${id}`);
  };
  return (
    <CardSection
      {...{ numeral }}
      id="goods"
      heading={runTable.goods}
      answer={
        rows.length === 0 ? (
          runTable.noClock
        ) : short === 0 ? (
          runTable.enough
        ) : (
          <>
            <strong>{formatter.count(short, 'blank')}</strong> short
          </>
        )
      }
    >
      {rows.length > 0 && (
        <table className={styles.table} aria-label={runTable.goodsTable}>
          <thead>
            <tr>
              <th scope="col">{runTable.goodsHead.size}</th>
              <th scope="col">{runTable.goodsHead.take}</th>
              <th scope="col">{runTable.goodsHead.home}</th>
              <th scope="col">{runTable.goodsHead.short}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={`${row.blankId} ${row.size}`}>
                <th scope="row">
                  <bdi>{blanks === 1 ? row.size : `${row.blankName}, ${row.size}`}</bdi>
                </th>
                <td className={styles.figure}>{formatter.number(row.take)}</td>
                <td className={styles.figure}>
                  {row.home === null ? runTable.notCounted : formatter.number(row.home)}
                </td>
                <td className={row.short > 0 && !row.isBrought ? styles.short : styles.figure}>
                  {row.isBrought ? runTable.brought : formatter.number(row.short)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <div className={styles.stack}>
        <p className={styles.quiet}>{runTable.goodsTold}</p>
        <div className={styles.ends}>
          {known === undefined ? (
            <Button
              kind={short > 0 ? 'strong' : 'plain'}
              blockedBy={run.works.length === 0 ? 'A job comes first.' : undefined}
              onPress={buy}
            >
              {runTable.buy}
            </Button>
          ) : (
            <ButtonLink href={`/making/buying/${known[0]}`}>{runTable.toList}</ButtonLink>
          )}
        </div>
      </div>
    </CardSection>
  );
}
