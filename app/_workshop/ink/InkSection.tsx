'use client';

import { laterParts } from '@/app/_workshop/laterParts';
import { RateLines } from '@/app/_workshop/RateLines';
import styles from '@/app/_workshop/WorkshopParts.module.css';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { FetchedFields } from './FetchedFields';

/** What ink costs and how much a print takes: typical figures, and the maker's own record that measures them. */
export function InkSection({ fields }: Readonly<{ fields: WorkshopFields }>) {
  return (
    <>
      <RateLines fields={fields} groups={['ink']} />
      <h3 className={styles.sub} id="ink-record">
        Ink record
      </h3>
      <p className={styles.words}>
        Note what you pour in, always to the same mark, and what you print in between. After some two hundred
        prints the record knows better than any typical figure how much ink your printer lays down.
      </p>
      <FetchedFields part={laterParts.ink} what="The ink record" fields={fields} />
    </>
  );
}
