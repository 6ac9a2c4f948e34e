'use client';

import Link from 'next/link';
import { CopiesPart } from '@/app/_copies/CopiesPart';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import styles from './WorkshopParts.module.css';
import type { WorkshopFields } from './workshopFields';

/** Copies of everything, records that cannot be read, and the way to a workshop of one's own. */
export function CopySection({ fields: { workspace } }: Readonly<{ fields: WorkshopFields }>) {
  return (
    <>
      <UnreadableRecords workspace={workspace} level={3} />
      <CopiesPart workspace={workspace} level={3} />
      <h3 className={styles.sub}>Begin anew</h3>
      <p className={styles.words}>
        <Link href="/start">Start your own workshop</Link> with typical figures, and put in those that matter
        most. You are asked before anything is taken away.
      </p>
    </>
  );
}
