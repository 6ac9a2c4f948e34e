import type { Formatter } from '@/app/_words/formatter';
import { firstsSold } from '@/lib/stall/evening/firstsSold';
import type { Evening } from '@/lib/stall/evening/reconcile';
import { designRows } from './designRows';
import styles from './Slips.module.css';

/** How much of each design went: in figures, and as a bar. */
export function SellThrough({ evening, formatter }: Readonly<{ evening: Evening; formatter: Formatter }>) {
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <th scope="col">
            <span className="visuallyHidden">Design</span>
          </th>
          <th scope="col">brought</th>
          <th scope="col">sold</th>
          <th scope="col">left</th>
          <th scope="col">sold through</th>
        </tr>
      </thead>
      <tbody>
        {designRows(evening).map(({ id, name, rows }) => {
          const brought = rows.reduce((sum, row) => sum + row.brought, 0);
          const isKnown = rows.every(({ left }) => left !== null);
          const sold = rows.reduce((sum, row) => sum + firstsSold(row), 0);
          const left = rows.reduce((sum, row) => sum + (row.left ?? 0), 0);
          const share = brought === 0 ? 0 : sold / brought;
          return (
            <tr key={id}>
              <th scope="row">{name}</th>
              <td>{brought}</td>
              <td>{isKnown ? sold : '–'}</td>
              <td>
                <strong>{isKnown ? left : '–'}</strong>
              </td>
              <td className={styles.through}>
                {isKnown && brought > 0 && (
                  <>
                    <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true" focusable="false">
                      <rect className={styles.sold} width={Math.min(100, share * 100)} height="10" />
                    </svg>
                    {formatter.number(share * 100, 0)} %
                  </>
                )}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
