'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { AmountField } from '@/app/_fields/AmountField';
import { CheckField } from '@/app/_fields/CheckField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { doubtWords, joinsSetLabel, ownPriceDoubt } from '@/app/_words/stall/count/pieceWords';
import { numberLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import { stallTapSchema, type Tap } from '@/shared/schemas/stallEvents';
import type { TileGoods } from '../tileRows';
import type { Counting } from '../useCount';
import styles from './Panel.module.css';

type OwnPricePartProps = Readonly<{ counting: Counting; tile: TileGoods; onTap: (tap: Tap) => void }>;

/** Another price than that of the hour; one that looks mistyped is asked about before it is sold at. */
export function OwnPricePart({ counting: { plan, ticket, locale }, tile, onTap }: OwnPricePartProps) {
  const { jobId, lineId, size } = tile.goods;
  const goods = { jobId, lineId, size };
  const [own, setOwn] = useState<number | null>(null);
  const [joinsSet, setJoinsSet] = useState(false);
  /** The price that is asked about, whole minor units. */
  const [asked, setAsked] = useState<number | null>(null);
  const noPrice = own === null ? 'The price comes first.' : undefined;
  const sell = (minor: number) =>
    onTap({
      ...{ what: 'sale', goods, minor, isOwnPrice: true, pay: ticket.pay },
      ...(joinsSet ? { joinsSet: true } : {}),
    });
  const enter = () => {
    if (own === null) return;
    const minor = toMinor(own, plan.currency);
    if (ownPriceDoubt(minor, tile.minor) === null) sell(minor);
    else setAsked(minor);
  };
  const doubt = asked === null ? null : ownPriceDoubt(asked, tile.minor);
  return (
    <>
      <EntryForm label="Sell at another price" className={styles.line} missing={noPrice} onEnter={enter}>
        <AmountField
          label="Other price"
          currency={plan.currency}
          value={own}
          onCommit={(to) => {
            setOwn(to);
            setAsked(null);
          }}
          minorLimits={numberLimits(stallTapSchema, ['tap', 'minor'])}
        />
        <Button type="submit" blockedBy={noPrice}>
          Sell at it
        </Button>
        {plan.sets.length > 0 && (
          <div className={styles.across}>
            <CheckField label={joinsSetLabel} checked={joinsSet} onCommit={setJoinsSet} />
          </div>
        )}
      </EntryForm>
      {asked !== null && doubt !== null && (
        <div className={styles.part} role="alert">
          <p>{doubtWords(doubt, { asked, usual: tile.minor }, plan.currency, locale)}</p>
          <div className={styles.keys}>
            {doubt === 'nothing' && (
              <Button kind="strong" onPress={() => onTap({ what: 'given', goods })}>
                Given away
              </Button>
            )}
            <Button onPress={() => sell(asked)}>Sell at it all the same</Button>
          </div>
        </div>
      )}
    </>
  );
}
