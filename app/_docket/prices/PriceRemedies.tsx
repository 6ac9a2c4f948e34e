'use client';

import { Button } from '@/app/_controls/Button';
import type { BreakListFormat } from '@/app/_words/docket/breakListWords';
import { effectWords, remedyWords } from '@/app/_words/docket/remedyWords';
import type { WrittenTariff } from '@/lib/price/list/selling';
import type { RemedyOffer } from '@/lib/studies/breaks/remedyOffers';
import type { Change } from '@/shared/finding';
import styles from './BreaksTest.module.css';

type PriceRemediesProps = Readonly<{
  remedies: readonly RemedyOffer[];
  tariff: WrittenTariff | null;
  piece: string;
  format: BreakListFormat;
  stale: boolean;
  onTake: (name: string, changes: readonly Change[]) => void;
}>;

/** Ways out of a list in which more pieces cost less, each with what it does and a button that takes it. */
export function PriceRemedies({ remedies, tariff, piece, format, stale, onTake }: PriceRemediesProps) {
  return (
    <>
      <h4 className={styles.sub}>What mends it</h4>
      <ol className={styles.remedies}>
        {remedies.map((remedy) => {
          const { name, says, button } = remedyWords(remedy, tariff, piece, format);
          return (
            <li className={styles.remedy} key={remedy.kind}>
              <p>
                <strong>{name}.</strong> {says}
                <span className={styles.effect}>{effectWords(remedy, format)}</span>
              </p>
              <Button
                blockedBy={stale ? 'The job has changed; its list is being looked at anew.' : undefined}
                onPress={() => onTake(name, remedy.changes)}
              >
                {button}
              </Button>
            </li>
          );
        })}
      </ol>
    </>
  );
}
