'use client';

import Link from 'next/link';
import { Fold } from '@/app/_controls/Fold';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { paperNumberText } from '@/app/_words/paperNumberText';
import styles from './PriceLists.module.css';

/** Removing a list removes no paper: what went out of removed lists, folded away under those that are there. */
export function PapersWithoutList({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const { issued, lists, unreadable, workshop } = workspace;
  const formatter = formatterFor(workshop);
  // A list that cannot be read is told above, and is not removed.
  const gone = [...issued].filter(([listId]) => ![...lists, ...unreadable].some(({ id }) => id === listId));
  const count = gone.reduce(
    (sum, [, { versions, withdrawn }]) => sum + versions.length + withdrawn.length,
    0,
  );
  if (count === 0) return null;
  return (
    <Fold summary="Papers of removed lists" line={formatter.count(count, 'version')}>
      <ul className={styles.items}>
        {gone.flatMap(([listId, { versions, withdrawn, newest }]) => {
          const all = [...versions, ...withdrawn];
          const last = newest ?? all.at(-1);
          return last === undefined
            ? []
            : [
                <li key={listId} className={styles.item}>
                  <Link href={`/price-lists/${listId}`}>{last.body.title}</Link>:{' '}
                  {all
                    .map(
                      ({ number, body }) =>
                        `version ${paperNumberText(number)} of ${formatter.day(body.issuedOn)}`,
                    )
                    .join(', ')}
                </li>,
              ];
        })}
      </ul>
    </Fold>
  );
}
