'use client';

import { Fragment } from 'react';
import { classes } from '@/app/_controls/classes';
import { FamilyMark } from '@/app/_controls/FamilyMark';
import { useArrowKeys } from '@/app/_docket/common/useArrowKeys';
import { useTextContext } from '@/app/_fields/useTextContext';
import { FigureButton } from '@/app/_trace/FigureButton';
import type { FigureNames } from '@/app/_trace/figureName';
import { TracePanel } from '@/app/_trace/TracePanel';
import { useOpenFigure } from '@/app/_trace/useOpenFigure';
import { wholeJob } from '@/lib/grid/costSheet';
import type { FigureRef } from '@/lib/grid/traceFigure';
import type { Job } from '@/shared/schemas/job';
import styles from './CostTable.module.css';
import { type CostTableRow, costTableRows } from './costTableRows';

type CostTableProps = Readonly<{
  names: FigureNames;
  line: Job['lines'][number];
  /** The one size a phone shows beside the whole job. */
  size: string;
}>;

/** Rows of cost by size and for the whole job; every figure opens to its sum beneath its row. */
export function CostTable({ names, line, size }: CostTableProps) {
  const { sheet } = names;
  const { locale } = useTextContext();
  const opens = useOpenFigure();
  const arrowKeys = useArrowKeys();
  const columns = sheet.cases.flatMap((one, index) => (one.lineId === line.id ? [{ ...one, index }] : []));
  const rows = costTableRows(sheet, columns, locale);
  const hidden = (name: string) => name !== size && styles.otherSize;
  const isIn = (rowId: string, open: FigureRef | null) => open?.rowId === rowId;
  return (
    <div className={styles.box}>
      <table className={styles.table} {...arrowKeys}>
        <caption className="visuallyHidden">
          Cost of one good piece by size, and of the whole job. Arrow keys move from figure to figure.
        </caption>
        <thead>
          <tr>
            <th scope="col" className={styles.name}>
              one good piece, {sheet.currency}
            </th>
            {columns.map((column) => (
              <th scope="col" className={classes(hidden(column.size))} key={column.size}>
                {column.size}
                <span className={styles.count}>{column.quantity}</span>
              </th>
            ))}
            <th scope="col" className={styles.whole}>
              whole job
              <span className={styles.count}>{wholeJob(sheet, 'goodPieces')}</span>
            </th>
          </tr>
        </thead>
        {rows.map((group) => (
          <tbody key={group.id} className={styles[group.id]}>
            {group.rows.map((row) => (
              <Fragment key={row.id}>
                <tr>
                  <th scope="row" className={styles.name}>
                    <span className={styles.label}>
                      {row.mark && <FamilyMark {...row.mark} />}
                      {row.label}
                    </span>
                  </th>
                  {columns.map((column, at) => (
                    <td className={classes(hidden(column.size))} key={column.size}>
                      <FigureButton
                        figure={{ rowId: row.id, case: column.index }}
                        name={`${row.label}, ${column.size}`}
                        text={row.texts[at] ?? ''}
                        strong={group.id === 'total'}
                        opens={opens}
                      />
                    </td>
                  ))}
                  <td className={styles.whole}>
                    {row.whole !== null && (
                      <FigureButton
                        figure={{ rowId: row.id }}
                        name={`${row.label}, whole job`}
                        text={row.whole}
                        strong={group.id === 'total'}
                        opens={opens}
                      />
                    )}
                  </td>
                </tr>
                {opens.open !== null && isIn(row.id, opens.open) && (
                  <tr>
                    <td className={styles.opened} colSpan={columns.length + 2}>
                      <div className={styles.view}>
                        <TracePanel
                          key={opens.buttonId(opens.open)}
                          id={opens.panelId}
                          names={names}
                          root={opens.open}
                          note={roundingNote(row, columns, opens.open)}
                          onClose={opens.close}
                        />
                      </div>
                    </td>
                  </tr>
                )}
              </Fragment>
            ))}
          </tbody>
        ))}
      </table>
    </div>
  );
}

// Helpers

/** Why a shown figure is not the nearest to the unrounded one that its sum comes to. */
function roundingNote(
  { texts, whole, byThemselves, wholeByItself }: CostTableRow,
  columns: readonly { readonly index: number }[],
  open: FigureRef,
): string | undefined {
  const at = columns.findIndex(({ index }) => index === open.case);
  const [shown, byItself] = at < 0 ? [whole, wholeByItself] : [texts[at], byThemselves?.[at]];
  if (byItself == null) return undefined;
  return `The table shows ${shown} so that its column adds up to the cent; by itself it would be ${byItself}.`;
}
