'use client';

import Link from 'next/link';
import { useJob } from '@/app/_docket/common/useJob';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import styles from './PriceCards.module.css';

/** Asks what a day at the stall costs, while nobody has said it; the prices bear nothing of it. */
export function DayNotCounted() {
  const { input } = useJob();
  const { channels } = input.workshop;
  const at = channels.findIndex(({ id }) => id === input.job.channelId);
  const channel = channels[at];
  if (channel?.kind !== 'stall' || (channel.dayCost !== null && channel.dayPieces !== null)) return null;
  const field = channel.dayCost === null ? 'dayCost' : 'dayPieces';
  return (
    <p className={styles.day}>
      What a stall day costs is not counted:{' '}
      <Link href={`/workshop#${workshopFieldId(['channels', at, field])}`}>
        {field === 'dayCost' ? 'type it' : 'type how many pieces one sells'}
      </Link>
    </p>
  );
}
