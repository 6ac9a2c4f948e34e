'use client';

import { Button } from '@/app/_controls/Button';
import { typing } from '@/app/_documents/typing';
import { CoinCounts } from '@/app/_fields/CoinCounts';
import { NumberField } from '@/app/_fields/NumberField';
import { formatterFor } from '@/app/_words/formatter';
import { carWords, floatWords } from '@/app/_words/stall/carWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { numberLimits } from '@/shared/limits';
import { type Coins, stallDaySchema } from '@/shared/schemas/stallDay';
import { cashOf } from '@/shared/tables/coins';
import styles from './Car.module.css';
import { type CarOnScreen, type StallPart, worthOf } from './carOnScreen';

/** What goes into the tin: how many of each note and coin, and what the advice rests on. */
export function FloatFields({ part, car }: Readonly<{ part: StallPart; car: CarOnScreen }>) {
  const { workspace, id, stallDay } = part;
  const { advice, float } = car;
  const { workshop, setField } = workspace;
  const formatter = formatterFor(workshop);
  const target = { kind: 'stallDay', id } as const;
  const set = (to: Coins | null) => setField(target, 'Float', ['float', 'coins'], to);
  const setCount = (value: number, count: number | null) => {
    const others = float.filter((one) => one.value !== value);
    // None of a value that the currency has needs no line; another's field would go with it.
    const isKept = (count ?? 0) > 0 || cashOf(workshop.currency) === null;
    const next = isKept ? [...others, { value, count: count ?? 0 }] : others;
    set(next.toSorted((one, other) => other.value - one.value));
  };
  return (
    <div className={styles.rows}>
      <p>
        <strong>{formatter.money(worthOf(float))}</strong> {floatWords(advice, formatter)}
      </p>
      <NumberField
        label="Tickets in the first 90 minutes"
        width="narrow"
        value={stallDay.float.firstTickets}
        {...numberLimits(stallDaySchema, ['float', 'firstTickets'])}
        whenEmpty="Empty follows what is expected."
        onCommit={(to) => setField(target, 'Tickets in the first 90 minutes', ['float', 'firstTickets'], to)}
      />
      <fieldset>
        <legend className="visuallyHidden">In the tin</legend>
        <div className={styles.rows}>
          <CoinCounts
            currency={workshop.currency}
            locale={usableLocale(workshop.locale)}
            coins={float}
            otherwise={0}
            idStart="stall-float-coin-"
            onCount={setCount}
          />
        </div>
      </fieldset>
      {stallDay.float.coins !== null && advice.kind === 'advised' && (
        <div>
          <Button
            onPress={() => {
              typing.ends();
              set(null);
            }}
          >
            {carWords.follow}: {formatter.money(advice.total)}
          </Button>
        </div>
      )}
    </div>
  );
}
