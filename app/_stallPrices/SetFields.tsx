'use client';

import { Button } from '@/app/_controls/Button';
import { newId } from '@/app/_documents/newId';
import { typing } from '@/app/_documents/typing';
import { CheckField } from '@/app/_fields/CheckField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { priceWords, setLeftOutWords, setWords } from '@/app/_words/stall/priceWords';
import type { PricesOfDay } from '@/lib/stall/prices/pricesOfDay';
import { mostEntries, numberLimits, textLimits } from '@/shared/limits';
import { type SetOffer, stallDaySchema } from '@/shared/schemas/stallDay';
import styles from './Prices.module.css';
import { type PricesPart, priceWriter } from './pricesOnScreen';

const most = mostEntries(stallDaySchema, ['prices', 'sets']);

type SetFieldsProps = Readonly<{ part: PricesPart; prices: PricesOfDay | null }>;

/** Several pieces for one price, and what that does. */
export function SetFields({ part, prices }: SetFieldsProps) {
  const { workspace, id, stallDay } = part;
  const { sets } = stallDay.prices;
  const add = () => {
    typing.ends();
    const set: SetOffer = {
      ...{ id: newId(), name: 'Two together', pieces: 2, price: null, sizes: null },
      rangeIds: stallDay.ranges.slice(0, 1).map((range) => range.id),
    };
    workspace.setField({ kind: 'stallDay', id }, priceWords.addSet, ['prices', 'sets', sets.length], set);
  };
  return (
    <div className={styles.rows}>
      {sets.map((set, at) => (
        <OneSet
          key={set.id}
          {...{ part, set, at }}
          found={prices?.sets.find((one) => one.set.id === set.id) ?? null}
          isKnown={prices !== null}
        />
      ))}
      <div>
        <Button
          blockedBy={sets.length >= most ? `${most} sets are the most there can be.` : undefined}
          onPress={add}
        >
          {priceWords.addSet}
        </Button>
      </div>
    </div>
  );
}

// Helpers

type OneSetProps = Readonly<{
  part: PricesPart;
  set: SetOffer;
  at: number;
  found: PricesOfDay['sets'][number] | null;
  isKnown: boolean;
}>;

function OneSet({ part, set, at, found, isKnown }: OneSetProps) {
  const { workspace, id, stallDay } = part;
  const { name, pieces, price, rangeIds, sizes } = set;
  const path = ['prices', 'sets', at] as const;
  const change = (label: string, field: keyof SetOffer, to: unknown) =>
    workspace.setField({ kind: 'stallDay', id }, label, [...path, field], to);
  const own = [
    ...new Set(
      (part.answer?.goods ?? []).flatMap((one) => (rangeIds.includes(one.rangeId) ? [one.size] : [])),
    ),
  ];
  const judged = found?.judged ?? null;
  const lateSingles = found?.lateSingles ?? null;
  const writer = priceWriter(workspace);
  const told =
    price === null
      ? [priceWords.setUnpriced]
      : judged === null
        ? isKnown
          ? [priceWords.setNone]
          : []
        : [
            ...setWords(judged, writer),
            ...(lateSingles === null ? [] : [setLeftOutWords(name, lateSingles, writer)]),
          ];
  return (
    <section className={styles.set} aria-label={name}>
      <FieldGroup>
        <TextField
          label="Name of the set"
          needed
          value={name}
          {...textLimits(stallDaySchema, ['prices', 'sets', 0, 'name'])}
          onCommit={(to) => change('Name of the set', 'name', to)}
        />
        <NumberField
          label="Pieces"
          width="narrow"
          value={pieces}
          {...numberLimits(stallDaySchema, ['prices', 'sets', 0, 'pieces'])}
          onCommit={(to) => to !== null && change(`Pieces of ${name}`, 'pieces', to)}
        />
        <NumberField
          label="Price of the set"
          width="narrow"
          unit={workspace.workshop.currency}
          value={price}
          {...numberLimits(stallDaySchema, ['prices', 'sets', 0, 'price'])}
          whenEmpty={priceWords.setUnpriced}
          onCommit={(to) => change(`Price of ${name}`, 'price', to)}
        />
      </FieldGroup>
      <fieldset className={styles.choices}>
        <legend>Of which goods</legend>
        {stallDay.ranges.map((range) => (
          <CheckField
            key={range.id}
            label={range.name}
            checked={rangeIds.includes(range.id)}
            onCommit={(isIn) =>
              change(
                `Goods of ${name}`,
                'rangeIds',
                isIn ? [...rangeIds, range.id] : rangeIds.filter((one) => one !== range.id),
              )
            }
          />
        ))}
      </fieldset>
      {own.length > 1 && (
        <fieldset className={styles.choices}>
          <legend>In which sizes</legend>
          {own.map((size) => (
            <CheckField
              key={size}
              label={size}
              checked={sizes === null || sizes.includes(size)}
              onCommit={(isIn) => change(`Sizes of ${name}`, 'sizes', sizesWith(own, sizes, size, isIn))}
            />
          ))}
        </fieldset>
      )}
      {told.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <div>
        <Button
          kind="quiet"
          onPress={() => {
            typing.ends();
            workspace.changeStallDay(id, `Remove ${name}`, (day) => ({
              ...day,
              prices: { ...day.prices, sets: day.prices.sets.filter((one) => one.id !== set.id) },
            }));
          }}
        >
          Remove {name}
        </Button>
      </div>
    </section>
  );
}

/** All of them is told as all, so that a size that comes later is among them. */
function sizesWith(
  all: readonly string[],
  sizes: SetOffer['sizes'],
  size: string,
  isIn: boolean,
): SetOffer['sizes'] {
  const chosen = all.filter((one) => (one === size ? isIn : sizes === null || sizes.includes(one)));
  return chosen.length === all.length ? null : chosen;
}
