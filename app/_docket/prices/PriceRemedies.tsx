'use client';

import { Button } from '@/app/_controls/Button';
import type { BreakListFormat } from '@/app/_words/docket/breakListWords';
import { effectWords, remedyWords } from '@/app/_words/docket/remedyWords';
import type { RemedyOffer } from '@/lib/studies/breaks/remedyOffers';
import type { WrittenTariff } from '@/lib/studies/breaks/writtenTariff';
import type { Change } from '@/shared/finding';
import styles from './BreaksTest.module.css';

type PriceRemediesProps = Readonly<{
  remedies: readonly RemedyOffer[];
  tariff: WrittenTariff | null;
  piece: string;
  voice: BreakListFormat;
  stale: boolean;
  onTake: (name: string, changes: readonly Change[]) => void;
}>;

/** Ways out of a list in which more pieces cost less, each with what it does and a button that takes it. */
export function PriceRemedies({ remedies, tariff, piece, voice, stale, onTake }: PriceRemediesProps) {
  return (
    <>
      <h4 className={styles.sub}>What cures it</h4>
      <ol className={styles.cures}>
        {remedies.map((remedy) => {
          const { name, says, button } = remedyWords(remedy, tariff, piece, voice);
          return (
            <li className={styles.cure} key={remedy.kind}>
              <p>
                <strong>{name}.</strong> {says}
                <span className={styles.effect}>{effectWords(remedy, voice)}</span>
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
