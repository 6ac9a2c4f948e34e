'use client';

import { useState } from 'react';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { gradedName } from '@/app/_words/stall/shopWords';
import { backEntries } from '@/lib/stall/shops/consignedEntries';
import { shelfKey } from '@/lib/stall/shops/shelfKey';
import type { ShelfGoods } from '@/lib/stall/shops/shopStanding';
import { numberLimits } from '@/shared/limits';
import { blanksNotedSchema } from '@/shared/schemas/stock';
import { FormActs } from './FormActs';
import styles from './Shops.module.css';
import type { ShopOnScreen } from './shopOnScreen';

type BackFormProps = Readonly<{ on: ShopOnScreen; onDone: () => void }>;

const limits = numberLimits(blanksNotedSchema, []);

/** Goods that come home; all that lie there unless fewer are told. */
export function BackForm({ on, onDone }: BackFormProps) {
  const { shop, standing, nameOf, noteGoods } = on;
  const shelf = standing.shelf.filter(({ quantity }) => quantity > 0);
  const [typed, setTyped] = useState<Readonly<Record<string, number | null>>>({});
  /** All of it until something is typed; null where the field was emptied. */
  const toldOf = (goods: ShelfGoods): number | null => {
    const told = typed[shelfKey(goods, goods.grade)];
    return told === undefined ? goods.quantity : told;
  };
  const missing = shelf.some((goods) => (toldOf(goods) ?? 0) > 0)
    ? undefined
    : 'How many come home comes first.';
  const enter = () => {
    const rows = shelf.map((goods) => {
      const { jobId, lineId, size, grade } = goods;
      return { goods: { jobId, lineId, size }, grade, quantity: toldOf(goods) ?? 0 };
    });
    if (noteGoods(`Home from ${shop.name}`, backEntries(shop.name, rows)).state === 'shown') onDone();
  };
  return (
    <EntryForm label="Bring goods home" className={styles.form} missing={missing} onEnter={enter}>
      <FieldGroup pairs>
        {shelf.map((goods) => {
          const key = shelfKey(goods, goods.grade);
          return (
            <NumberField
              key={key}
              label={gradedName(nameOf(goods), goods.grade)}
              width="narrow"
              {...limits}
              max={goods.quantity}
              value={toldOf(goods)}
              onCommit={(value) => setTyped((now) => ({ ...now, [key]: value }))}
            />
          );
        })}
      </FieldGroup>
      <FormActs words="Note it" missing={missing} onLeave={onDone} />
    </EntryForm>
  );
}
