'use client';

import { useId } from 'react';
import { NumberField } from '@/app/_fields/NumberField';
import styles from '@/app/_supply/Supply.module.css';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { needWords, packWords, stockWords } from '@/app/_words/supply/buyingWords';
import { unitOf } from '@/app/_words/supply/itemWords';
import type { BuyingPlan, BuyingRow } from '@/lib/buying/buyingPlan';
import { stockKey } from '@/lib/stock/stockKey';
import { numberLimits } from '@/shared/limits';
import { buyingListSchema } from '@/shared/schemas/making/supply';
import type { BuyingOnScreen } from './buyingOnScreen';

/** Thing by thing: what is needed, what lies here, what is bought. A number that is typed is kept. */
export function NeedTable({ on, plan }: Readonly<{ on: BuyingOnScreen; plan: BuyingPlan }>) {
  return (
    <table className={styles.table}>
      <caption className="visuallyHidden">What is needed and what is bought</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">Needed</th>
          <th scope="col">At home</th>
          <th scope="col">To buy</th>
          <th scope="col">Packs</th>
          <th scope="col">Each</th>
          <th scope="col">Cost</th>
        </tr>
      </thead>
      <tbody>
        {plan.rows.map((row) => (
          <NeedRow key={stockKey(row.item)} {...{ on, plan, row }} />
        ))}
      </tbody>
    </table>
  );
}

// Helpers

type NeedRowProps = Readonly<{ on: BuyingOnScreen; plan: BuyingPlan; row: BuyingRow }>;

function NeedRow({ on, plan, row }: NeedRowProps) {
  const { formatter, locale, nameOf } = on.supply;
  const { item, purchase, unit, need, held, chanceWithAll } = row;
  const name = nameOf(item);
  const id = useId();
  const byTheSums = purchase?.quantity ?? Math.max(0, row.toBuy);
  return (
    <tr>
      <th scope="row">
        {name}
        {chanceWithAll !== null && (
          <span className={styles.quiet}> whole: {formatter.share(chanceWithAll)}</span>
        )}
      </th>
      <td data-head="Needed">
        {needWords(need, unit, formatter)}
        {unit !== 'piece' && ` ${unitOf(unit, need)}`}
      </td>
      <td data-head="At home">{stockWords(row, formatter)}</td>
      <td data-head="To buy" className={styles.held}>
        <label className="visuallyHidden" htmlFor={id}>
          To buy of {name}
        </label>
        <NumberField
          id={id}
          label={`To buy of ${name}`}
          labelled
          width="narrow"
          value={held ?? byTheSums}
          {...numberLimits(buyingListSchema, ['held', 0, 'quantity'])}
          hint={held === null ? undefined : 'Your number. Empty follows the sums.'}
          onCommit={(quantity) => on.hold(name, item, quantity)}
        />
      </td>
      <td data-head="Packs">{packWords(row, formatter)}</td>
      <td data-head="Each">
        {purchase?.each == null
          ? ''
          : `${formatter.smallMoney(purchase.each)}${purchase.priceIs === 'typical' ? ', typical' : ''}`}
      </td>
      <td data-head="Cost">
        {purchase?.amountMinor == null ? '' : minorMoney(purchase.amountMinor, plan.currency, locale)}
      </td>
    </tr>
  );
}
