'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { besideLeftWords, leftWords } from '@/app/_words/stall/count/countWords';
import { exchangeWords } from '@/app/_words/stall/count/pieceWords';
import { asPaid } from '@/lib/stall/count/asPaid';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { Tap } from '@/shared/schemas/stallEvents';
import type { TileGoods, TileRow } from '../tileRows';
import type { Counting } from '../useCount';
import styles from './Panel.module.css';

type ExchangePartProps = Readonly<{
  counting: Counting;
  rows: readonly TileRow[];
  tile: TileGoods;
  onTap: (tap: Tap) => void;
}>;

/** This piece came back, and another goes. */
export function ExchangePart({ counting, rows, tile, onTap }: ExchangePartProps) {
  const { plan, ticket, locale } = counting;
  const [key, setKey] = useState<string | null>(null);
  const others = othersOf(counting, rows, tile);
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
          choices={others.map((one) => ({ value: one.key, label: `${one.told}, ${one.price}, ${one.left}` }))}
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

// Helpers

/** All other goods, each with what is left of it; those that are gone last, for a count can be wrong. */
function othersOf({ count }: Counting, rows: readonly TileRow[], tile: TileGoods) {
  const lefts = new Map(count.goods.map((goods) => [goodsKey(goods), goods.left]));
  const others = rows.flatMap(({ tiles, hasSizes, name }) =>
    tiles
      .filter((one) => one.key !== tile.key)
      .map((one) => {
        const left = lefts.get(one.key) ?? 0;
        return {
          ...one,
          told: hasSizes ? one.name : `${one.name}, ${name}`,
          isGone: one.isPlanned && left <= 0,
          left: one.isPlanned ? leftWords(left) : besideLeftWords(left),
        };
      }),
  );
  return [...others.filter(({ isGone }) => !isGone), ...others.filter(({ isGone }) => isGone)];
}
