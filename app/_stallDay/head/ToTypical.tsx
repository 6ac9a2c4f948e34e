import Link from 'next/link';
import { fieldAddress, jobFieldId, stallFieldId } from '@/app/_documents/fieldAddress';
import type { StallPlan } from '@/app/_stallDay/stallOnScreen';
import type { Where } from '@/shared/finding';
import styles from './StallPlate.module.css';

type ToTypicalProps = StallPlan['restsOn'] & Readonly<{ show: (fieldId: string) => void }>;

/** How many figures nobody has told yet, and the way to the first of them. */
export function ToTypical({ figures, typical, first, show }: ToTypicalProps) {
  if (first === null) return 'All figures are yours';
  const words = `${typical} of ${figures} are typical`;
  if (first.document === 'stallDay')
    return (
      <button className={styles.typical} type="button" onClick={() => show(stallFieldId(first.path))}>
        {words}
      </button>
    );
  const address = addressOf(first);
  return address === null ? (
    words
  ) : (
    <Link className={styles.typical} href={address}>
      {words}
    </Link>
  );
}

// Helpers

const addressOf = (where: Where): string | null =>
  where.document === 'job' && where.id !== undefined
    ? `/jobs/${where.id}#${jobFieldId(where.path)}`
    : fieldAddress(where);
