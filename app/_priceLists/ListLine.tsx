'use client';

import Link from 'next/link';
import { Button } from '@/app/_controls/Button';
import type { KeptList } from '@/app/_documents/documentsByKind';
import type { ReadyMaker } from '@/app/_keeping/WithWorkspace';
import { speakerOf } from '@/app/_words/formatter';
import { standingLine } from '@/app/_words/priceLists/standingLineWords';
import styles from './Lists.module.css';
import { useListStates } from './useListStates';

type ListLineProps = Readonly<{ kept: KeptList; maker: ReadyMaker; onRemove: () => void }>;

/** One price list: what it is called, what went out last, and whether that still holds. */
export function ListLine({ kept: { id, list }, maker, onRemove }: ListLineProps) {
  const speak = speakerOf(maker.workshop);
  const newest = list.versions.at(-1);
  const standings = useListStates(maker, newest);
  return (
    <li className={styles.line}>
      <div>
        <h2 className={styles.name}>
          <Link href={`/price-lists/${id}`}>{list.name}</Link>
        </h2>
        <p className={styles.quiet}>
          {newest === undefined
            ? `not issued yet, ${speak.count(list.items.length, 'item')}`
            : `version ${newest.number}, ${speak.count(newest.items.length, 'item')}, issued ${speak.day(newest.issuedOn)}, valid until ${speak.day(newest.validUntil)}`}
        </p>
      </div>
      <p className={styles.state}>{newest !== undefined && standingLine(standings, speak)}</p>
      <Button kind="quiet" onPress={onRemove}>
        Remove <span className="visuallyHidden">{list.name}</span>
      </Button>
    </li>
  );
}
