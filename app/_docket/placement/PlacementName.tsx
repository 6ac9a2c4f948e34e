'use client';

import { SeverityShape } from '@/app/_controls/SeverityShape';
import { useJob } from '@/app/_docket/common/useJob';
import styles from './PlacementBody.module.css';

type PlacementNameProps = Readonly<{ name: string; path: readonly (string | number)[] }>;

/** The name of a print on its fold, with the gravest that the checks found inside. */
export function PlacementName({ name, path }: PlacementNameProps) {
  const { stops, cautions } = useJob().worries(path);
  const worst = stops > 0 ? 'stop' : 'caution';
  const count = stops > 0 ? stops : cautions;
  return (
    <>
      {name}
      {count > 0 && (
        <span className={styles.worry}>
          <SeverityShape severity={worst} />
          <span className="visuallyHidden">
            {count} {count === 1 ? worst : `${worst}s`}
          </span>
        </span>
      )}
    </>
  );
}
