'use client';

import { useState } from 'react';
import { AmountField } from '@/app/_fields/AmountField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { agreedHint, goodsName, gradedName } from '@/app/_words/stall/shopWords';
import { gradeWords } from '@/app/_words/workshop/stockWords';
import { isOf } from '@/lib/stall/car/dayMoves';
import { outEntries } from '@/lib/stall/shops/consignedEntries';
import { goodsToSend } from '@/lib/stall/shops/goodsToSend';
import { numberLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import { shopPriceSchema } from '@/shared/schemas/stallEvents';
import { blanksNotedSchema, type StockGrade } from '@/shared/schemas/stock';
import { beginningPrice } from './beginningPrice';
import { FormActs } from './FormActs';
import styles from './Shops.module.css';
import type { ShopOnScreen } from './shopOnScreen';

type GoodsOutFormProps = Readonly<{ on: ShopOnScreen; onDone: () => void }>;

const many = { ...numberLimits(blanksNotedSchema, []), width: 'narrow' } as const;
const eachLimits = numberLimits(shopPriceSchema, ['eachMinor']);

/**
 * Goods that go from home to the shop, and what it is to ask for them. What lies at home is counted first where nobody
 * did: nothing is made up.
 */
export function GoodsOutForm({ on, onDone }: GoodsOutFormProps) {
  const { workspace, shopId, shop, nameOf, formatter, today, noteGoods } = on;
  const { currency } = workspace.workshop;
  const [lineKey, setLine] = useState<string | null>(null);
  const [size, setSize] = useState<string | null>(null);
  const [typedGrade, setGrade] = useState<StockGrade>('first');
  const [quantity, setQuantity] = useState<number | null>(null);
  const [counted, setCounted] = useState<number | null>(null);
  // Undefined until it is typed, so that another size begins with its own.
  const [typedEach, setEach] = useState<number | null | undefined>(undefined);
  const designs = goodsToSend(workspace.jobs, workspace.piles);
  const picked = designs.find(({ key }) => key === lineKey) ?? null;
  const sizes = picked?.sizes ?? [];
  const chosen = sizes.length === 1 ? sizes[0] : sizes.find((one) => one.size === size);
  const goods =
    picked === null || chosen === undefined
      ? null
      : { jobId: picked.jobId, lineId: picked.lineId, size: chosen.size };
  const grades = chosen?.grades ?? [];
  const grade = grades.find((one) => one === typedGrade) ?? grades[0] ?? 'first';
  const begins = goods === null ? null : beginningPrice(on, { ...goods, grade });
  const each = typedEach === undefined ? (begins?.price ?? null) : typedEach;
  const atHome =
    goods === null
      ? null
      : (workspace.piles.find(
          (pile) => pile.place.kind === 'home' && pile.grade === grade && isOf(pile.item, goods),
        )?.quantity ?? null);
  const mustCount = goods !== null && (atHome === null || (quantity ?? 0) > atHome);
  const home = mustCount ? counted : atHome;
  const missing =
    picked === null
      ? 'Which design comes first.'
      : goods === null
        ? 'Which size comes first.'
        : quantity === null || quantity === 0
          ? 'How many comes first.'
          : home === null
            ? 'How many lie at home comes first.'
            : quantity > home
              ? `Only ${formatter.number(home, 0)} lie at home. Take fewer, or count again.`
              : undefined;
  const enter = () => {
    if (goods === null || quantity === null) return;
    const agreed =
      each === null ? null : { shopId, day: today, currency, eachMinor: toMinor(each, currency) };
    const entries = outEntries(shop.name, {
      ...{ goods, grade, quantity, agreed },
      counted: mustCount ? counted : null,
    });
    if (noteGoods(`${gradedName(nameOf(goods), grade)} to ${shop.name}`, entries).state === 'shown') onDone();
  };
  return (
    <EntryForm label="Bring goods there" className={styles.form} missing={missing} onEnter={enter}>
      <FieldGroup pairs>
        <ChoiceField<string>
          label="Design"
          value={lineKey}
          choices={designs.map(({ key, job, line }) => ({ value: key, label: goodsName(line, job ?? '') }))}
          onCommit={(key) => {
            setLine(key);
            setSize(null);
            setGrade('first');
            setEach(undefined);
          }}
        />
        {sizes.length > 1 && (
          <ChoiceField<string>
            label="Size"
            width="narrow"
            value={size}
            choices={sizes.map(({ size: value }) => ({ value, label: value }))}
            onCommit={(to) => {
              setSize(to);
              setEach(undefined);
            }}
          />
        )}
        {grades.length > 1 && (
          <ChoiceField<StockGrade>
            label="Grade"
            width="narrow"
            value={grade}
            choices={grades.map((value) => ({ value, label: gradeWords[value] }))}
            onCommit={(to) => {
              setGrade(to);
              setEach(undefined);
            }}
          />
        )}
        <NumberField
          label="How many"
          {...many}
          value={quantity}
          hint={atHome === null ? undefined : `${formatter.number(atHome, 0)} lie at home.`}
          onCommit={setQuantity}
        />
        {mustCount && (
          <NumberField
            label="Counted at home before"
            {...many}
            value={counted}
            hint={
              atHome === null ? 'Nobody counted them yet.' : 'More than was noted: count what lies there.'
            }
            onCommit={setCounted}
          />
        )}
        <AmountField
          label="Its price, agreed"
          currency={currency}
          minorLimits={eachLimits}
          value={each}
          hint={agreedHint(typedEach === undefined ? begins : null)}
          onCommit={setEach}
        />
      </FieldGroup>
      <FormActs words="Note it" missing={missing} onLeave={onDone} />
    </EntryForm>
  );
}
