'use client';

import { Button } from '@/app/_controls/Button';
import { typing } from '@/app/_documents/typing';
import { NumberField } from '@/app/_fields/NumberField';
import { formatterFor } from '@/app/_words/formatter';
import { carWords, floatWords } from '@/app/_words/stall/carWords';
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
  const known = cashOf(workshop.currency);
  const values = [
    ...new Set([
      ...(known === null ? [] : [...known.notes, ...known.coins]),
      ...float.map(({ value }) => value),
    ]),
  ].sort((one, other) => other - one);
  const countOf = (value: number) => float.find((one) => one.value === value)?.count ?? 0;
  const set = (to: Coins | null) => setField(target, 'Float', ['float', 'coins'], to);
  const withCount = (value: number, count: number | null): Coins =>
    values
      .map((one) => ({ value: one, count: one === value ? (count ?? 0) : countOf(one) }))
      .filter((one) => one.count > 0);
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
      <ul className={styles.coins} aria-label="In the tin">
        {values.map((value) => (
          <li key={value}>
            <NumberField
              label={`× ${formatter.number(value)}`}
              width="narrow"
              value={countOf(value)}
              {...numberLimits(stallDaySchema, ['float', 'coins', 0, 'count'])}
              onCommit={(to) => set(withCount(value, to))}
            />
          </li>
        ))}
      </ul>
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
