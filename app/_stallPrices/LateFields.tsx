'use client';

import { Button } from '@/app/_controls/Button';
import { typing } from '@/app/_documents/typing';
import { NumberField } from '@/app/_fields/NumberField';
import { TimeField } from '@/app/_fields/TimeField';
import {
  cautionsTogether,
  floorWords,
  lateCaution,
  lateRangeWords,
  lateTimeWords,
  priceWords,
  rowName,
  undercutWords,
} from '@/app/_words/stall/priceWords';
import { standingAt } from '@/lib/stall/days/openHours';
import type { PricesOfDay } from '@/lib/stall/prices/pricesOfDay';
import { withPrice } from '@/lib/stall/prices/withPrice';
import { daysInOrder } from '@/lib/stall/sellingDays';
import { numberLimits } from '@/shared/limits';
import { stallDaySchema } from '@/shared/schemas/stallDay';
import styles from './Prices.module.css';
import { type PricesPart, priceWriter } from './pricesOnScreen';

type LateFieldsProps = Readonly<{ part: PricesPart; prices: PricesOfDay | null }>;

const MINUTES_OF_A_DAY = 1440;

/** Lower prices from a time of the last day on, each beside what it must not fall under. */
export function LateFields({ part, prices }: LateFieldsProps) {
  const { workspace, id, stallDay } = part;
  const { lastHour } = stallDay.prices;
  const target = { kind: 'stallDay', id } as const;
  const writer = priceWriter(workspace);
  if (lastHour === null) {
    const end = daysInOrder(stallDay).at(-1)?.toMinute ?? 17 * 60;
    const fromMinute = (end - 60 + MINUTES_OF_A_DAY) % MINUTES_OF_A_DAY;
    return (
      <Button
        onPress={() => {
          typing.ends();
          workspace.setField(target, priceWords.addLate, ['prices', 'lastHour'], { fromMinute, prices: [] });
        }}
      >
        {priceWords.addLate}
      </Button>
    );
  }
  return (
    <div className={styles.rows}>
      <TimeField
        label="From"
        value={lastHour.fromMinute}
        caution={lateTimeWords[standingAt(stallDay, lastHour.fromMinute)]}
        onCommit={(to) =>
          workspace.setField(target, 'Last hour from', ['prices', 'lastHour', 'fromMinute'], to)
        }
      />
      {(prices?.rows ?? []).map(({ row, price, floors, late, lateRange, atShop }) => {
        const name = rowName(row, true);
        return (
          <NumberField
            key={`${row.rangeId} ${row.goods.map(({ lineId, size }) => `${lineId} ${size}`).join()}`}
            label={`${name}, ${writer.price(price)} before`}
            width="narrow"
            unit={workspace.workshop.currency}
            value={late}
            {...numberLimits(stallDaySchema, ['prices', 'own', 0, 'price'])}
            whenEmpty={lateRange === null ? priceWords.lateEmpty : lateRangeWords(lateRange, writer)}
            hint={floorWords(floors, writer)}
            caution={
              late === null
                ? undefined
                : cautionsTogether(
                    lateCaution(late, price, floors, writer),
                    undercutWords(late, atShop, writer),
                  )
            }
            onCommit={(to) =>
              workspace.setField(
                target,
                `Last hour of ${name}`,
                ['prices', 'lastHour', 'prices'],
                withPrice(lastHour.prices, row.goods, row.sizes === null, to),
              )
            }
          />
        );
      })}
      <div>
        <Button
          kind="quiet"
          onPress={() => {
            typing.ends();
            workspace.setField(target, priceWords.removeLate, ['prices', 'lastHour'], null);
          }}
        >
          {priceWords.removeLate}
        </Button>
      </div>
    </div>
  );
}
