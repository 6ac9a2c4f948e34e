'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { AmountField } from '@/app/_fields/AmountField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { NumberField } from '@/app/_fields/NumberField';
import { shortAmount } from '@/app/_words/stall/count/countWords';
import { fullWords, refundWords } from '@/app/_words/stall/count/pieceWords';
import { asPaid } from '@/lib/stall/count/asPaid';
import { goodsKey } from '@/lib/stall/goodsKey';
import { secondPrice } from '@/lib/stall/prices/secondPrice';
import { numberLimits } from '@/shared/limits';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { stallTapSchema, type Tap } from '@/shared/schemas/stallEvents';
import { dayCloseSchema } from '@/shared/schemas/stallPapers';
import type { TileGoods, TileRow } from '../tileRows';
import type { Counting } from '../useCount';
import { ExchangePart } from './ExchangePart';
import { OwnPricePart } from './OwnPricePart';
import styles from './Panel.module.css';

type PiecePanelProps = Readonly<{
  counting: Counting;
  rows: readonly TileRow[];
  tile: TileGoods;
  onDone: () => void;
}>;

/** What else can become of a piece than to be sold at its price. */
export function PiecePanel({ counting, rows, tile, onDone }: PiecePanelProps) {
  const { plan, ticket, count, locale, tap } = counting;
  const { jobId, lineId, size } = tile.goods;
  const goods = { jobId, lineId, size };
  const { pay } = ticket;
  const [back, setBack] = useState<number | null>(fromMinor(tile.minor as MinorUnits, plan.currency));
  const isTaxAdded = plan.taxMode === 'added';
  const second = secondPrice(plan, tile.minor);
  const counted = count.goods.find((one) => goodsKey(one) === tile.key);
  const { left = 0, brought = 0 } = counted ?? {};
  const seconds = counted === undefined ? 0 : counted.keptBrought - counted.keptSold + counted.seconds;
  // With the tax that goes back with it.
  const given = back === null ? null : asPaid(plan, toMinor(back, plan.currency));
  const noneBack = back === null ? 'What was paid comes first.' : undefined;
  const done = (one: Tap) => {
    if (tap(one)) onDone();
  };
  return (
    <>
      {left <= 0 && (
        <Button onPress={() => done({ what: 'sale', goods, minor: tile.minor, pay })}>
          Sell one even so, {tile.price}
        </Button>
      )}
      <OwnPricePart {...{ counting, tile }} onTap={done} />
      {second !== null && (
        <Button onPress={() => done({ what: 'sale', goods, minor: second, isSecond: true, pay })}>
          Sell a second, {shortAmount(second, plan.currency, locale)}
          {seconds > 0 && `, ${seconds} here`}
        </Button>
      )}
      <div className={styles.keys}>
        <Button onPress={() => done({ what: 'putBack', goods })}>Put back, the price</Button>
        <Button onPress={() => done({ what: 'asked', goods, words: '' })}>Asked for</Button>
        <Button onPress={() => done({ what: 'given', goods })}>Given away</Button>
        <Button onPress={() => done({ what: 'damaged', goods, isSecond: false })}>Damaged, waste</Button>
        <Button onPress={() => done({ what: 'damaged', goods, isSecond: true })}>Damaged, a second</Button>
      </div>
      <EntryForm
        label="A piece that came back"
        className={styles.line}
        missing={noneBack}
        onEnter={() =>
          back !== null && done({ what: 'refund', goods, minor: toMinor(back, plan.currency), pay })
        }
      >
        <AmountField
          label={isTaxAdded ? 'Paid for it, without tax' : 'Paid for it'}
          currency={plan.currency}
          value={back}
          onCommit={setBack}
          minorLimits={numberLimits(stallTapSchema, ['tap', 'minor'])}
        />
        <Button type="submit" blockedBy={noneBack}>
          {refundWords(given, plan.currency, locale)}
        </Button>
        {isTaxAdded && <p className={styles.quiet}>Its tax goes back with it.</p>}
      </EntryForm>
      <ExchangePart {...{ counting, rows, tile }} onTap={done} />
      <Fold summary="More were put out" line={`${Math.max(0, left)} left`}>
        <PutOut brought={brought} onPutOut={(pieces) => done({ what: 'refill', goods, pieces })} />
      </Fold>
      <p className={styles.quiet}>
        By {pay === 'cash' ? 'cash' : 'card'}, as it is set; {shortAmount(tile.minor, plan.currency, locale)}{' '}
        {plan.currency} is the price now.
      </p>
    </>
  );
}

// Helpers

type PutOutProps = Readonly<{ brought: number; onPutOut: (pieces: number) => void }>;

/** So many at once, and no more in all than the close of the day can hold: else it could not be closed. */
function PutOut({ brought, onPutOut }: PutOutProps) {
  const [more, setMore] = useState<number | null>(null);
  const limits = numberLimits(stallTapSchema, ['tap', 'pieces']);
  const room = (numberLimits(dayCloseSchema, ['goods', 0, 'brought']).max ?? Infinity) - brought;
  const missing = more === null ? 'How many comes first.' : undefined;
  if (room < 1) return <p>{fullWords}</p>;
  return (
    <EntryForm
      label="Pieces put out"
      className={styles.line}
      missing={missing}
      onEnter={() => more !== null && onPutOut(more)}
    >
      <NumberField
        label="Pieces put out"
        value={more}
        onCommit={setMore}
        width="narrow"
        {...limits}
        max={Math.min(limits.max ?? Infinity, room)}
      />
      <Button type="submit" blockedBy={missing}>
        Count them in
      </Button>
    </EntryForm>
  );
}
