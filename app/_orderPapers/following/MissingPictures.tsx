import Link from 'next/link';
import { FindingRow } from '@/app/_controls/FindingRow';
import styles from '@/app/_orderPapers/OrderPapers.module.css';
import { missingPicturesWords } from '@/app/_words/orders/papers/followingWords';
import type { Proof } from '@/shared/schemas/orderPapers';

/** Cautions of a proof that shows no picture where one will be printed, each with the way to the job that lacks it. */
export function MissingPictures({ goods }: Pick<Proof, 'goods'>) {
  const names = new Map<string, Set<string>>();
  for (const { jobId, prints } of goods) {
    for (const { picture, artwork } of prints) {
      if (picture === null) names.set(jobId, (names.get(jobId) ?? new Set()).add(artwork.name));
    }
  }
  if (names.size === 0) return null;
  return (
    <ul className={styles.findings}>
      {[...names].map(([jobId, ofJob]) => (
        <FindingRow key={jobId} severity="caution" {...missingPicturesWords([...ofJob])}>
          <Link href={`/jobs/${jobId}`}>Go to the job</Link>
        </FindingRow>
      ))}
    </ul>
  );
}
