'use client';

import { Button } from '@/app/_controls/Button';
import { typing } from '@/app/_documents/typing';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { NumberField } from '@/app/_fields/NumberField';
import {
  cautionsTogether,
  floorWords,
  neighbourWords,
  priceCaution,
  priceWords,
  rowName,
  undercutWords,
} from '@/app/_words/stall/priceWords';
import type { PriceOfDay, PricesOfDay } from '@/lib/stall/prices/pricesOfDay';
import { withPrice } from '@/lib/stall/prices/withPrice';
import { numberLimits } from '@/shared/limits';
import { stallDaySchema } from '@/shared/schemas/stallDay';
import { currencyDigits } from '@/shared/tables/currencies';
import styles from './Prices.module.css';
import { endingsOf, type PricesPart, priceWriter } from './pricesOnScreen';

type PriceTableProps = Readonly<{
  part: PricesPart;
  prices: PricesOfDay | null;
  step: number;
  onStep: (step: number) => void;
}>;

/** Each price with its neighbours on the endings, and what each would do to the day. */
export function PriceTable({ part, prices, step, onStep }: PriceTableProps) {
  if (prices === null) return <p>{priceWords.none}</p>;
  const writer = priceWriter(part.workspace);
  return (
    <div className={styles.rows}>
      <ChoiceField
        label={priceWords.ending}
        width="narrow"
        value={String(step)}
        choices={endingsOf(part).map((one) => ({ value: String(one), label: writer.price(one) }))}
        onCommit={(value) => onStep(Number(value))}
      />
      {prices.rows.map((price) => (
        <PriceFields
          key={`${price.row.rangeId} ${price.row.goods.map(({ lineId, size }) => `${lineId} ${size}`).join()}`}
          {...{ part, price }}
          isOfAll={prices.rows.every(
            ({ row }) => row.rangeId !== price.row.rangeId || row.designs.length === price.row.designs.length,
          )}
        />
      ))}
    </div>
  );
}

// Helpers

type PriceFieldsProps = Readonly<{ part: PricesPart; price: PriceOfDay; isOfAll: boolean }>;

function PriceFields({ part, price: of, isOfAll }: PriceFieldsProps) {
  const { workspace, id } = part;
  const { row, price, neighbours, floors, ceiling, atShop } = of;
  const writer = priceWriter(workspace);
  const { currency } = workspace.workshop;
  const name = rowName(row, isOfAll);
  const set = (to: number | null) =>
    workspace.changeStallDay(
      id,
      `Price of ${name}`,
      (day) => ({
        ...day,
        prices: { ...day.prices, own: withPrice(day.prices.own, row.goods, row.sizes === null, to) },
      }),
      `price ${name} ${typing.act()}`,
    );
  return (
    <section className={styles.price} aria-label={name}>
      <NumberField
        label={name}
        width="narrow"
        unit={currency}
        minDecimals={Number.isInteger(price) ? 0 : (currencyDigits(currency) ?? 0)}
        value={price}
        {...numberLimits(stallDaySchema, ['prices', 'own', 0, 'price'])}
        whenEmpty={priceWords.ownPrice}
        caution={cautionsTogether(
          priceCaution(price, floors, ceiling, writer),
          undercutWords(price, atShop, writer),
        )}
        hint={floorWords(floors, writer)}
        onCommit={set}
      />
      <ul className={styles.neighbours}>
        {neighbours.rows.map((neighbour) => (
          <li key={neighbour.which} className={styles.neighbour}>
            <span>
              <strong>{writer.price(neighbour.price)}</strong> {neighbourWords(neighbour, writer)}
              {neighbours.recommended === neighbour.which && <em> {priceWords.recommended}</em>}
            </span>
            {neighbour.which !== 'now' && (
              <Button
                spoken={`${priceWords.take} ${writer.price(neighbour.price)} for ${name}`}
                onPress={() => {
                  typing.ends();
                  set(neighbour.price);
                }}
              >
                {priceWords.take} {writer.price(neighbour.price)}
              </Button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
