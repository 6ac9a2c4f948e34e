'use client';

import { LineNames } from './LineNames';
import styles from './Names.module.css';
import type { NamesWorkspace } from './namesWorkspace';
import { namedLines, strayLines } from './orderNames';
import { StrayNames } from './StrayNames';

type NamesPartProps = Readonly<{ workspace: NamesWorkspace; orderId: string }>;

/** Who gets which size of what is made for an order. */
export function NamesPart({ workspace, orderId }: NamesPartProps) {
  const order = workspace.orders.find(({ id }) => id === orderId)?.order;
  if (order === undefined) return null;
  const lines = namedLines(order, workspace.jobs, workspace.blanks);
  return (
    <div className={styles.part}>
      {lines.length === 0 && (
        <p className={styles.more}>Names belong to what is made: add a job to the order first.</p>
      )}
      {lines.map((named) => (
        <LineNames
          key={`${named.jobId} ${named.line.id}`}
          {...{ workspace, orderId, order, named }}
          isAlone={lines.length === 1}
        />
      ))}
      {strayLines(order, lines).map((stray) => (
        <StrayNames key={`${stray.jobId} ${stray.lineId}`} {...{ workspace, orderId, stray }} />
      ))}
    </div>
  );
}
