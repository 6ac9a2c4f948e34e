import { costLineIds } from '@/lib/grid/costLines';
import type { CostSheet } from '@/lib/grid/costSheet';
import type { GridRow } from '@/lib/grid/rowTypes';
import type { TablePrice } from '@/lib/price/priceTable';
import { formatMinor, shownParts, toMinor } from '@/shared/money';

/** Columns wide enough for their longest cell; the first to the left, the rest to the right. */
export function aligned(rows: readonly (readonly string[])[], left = 1): string {
  const widths =
    rows[0]?.map((_, column) => Math.max(...rows.map((row) => (row[column] ?? '').length))) ?? [];
  return rows
    .map((row) =>
      row
        .map((cell, column) => {
          const width = widths[column] ?? 0;
          return column < left ? cell.padEnd(width) : cell.padStart(width);
        })
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

/** The whole cost sheet: what is shown of it first, then every row with five decimals. */
export function costSheetText(sheet: CostSheet, locale: string): string {
  const heads = sheet.cases.map(({ lineId, size, quantity }) =>
    sheet.lineIds.length > 1 ? `${lineId} ${size} ×${quantity}` : `${size} ×${quantity}`,
  );
  const rowsOf = (table: GridRow['table']) => sheet.rows.filter((row) => row.table === table);
  const write = (value: number | null | undefined) => (value == null ? '' : value.toFixed(5));
  const cases = rowsOf('case').map((row) => [row.id, row.unit, ...(sheet.values[row.id] ?? []).map(write)]);
  const lines = rowsOf('line').map((row) => [
    row.id,
    row.unit,
    ...(sheet.lineValues[row.id] ?? []).map(write),
  ]);
  const job = rowsOf('job').map((row) => [row.id, row.unit, write(sheet.jobValues[row.id])]);
  return [
    `Cost of the whole job, ${sheet.currency}`,
    aligned(shownCosts(sheet, locale)),
    '\nOne good piece of each size, and the whole job',
    aligned([['row', 'unit', ...heads, 'whole'], ...cases], 2),
    '\nOf each line',
    aligned([['row', 'unit', ...sheet.lineIds], ...lines], 2),
    '\nOf the job',
    aligned([['row', 'unit', 'value'], ...job], 2),
    '',
  ].join('\n');
}

/** Cost lines as the screen shows them: parts that add to the total to the cent. */
function shownCosts(sheet: CostSheet, locale: string): readonly (readonly string[])[] {
  const last = sheet.cases.length;
  const amounts = costLineIds.map((id) => sheet.values[id]?.[last] ?? Number.NaN);
  const parts = shownParts(sheet.fullCost, amounts, sheet.currency);
  const label = (id: string) => sheet.rows.find((row) => row.id === id)?.label ?? id;
  return [
    ...costLineIds.map((id, index) => {
      const part = parts[index];
      return [label(id), part === undefined ? '' : formatMinor(part, sheet.currency, locale)];
    }),
    ['Full cost', formatMinor(toMinor(sheet.fullCost, sheet.currency), sheet.currency, locale)],
  ];
}

/** The price table: one row a break and size, unrounded figures to five decimals beside the price to write. */
export function priceTableText(table: readonly TablePrice[], currency: string, locale: string): string {
  const heads = ['line', 'size', 'break', 'priced at', 'full cost', 'target', 'price', 'up-charge'];
  return `${aligned(
    [
      [...heads, 'margin', 'markup', 'pay an hour'],
      ...table.map((cell) => [
        cell.lineId,
        cell.size,
        cell.to === null ? `${cell.from} up` : `${cell.from}–${cell.to}`,
        `${cell.pricedAt}`,
        cell.fullCost.toFixed(5),
        cell.target.toFixed(5),
        formatMinor(cell.price, currency, locale),
        formatMinor(cell.upCharge, currency, locale),
        cell.margin.toFixed(5),
        cell.markup.toFixed(5),
        cell.payPerHour.toFixed(5),
      ]),
    ],
    2,
  )}\n`;
}
