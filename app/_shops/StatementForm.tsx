'use client';

import { useState } from 'react';
import { AmountField } from '@/app/_fields/AmountField';
import { DateField } from '@/app/_fields/DateField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { gradedName, statementBeyond, statementTold } from '@/app/_words/stall/shopWords';
import { statementEntries } from '@/lib/stall/shops/consignedEntries';
import { shelfKey } from '@/lib/stall/shops/shelfKey';
import type { ShelfGoods } from '@/lib/stall/shops/shopStanding';
import { owedPieces, statementDue } from '@/lib/stall/shops/statementDue';
import { numberLimits } from '@/shared/limits';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { shopStatementSchema } from '@/shared/schemas/stallEvents';
import { FormActs } from './FormActs';
import styles from './Shops.module.css';
import type { ShopOnScreen } from './shopOnScreen';
import { termsOf } from './termsOf';

type StatementFormProps = Readonly<{ on: ShopOnScreen; onDone: () => void }>;

interface TypedRow {
  readonly sold: number | null;
  readonly missing: number | null;
  /** Currency units. */
  readonly each: number | null;
}

const each = numberLimits(shopStatementSchema, ['rows', 0, 'eachMinor']);
const most = numberLimits(shopStatementSchema, ['rows', 0, 'sold']);

/** What a shop says it sold, goods by goods, and what it owes for it. */
export function StatementForm({ on, onDone }: StatementFormProps) {
  const { workspace, shopId, shop, standing, today, locale, formatter, noteGoods } = on;
  const { currency } = workspace.workshop;
  const shelf = standing.shelf.filter(({ quantity }) => quantity > 0);
  const [day, setDay] = useState(today);
  const [typed, setTyped] = useState<Readonly<Record<string, TypedRow>>>({});
  const rowOf = (goods: ShelfGoods): TypedRow =>
    typed[shelfKey(goods, goods.grade)] ?? untouched(goods, currency);
  const found = termsOf(shop, workspace.workshop);
  const rows = shelf.flatMap((goods) => {
    const row = rowOf(goods);
    const [sold, missing] = [row.sold ?? 0, row.missing ?? 0];
    const { jobId, lineId, size, grade } = goods;
    if (sold + missing === 0) return [];
    return [{ goods: { jobId, lineId, size }, grade, sold, missing, each: row.each }];
  });
  const unpriced = rows.find((row) => row.each === null && owedPieces(row, shop.bears) > 0);
  const noted = rows.map(({ each: price, ...row }) => ({
    ...row,
    eachMinor: price === null ? 0 : toMinor(price, currency),
  }));
  const due = found.terms === undefined ? null : statementDue(noted, found.terms);
  const missing =
    found.missing ??
    (rows.length === 0
      ? 'How many were sold or are missing comes first.'
      : unpriced !== undefined
        ? `The price of ${gradedName(on.nameOf(unpriced.goods), unpriced.grade)} comes first.`
        : due === null
          ? statementBeyond
          : undefined);
  const enter = () => {
    if (found.terms === undefined || due === null) return;
    const { commissionShare, commissionBase } = found.terms;
    const statement = {
      ...{ shopId, day, currency, commissionShare, commissionBase },
      ...{ rows: noted, dueMinor: due.dueMinor },
    };
    const outcome = noteGoods(`Statement of ${shop.name}`, statementEntries(shop.name, statement));
    if (outcome.state === 'shown') onDone();
  };
  return (
    <EntryForm label="Statement" className={styles.form} missing={missing} onEnter={enter}>
      <DateField label="Of" width="narrow" needed value={day} onCommit={(to) => setDay(to ?? today)} />
      {shelf.map((goods) => {
        const row = rowOf(goods);
        const set = (change: Partial<TypedRow>) =>
          setTyped((now) => ({ ...now, [shelfKey(goods, goods.grade)]: { ...rowOf(goods), ...change } }));
        const isMore = (row.sold ?? 0) + (row.missing ?? 0) > goods.quantity;
        return (
          <fieldset key={shelfKey(goods, goods.grade)} className={styles.goods}>
            <legend>{gradedName(on.nameOf(goods), goods.grade)}</legend>
            <FieldGroup pairs>
              <NumberField
                label="Sold"
                width="narrow"
                {...most}
                value={row.sold}
                hint={`${formatter.number(goods.quantity, 0)} lie there.`}
                caution={
                  isMore
                    ? `Only ${formatter.number(goods.quantity, 0)} lie there by what was noted.`
                    : undefined
                }
                onCommit={(sold) => set({ sold })}
              />
              <NumberField
                label="Missing"
                width="narrow"
                {...most}
                value={row.missing}
                onCommit={(gone) => set({ missing: gone })}
              />
              <AmountField
                label="Its price"
                currency={currency}
                minorLimits={each}
                value={row.each}
                onCommit={(price) => set({ each: price })}
              />
            </FieldGroup>
          </fieldset>
        );
      })}
      <p role="status">
        {found.terms !== undefined &&
          due !== null &&
          rows.length > 0 &&
          unpriced === undefined &&
          statementTold(due, found.terms, formatter, locale)}
      </p>
      <FormActs words="Note the statement" missing={missing} onLeave={onDone} />
    </EntryForm>
  );
}

// Helpers

/** The price of the last statement stands there to begin with, where it is of this currency. */
const untouched = ({ each: told }: ShelfGoods, currency: string): TypedRow => ({
  sold: null,
  missing: null,
  each: told?.currency === currency ? fromMinor(told.minor as MinorUnits, currency) : null,
});
