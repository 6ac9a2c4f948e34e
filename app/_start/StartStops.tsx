'use client';

import { SeverityShape } from '@/app/_controls/SeverityShape';
import { useTextContext } from '@/app/_fields/useTextContext';
import { PartMissing } from '@/app/_network/PartMissing';
import type { Fetched } from '@/app/_network/useLazy';
import type { findingWords } from '@/app/_words/findings/findingWords';
import type { Finding } from '@/shared/finding';
import styles from './StartPrice.module.css';

/** So many reasons are read at once. */
const MOST = 3;

type StartStopsProps = Readonly<{ stops: readonly Finding[]; words: Fetched<typeof findingWords> }>;

/** Why there is no price. */
export function StartStops({ stops, words }: StartStopsProps) {
  const context = useTextContext();
  if (words.kind === 'coming') return null;
  if (words.kind === 'missing') return <PartMissing what="Why there is no price" missing={words} />;
  return (
    <ul className={styles.stops}>
      {stops.slice(0, MOST).map((stop) => {
        const { sentence, detail } = words.value(stop, context);
        return (
          <li key={`${stop.id} ${stop.where.path.join(' ')}`} className={styles.stop}>
            <SeverityShape severity="stop" />
            <p>
              <strong>{sentence}</strong> <span className={styles.detail}>{detail}</span>
            </p>
          </li>
        );
      })}
    </ul>
  );
}
