'use client';

import { useEffect, useRef, useState } from 'react';
import { HeatFigure } from '@/app/_controls/HeatFigure';
import { useArrowKeys } from '@/app/_docket/common/useArrowKeys';
import { PickRow } from '@/app/_fields/PickRow';
import { useTextContext } from '@/app/_fields/useTextContext';
import { amountWords } from '@/app/_words/amountWords';
import { breakWords } from '@/app/_words/docket/breakWords';
import { sizesWords } from '@/app/_words/docket/sizesWords';
import { formatterFor } from '@/app/_words/formatter';
import type { CostSheet } from '@/lib/grid/costSheet';
import type { LineList } from '@/lib/price/list/lineList';
import type { TablePrice } from '@/lib/price/priceTable';
import type { BreakEnds } from '@/lib/studies/breaks/breakEnds';
import { formatMinor } from '@/shared/money';
import type { Job } from '@/shared/schemas/job';
import type { Channel } from '@/shared/schemas/workshop';
import { PriceDetails } from './PriceDetails';
import styles from './PriceTable.module.css';
import { priceGrid } from './priceGrid';

type PriceTableProps = Readonly<{
  sheet: CostSheet;
  line: Job['lines'][number];
  rule: LineList['rule'];
  table: readonly TablePrice[];
  priceStep: number;
  taxMode: Channel['taxMode'];
  /** What each price leaves at both ends of its break; null until they are worked out. */
  ends: readonly BreakEnds[] | null;
}>;

/** Prices to write by size and break; the picked one says beneath what it stands on. */
export function PriceTable(props: PriceTableProps) {
  const { sheet, line, rule, table, priceStep, taxMode, ends } = props;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const arrowKeys = useArrowKeys();
  const { breaks, groups } = priceGrid(table, line.id);
  const batch = sheet.cases.find(({ lineId }) => lineId === line.id)?.batch ?? 0;
  const ofJob = breaks.findIndex(({ from, to }) => batch >= from && (to === null || batch <= to));
  const [picked, setPicked] = useState<{ group: number; at: number } | null>(null);
  const group = groups[picked?.group ?? 0] ?? groups[0];
  const at = picked !== null && picked.at < breaks.length ? picked.at : Math.max(0, ofJob);
  const cell = group?.cells[at];
  const box = useRef<HTMLDivElement>(null);
  const ofJobHead = useRef<HTMLTableCellElement>(null);
  useEffect(() => {
    // The break of this job may lie outside the box; the names in the first column stay in view.
    const head = ofJobHead.current;
    if (head !== null) box.current?.scrollTo?.({ left: head.offsetLeft - head.offsetWidth * 2 });
  }, []);
  if (group === undefined || cell === undefined) return null;
  const money = (minor: TablePrice['price']) => formatMinor(minor, sheet.currency, context.locale);
  const endOf = (one: TablePrice) =>
    ends?.find(({ lineId, size, from }) => lineId === one.lineId && size === one.size && from === one.from);
  const endText = (one: TablePrice, margin: 'marginAtFirst' | 'marginAtLast') => {
    const end = endOf(one);
    if (end === undefined) return '…';
    const share = end[margin];
    return share === null ? 'and up' : formatter.share(share);
  };
  const besides = [
    { id: 'margin', name: 'least margin inside', text: (one: TablePrice) => formatter.share(one.margin) },
    { id: 'first', name: 'margin at the first', text: (one: TablePrice) => endText(one, 'marginAtFirst') },
    { id: 'last', name: 'margin at the last', text: (one: TablePrice) => endText(one, 'marginAtLast') },
    { id: 'markup', name: 'markup', text: (one: TablePrice) => formatter.share(one.markup) },
    {
      id: 'pay',
      name: 'pays you an hour',
      text: (one: TablePrice) => amountWords(one.payPerHour, sheet.currency, context.locale),
    },
  ];
  const otherBreak = (column: number) => (column === at ? undefined : styles.otherBreak);
  return (
    <>
      {breaks.length > 1 && (
        <div className={styles.picks}>
          <PickRow
            label="How many are ordered"
            phoneOnly
            value={`${at}`}
            choices={breaks.map((span, index) => ({ value: `${index}`, label: breakWords(span) }))}
            onPick={(value) => setPicked({ group: picked?.group ?? 0, at: Number(value) })}
          />
        </div>
      )}
      <div className={styles.box} ref={box}>
        <table className={styles.table} {...arrowKeys}>
          <caption className="visuallyHidden">Price of one piece by size and by how many are ordered</caption>
          <thead>
            <tr>
              <th scope="col" className={styles.name}>
                a piece, {sheet.currency}
              </th>
              {breaks.map((span, index) => (
                <th
                  scope="col"
                  className={otherBreak(index)}
                  key={span.from}
                  ref={index === ofJob ? ofJobHead : undefined}
                >
                  {breakWords(span)}
                  {index === ofJob && <span className={styles.ofJob}>this job</span>}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {groups.map((one, row) => (
              <tr key={one.sizes[0]}>
                <th scope="row" className={styles.name}>
                  {sizesWords(one.sizes)}
                </th>
                {one.cells.map((price, column) => (
                  <td className={otherBreak(column)} key={price.from}>
                    <button
                      className={styles.price}
                      type="button"
                      aria-pressed={one === group && column === at}
                      onClick={() => setPicked({ group: row, at: column })}
                    >
                      <HeatFigure text={money(price.price)} />
                    </button>
                    {price.isOwn && row === 0 && <span className={styles.own}>yours</span>}
                    {price.upCharge !== 0 && (
                      <span className={styles.upCharge}>
                        {price.upCharge > 0 && '+'}
                        {money(price.upCharge)}
                      </span>
                    )}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
          <tbody className={styles.besides}>
            {besides.map(({ id, name, text }) => (
              <tr key={id}>
                <th scope="row" className={styles.name}>
                  {name}{' '}
                  {groups.length > 1 && <span className="visuallyHidden">of {sizesWords(group.sizes)}</span>}
                </th>
                {group.cells.map((one, column) => (
                  <td className={otherBreak(column)} key={one.from}>
                    {text(one)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <PriceDetails
        {...{ line, cell, group, priceStep, taxMode, rule, currency: sheet.currency }}
        isOneOfSeveral={sheet.lineIds.length > 1}
        target={sheet.jobValues.targetMargin ?? 0}
        table={table}
      />
    </>
  );
}
