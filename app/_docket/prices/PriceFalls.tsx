'use client';

import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { namesInWords } from '@/app/_words/docket/jobWords';
import { listMoney, type PriceVoice } from '@/app/_words/docket/pricesWords';
import { formatterFor } from '@/app/_words/formatter';
import type { Staircase } from '@/lib/studies/breaks/staircase';
import type { MinorUnits } from '@/shared/money';
import styles from './PriceFalls.module.css';

type PriceFallsProps = Readonly<{
  stairs: Staircase;
  voice: PriceVoice;
  /** Takes the rule; null where it is not to be had, as it would sell under full cost. */
  onTake: (() => void) | null;
  blockedBy: string | undefined;
}>;

/** Orders that a larger one undercuts, what the rule makes of them, and the button that takes it. */
export function PriceFalls({ stairs, voice, onTake, blockedBy }: PriceFallsProps) {
  const formatter = formatterFor(useTextContext());
  const { falls } = stairs;
  const lost = falls.map((one) => listMoney(one.lost, voice));
  return (
    <div className={styles.box}>
      <h3>No order pays more than a larger one</h3>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">{voice.piece.many}</th>
            <th scope="col">now</th>
            <th scope="col">by the rule</th>
          </tr>
        </thead>
        <tbody>
          {falls.map(({ to, cheaperTotal, lost: over }) => (
            <tr key={to}>
              <th scope="row">{formatter.number(to, 0)}</th>
              <td>
                <s>{listMoney((cheaperTotal + over) as MinorUnits, voice)}</s>
              </td>
              <td>
                <strong>{listMoney(cheaperTotal, voice)}</strong>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {onTake !== null && (
        <Button kind="strong" blockedBy={blockedBy} onPress={onTake}>
          Use the rule
        </Button>
      )}
      <p className={styles.quiet}>
        It gives up {namesInWords(lost)} on orders that few buyers place.
        {onTake === null && ' Some of them would then be sold under full cost: look at the prices first.'}
      </p>
    </div>
  );
}
