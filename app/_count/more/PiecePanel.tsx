'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { AmountField } from '@/app/_fields/AmountField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { NumberField } from '@/app/_fields/NumberField';
import { shortAmount } from '@/app/_words/stall/count/countWords';
import { exchangeWords, fullWords } from '@/app/_words/stall/count/pieceWords';
import { asPaid } from '@/lib/stall/count/asPaid';
import { goodsKey } from '@/lib/stall/count/goodsKey';
import { secondPrice } from '@/lib/stall/prices/secondPrice';
import { numberLimits } from '@/shared/limits';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { stallTapSchema, type Tap } from '@/shared/schemas/stallEvents';
import { dayCloseSchema } from '@/shared/schemas/stallPapers';
import type { TileGoods, TileRow } from '../tileRows';
import type { Counting } from '../useCount';
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
  const [own, setOwn] = useState<number | null>(null);
  const [back, setBack] = useState<number | null>(fromMinor(tile.minor as MinorUnits, plan.currency));
  const isTaxAdded = plan.taxMode === 'added';
  const second = secondPrice(plan, tile.minor);
  const counted = count.goods.find((one) => goodsKey(one) === tile.key);
  const { left = 0, brought = 0 } = counted ?? {};
  const seconds = counted === undefined ? 0 : counted.keptBrought - counted.keptSold + counted.seconds;
  const noPrice = own === null ? 'The price comes first.' : undefined;
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
      <EntryForm
        label="Sell at another price"
        className={styles.line}
        missing={noPrice}
        onEnter={() =>
          own !== null &&
          done({ what: 'sale', goods, minor: toMinor(own, plan.currency), isOwnPrice: true, pay })
        }
      >
        <AmountField
          label="Other price"
          currency={plan.currency}
          value={own}
          onCommit={setOwn}
          minorLimits={numberLimits(stallTapSchema, ['tap', 'minor'])}
        />
        <Button type="submit" blockedBy={noPrice}>
          Sell at it
        </Button>
      </EntryForm>
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
          Came back for it
        </Button>
        {isTaxAdded && <p className={styles.quiet}>Its tax goes back with it.</p>}
      </EntryForm>
      <Exchange {...{ counting, rows, tile }} onTap={done} />
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

type ExchangeProps = Pick<PiecePanelProps, 'counting' | 'rows' | 'tile'> &
  Readonly<{ onTap: (tap: Tap) => void }>;

/** This piece came back, and another goes. */
function Exchange({ counting, rows, tile, onTap }: ExchangeProps) {
  const { plan, ticket, locale } = counting;
  const [key, setKey] = useState<string | null>(null);
  const others = rows.flatMap(({ tiles, hasSizes, name }) =>
    tiles
      .filter((one) => one.key !== tile.key)
      .map((one) => ({ ...one, told: hasSizes ? one.name : `${one.name}, ${name}` })),
  );
  const other = others.find((one) => one.key === key);
  const exchange = (minor: number) => {
    if (other === undefined) return;
    const [back, out] = [tile.goods, other.goods].map(({ jobId, lineId, size }) => ({ jobId, lineId, size }));
    if (back !== undefined && out !== undefined)
      onTap({ what: 'exchange', back, out, minor, pay: ticket.pay });
  };
  const difference = other === undefined ? 0 : other.minor - tile.minor;
  return (
    <Fold summary="Exchange" line="it came back, another goes">
      <div className={styles.part}>
        <ChoiceField
          label="What goes instead"
          value={key}
          choices={others.map((one) => ({ value: one.key, label: `${one.told}, ${one.price}` }))}
          onCommit={setKey}
          width="full"
        />
        <div className={styles.keys}>
          {difference !== 0 && (
            <Button kind="strong" onPress={() => exchange(difference)}>
              {exchangeWords(asPaid(plan, difference), plan.currency, locale)}
            </Button>
          )}
          <Button
            kind={difference === 0 ? 'strong' : 'plain'}
            blockedBy={other === undefined ? 'What goes comes first.' : undefined}
            onPress={() => exchange(0)}
          >
            Exchange, no money
          </Button>
        </div>
      </div>
    </Fold>
  );
}
