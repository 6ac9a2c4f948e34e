'use client';

import Link from 'next/link';
import { fieldId, fieldIdOf } from '@/app/_docket/common/fieldId';
import { useJob } from '@/app/_docket/common/useJob';
import { fieldAddress } from '@/app/_documents/fieldAddress';
import type { Where } from '@/shared/finding';
import type { Job } from '@/shared/schemas/job';
import styles from './ToFirstTypical.module.css';

type ToFirstTypicalProps = Readonly<{
  /** “9 of 45 figures are typical”. */
  words: string;
  /** Null where none is. */
  first: Where | null;
}>;

/** How many figures nobody has told yet, and the way to the first of them. */
export function ToFirstTypical({ words, first }: ToFirstTypicalProps) {
  const { input, show } = useJob();
  if (first === null) return words;
  const here = placeHere(first, input.job);
  const address = fieldAddress(first);
  if (here !== null)
    return (
      <button className={styles.way} type="button" onClick={() => show(here)}>
        {words}
      </button>
    );
  return address === null ? words : <Link href={address}>{words}</Link>;
}

// Helpers

/** Rates of the workshop stand on the docket, too, where a job may set its own. */
function placeHere(where: Where, job: Job): string | null {
  return where.document === 'workshop' && where.path[0] === 'rates'
    ? fieldId(where.path)
    : fieldIdOf(where, job);
}
