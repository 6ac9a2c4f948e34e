'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { newId } from '@/app/_documents/newId';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import type { OrderForm } from '@/app/_fields/formMemory';
import { itemChoices } from '@/app/_supply/itemChoices';
import styles from '@/app/_supply/Supply.module.css';
import type { SupplyOnScreen } from '@/app/_supply/supplyOnScreen';
import { goodsHeads, pricesAct } from '@/app/_words/supply/deliveryWords';
import { itemWords } from '@/app/_words/supply/itemWords';
import { offerEach } from '@/lib/buying/received/offerEach';
import { sameItem } from '@/lib/stock/stockKey';
import { GoodsRowFields } from './GoodsRowFields';
import table from './GoodsTable.module.css';
import { atPrices, type GoodsRowDraft, uncounted } from './goodsDraft';
import type { useGoodsDraft } from './useGoodsDraft';

type GoodsRowsProps = Readonly<{
  supply: SupplyOnScreen;
  form: OrderForm;
  draft: ReturnType<typeof useGoodsDraft>;
}>;

/** Everything that came, a row each: what was ordered, what came, what it cost. */
export function GoodsRows({ supply, form, draft }: GoodsRowsProps) {
  const { workspace, formatter, nameOf } = supply;
  const { currency } = workspace.workshop;
  const { rows, setRows, answered, supplier } = draft;
  const change = (key: string, part: Partial<GoodsRowDraft>) =>
    setRows(rows.map((row) => (row.key === key ? { ...row, ...part } : row)));
  /** As the order has it; else as the supplier offers it. */
  const eachOf = ({ item, counted, ordered }: GoodsRowDraft): number | null =>
    answered?.order.body.rows.find((one) => sameItem(one.item, item) && one.each !== null)?.each ??
    offerEach(workspace.suppliers[supplier ?? ''], item, counted ?? ordered ?? 1);
  const waiting = rows.some(({ ordered, counted }) => ordered !== null && counted === null);
  const unpriced = rows.some((row) => row.amount === null && isComing(row) && eachOf(row) !== null);
  return (
    <>
      {rows.length > 0 && (
        <div className={table.rows}>
          <div className={table.heads} aria-hidden="true">
            <span className={table.what}>{goodsHeads.what}</span>
            <span className={table.ordered}>{goodsHeads.ordered}</span>
            <span>{goodsHeads.came}</span>
            <span>{goodsHeads.cost}</span>
          </div>
          {rows.map((row) => {
            const each = eachOf(row);
            const isOfOrder = row.ordered !== null;
            return (
              <GoodsRowFields
                key={row.key}
                {...{ row, form, currency, formatter }}
                name={nameOf(row.item)}
                unit={itemWords(row.item, workspace).unit}
                expected={each === null ? null : formatter.smallMoney(each)}
                isUnordered={answered !== null && !isOfOrder && !isSecond(rows, row)}
                onChange={(part) => change(row.key, part)}
                onSplit={
                  row.item.kind === 'blank'
                    ? () => setRows([...rows, uncounted(newId(), row.item, null)])
                    : null
                }
                onRemove={isOfOrder ? null : () => setRows(rows.filter(({ key }) => key !== row.key))}
              />
            );
          })}
        </div>
      )}
      {(waiting || unpriced) && (
        <div className={styles.acts}>
          {waiting && (
            <Button
              onPress={() => setRows(rows.map((row) => ({ ...row, counted: row.counted ?? row.ordered })))}
            >
              All others came as ordered
            </Button>
          )}
          {unpriced && (
            <Button onPress={() => setRows(atPrices(rows, eachOf, currency))}>
              {pricesAct(waiting, answered !== null)}
            </Button>
          )}
        </div>
      )}
      <AddRow
        isFirst={rows.length === 0}
        choices={itemChoices(workspace)}
        onAdd={(item) => setRows([...rows, uncounted(newId(), item, null)])}
      />
    </>
  );
}

// Helpers

const isComing = ({ counted, ordered }: GoodsRowDraft): boolean => (counted ?? ordered ?? 0) > 0;

/** Another lot of what another row is of. */
const isSecond = (rows: readonly GoodsRowDraft[], row: GoodsRowDraft): boolean =>
  rows.some((other) => other.key !== row.key && other.ordered !== null && sameItem(other.item, row.item));

type AddRowProps = Readonly<{
  isFirst: boolean;
  choices: ReturnType<typeof itemChoices>;
  onAdd: (item: GoodsRowDraft['item']) => void;
}>;

function AddRow({ isFirst, choices, onAdd }: AddRowProps) {
  const [adding, setAdding] = useState<string | null>(null);
  const added = choices.find(({ value }) => value === adding)?.item;
  return (
    <div className={styles.adding}>
      <ChoiceField
        label={isFirst ? 'What came' : 'Something else that came'}
        value={adding}
        choices={choices.map(({ value, label, group }) => ({ value, label, group }))}
        onCommit={setAdding}
      />
      <Button
        blockedBy={added === undefined ? 'What came comes first.' : undefined}
        onPress={() => {
          if (added === undefined) return;
          onAdd(added);
          setAdding(null);
        }}
      >
        Add a row
      </Button>
    </div>
  );
}
