'use client';

import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { strayNamesWords } from '@/app/_words/names/namesAnswerWords';
import type { OrderLine } from '@/shared/schemas/order';
import styles from './Names.module.css';
import type { NamesWorkspace } from './namesWorkspace';

type StrayNamesProps = Readonly<{ workspace: NamesWorkspace; orderId: string; stray: OrderLine }>;

/** Names that were typed for something the order makes no more: they stay until the maker removes them. */
export function StrayNames({ workspace, orderId, stray }: StrayNamesProps) {
  const formatter = formatterFor(useTextContext());
  return (
    <div className={styles.stray}>
      <p>{strayNamesWords(stray.names.length, formatter)}</p>
      <Fold summary="Look at them">
        <ul className={styles.plainList}>
          {stray.names.map(({ id, name, size, number }) => (
            <li key={id}>
              <bdi>{name}</bdi> {size} {number}
            </li>
          ))}
        </ul>
      </Fold>
      <Button
        kind="quiet"
        onPress={() =>
          workspace.changeOrder(orderId, 'Remove names of what is made no more', (order) => ({
            ...order,
            lines: order.lines.map((one) =>
              one.jobId === stray.jobId && one.lineId === stray.lineId ? { ...one, names: [] } : one,
            ),
          }))
        }
      >
        Remove them
      </Button>
    </div>
  );
}
