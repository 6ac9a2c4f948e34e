'use client';

import type { CureOffer } from '@/lib/price/list/cureOffers';
import type { WrittenTariff } from '@/lib/price/list/writtenTariff';
import type { Change } from '@/shared/finding';
import { Button } from '../_shell/Button';
import { cureWords, effectWords } from './cureWords';
import type { ListVoice } from './listWords';
import styles from './PriceListTest.module.css';

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
