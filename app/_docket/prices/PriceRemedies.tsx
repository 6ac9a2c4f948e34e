'use client';

import { Button } from '@/app/_controls/Button';
import type { ListVoice } from '@/app/_words/docket/breakListWords';
import { cureWords, effectWords } from '@/app/_words/docket/remedyWords';
import type { CureOffer } from '@/lib/studies/breaks/remedyOffers';
import type { WrittenTariff } from '@/lib/studies/breaks/writtenTariff';
import type { Change } from '@/shared/finding';
import styles from './BreaksTest.module.css';

type PriceCuresProps = Readonly<{
  cures: readonly CureOffer[];
  tariff: WrittenTariff | null;
  piece: string;
  voice: ListVoice;
  stale: boolean;
  onTake: (name: string, changes: readonly Change[]) => void;
}>;

/** Ways out of a list in which more pieces cost less, each with what it does and a button that takes it. */
export function PriceCures({ cures, tariff, piece, voice, stale, onTake }: PriceCuresProps) {
  return (
    <>
      <h4 className={styles.sub}>What cures it</h4>
      <ol className={styles.cures}>
        {cures.map((cure) => {
          const { name, says, button } = cureWords(cure, tariff, piece, voice);
          return (
            <li className={styles.cure} key={cure.kind}>
              <p>
                <strong>{name}.</strong> {says}
                <span className={styles.effect}>{effectWords(cure, voice)}</span>
              </p>
              <Button
                blockedBy={stale ? 'The job has changed; its list is being looked at anew.' : undefined}
                onPress={() => onTake(name, cure.changes)}
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
