import { classes } from '@/app/_controls/classes';
import type { Row, TableBlock } from '@/lib/papers/paper';
import styles from './PaperSheet.module.css';

/** A table of a paper with its sums; on a phone it is wider than the page only as far as words make it. */
export function SheetTable({ block }: Readonly<{ block: TableBlock }>) {
  const { columns, rows, sums, note } = block;
  return (
    <div className={styles.block}>
      <div className={styles.tableRoom}>
        <table className={styles.table}>
          <thead>
            <tr>
              {columns.map(({ head, isFigure }) => (
                <th key={head} scope="col" className={isFigure ? styles.figure : undefined}>
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, at) => (
              // Rows of one text and figure are alike.
              // biome-ignore lint/suspicious/noArrayIndexKey: as said
              <SheetRow key={at} {...{ row, columns }} />
            ))}
          </tbody>
        </table>
      </div>
      {(sums.length > 0 || note !== '') && (
        <div className={styles.sums}>
          <p className={styles.tableNote}>{note}</p>
          <dl>
            {sums.map(({ name, value, look }) => (
              <div
                key={name}
                className={classes(look === 'total' && styles.totalRow, look === 'strong' && styles.strong)}
              >
                <dt>{name}</dt>
                <dd>{value}</dd>
              </div>
            ))}
          </dl>
        </div>
      )}
    </div>
  );
}

// Helpers

type SheetRowProps = Readonly<{ row: Row; columns: TableBlock['columns'] }>;

function SheetRow({ row, columns }: SheetRowProps) {
  const note = row.note !== undefined && row.note !== '' && (
    <span className={styles.rowNote}>{row.note}</span>
  );
  if (row.kind === 'group') {
    return (
      <tr>
        <th scope="rowgroup" colSpan={columns.length} className={styles.group}>
          <bdi>{row.text}</bdi> {note}
        </th>
      </tr>
    );
  }
  return (
    <tr>
      {row.cells.map((cell, at) => (
        <td key={columns[at]?.head ?? at} className={columns[at]?.isFigure ? styles.figure : undefined}>
          {typeof cell === 'string' ? (
            <bdi>{cell}</bdi>
          ) : (
            Array.from({ length: Math.min(12, cell.ticks) }, (_, tick) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: squares are alike
              <span key={tick} className={styles.tick} aria-hidden="true" />
            ))
          )}
          {at === 0 && note}
        </td>
      ))}
    </tr>
  );
}
