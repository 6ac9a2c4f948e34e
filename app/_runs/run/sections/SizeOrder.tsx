'use client';

import { Button } from '@/app/_controls/Button';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import styles from '@/app/_runs/run/Run.module.css';
import { runTable } from '@/app/_words/making/runs/runTable';
import type { Run } from '@/shared/schemas/making/run';

/** Sizes as they are pressed one after the other, each to be moved. */
export function SizeOrder({ on }: Readonly<{ on: RunOnScreen }>) {
  const { planned, jobs, run, change } = on;
  const sizes = planned?.plan.sizes ?? [];
  if (sizes.length === 0) return <p>{runTable.noClock}</p>;
  const lineCount = new Set(sizes.map(({ jobId, lineId }) => `${jobId} ${lineId}`)).size;
  const nameOf = ({ jobId, lineId, size }: (typeof sizes)[number]): string => {
    const job = jobs.find(({ work }) => work.jobId === jobId)?.input.job;
    const line = job?.lines.find(({ id }) => id === lineId);
    return lineCount === 1 || line === undefined ? size : `${size}, ${line.name}`;
  };
  const swap = (at: number, to: number) => {
    const next = [...sizes];
    const [one] = next.splice(at, 1);
    if (one !== undefined) next.splice(to, 0, one);
    change('Order of the sizes', (now): Run => ({ ...now, sizesFirst: next.map((size) => ({ ...size })) }));
  };
  return (
    <div className={styles.stack}>
      <p className={styles.quiet}>{runTable.sizesTold}</p>
      <ol className={styles.rows}>
        {sizes.map((one, at) => {
          const name = nameOf(one);
          return (
            <li className={styles.row} key={`${one.jobId} ${one.lineId} ${one.size}`}>
              <span>
                {at + 1}. <bdi>{name}</bdi>
              </span>
              <span className={styles.ends}>
                <Button
                  kind="quiet"
                  spoken={`${runTable.earlier}: ${name}`}
                  blockedBy={at === 0 ? 'It is the first.' : undefined}
                  onPress={() => swap(at, at - 1)}
                >
                  {runTable.earlier}
                </Button>
                <Button
                  kind="quiet"
                  spoken={`${runTable.later}: ${name}`}
                  blockedBy={at === sizes.length - 1 ? 'It is the last.' : undefined}
                  onPress={() => swap(at, at + 1)}
                >
                  {runTable.later}
                </Button>
              </span>
            </li>
          );
        })}
      </ol>
      {run.sizesFirst.length > 0 && (
        <div>
          <Button onPress={() => on.set('Order of the sizes', ['sizesFirst'], [])}>
            {runTable.followRule}
          </Button>
        </div>
      )}
    </div>
  );
}
