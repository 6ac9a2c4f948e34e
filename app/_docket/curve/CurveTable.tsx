'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import type { TaxTerms } from '@/lib/price/taxTerms';
import type { CostCurve } from '@/lib/studies/curve/curveAnswer';
import { tableQuantities } from '@/lib/studies/curve/tableQuantities';
import styles from './CurveTable.module.css';

type CurveTableProps = Readonly<{ study: CostCurve; name: string; terms: TaxTerms }>;

/** The curve as a table: the quantities that mean something and round ones first, all of them on a press. */
export function CurveTable({ study, name, terms }: CurveTableProps) {
  const formatter = formatterFor(useTextContext());
  const [all, setAll] = useState(false);
  const told = tellingOf(study);
  const few = new Set(tableQuantities(study));
  const rows = study.points.filter(({ n }) => all || few.has(n));
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls sideways on a phone, by keys too */}
      <section className={styles.box} tabIndex={0} aria-label={`Batches of ${name}`}>
        <table className={styles.table}>
          <caption className="visuallyHidden">Cost, price and margin of {name} by batch size</caption>
          <thead>
            <tr>
              <th scope="col">pieces</th>
              <th scope="col">full cost each</th>
              <th scope="col">price each</th>
              <th scope="col">profit in all</th>
              <th scope="col">margin</th>
              <th scope="col">pays an hour</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ n, fullCost, price, profit, margin, payPerHour }) => (
              <tr key={n} className={n === study.asked ? styles.asked : undefined}>
                <th scope="row">
                  {formatter.number(n, 0)}
                  {told.has(n) && <span className={styles.why}>{told.get(n)}</span>}
                </th>
                <td>{formatter.money(fullCost / n)}</td>
                <td>{formatter.money(terms.written(price / n))}</td>
                <td>{formatter.money(profit)}</td>
                <td data-figure={n === study.asked ? 'margin' : undefined}>{formatter.share(margin)}</td>
                <td data-figure={n === study.asked ? 'pay' : undefined}>{formatter.money(payPerHour)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {!all && <Button onPress={() => setAll(true)}>Show every quantity</Button>}
    </>
  );
}

// Helpers

/** What is so about a quantity. */
function tellingOf({ steps, asked, breakEven, knee, spots }: CostCurve): ReadonlyMap<number, string> {
  const told = new Map<number, string>(steps.map((n) => [n, 'just full']));
  for (const { n } of spots) told.set(n, 'a sweet spot');
  if (knee !== null) told.set(knee.n, 'the knee');
  if (breakEven !== null) told.set(breakEven.first, 'pays its way');
  told.set(asked, 'asked');
  return told;
}
