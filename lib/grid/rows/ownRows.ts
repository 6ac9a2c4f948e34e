import type { RowDefinition } from '@/lib/grid/rowTypes';
import type { OwnRow, OwnRowDriver } from '@/shared/schemas/ownRow';

/** How often each driver happens for one good piece. */
const perPiece: Readonly<Record<OwnRowDriver, string>> = {
  order: '1 / jobPieces',
  design: 'designs',
  session: 'sessions / jobPieces',
  sheet: 'sheets',
  press: 'presses',
  piece: '1',
};

/** How often it happens in the whole job, as a factor behind its amount. */
const perJob: Readonly<Record<OwnRowDriver, string>> = {
  order: '',
  design: ' * designs',
  session: ' * sessions',
  sheet: ' * sheets',
  press: ' * presses',
  piece: ' * goodPieces',
};

/** The input row that holds the amount of an own row. */
export const ownAmountId = (row: OwnRow): string => `amount_${row.id}`;

/** The maker's own rows as rows of the grid, and the two sums through which they reach full cost and floor. */
export function ownRows(rows: readonly OwnRow[]): readonly RowDefinition[] {
  const costs = rows.map(
    (row): RowDefinition => ({
      id: row.id,
      table: 'case',
      label: row.label,
      unit: 'money',
      family: 'own',
      total: 'adds',
      formula:
        row.cost.kind === 'formula' ? row.cost.formula : `${ownAmountId(row)} * ${perPiece[row.cost.driver]}`,
      ...(row.cost.kind === 'formula' ? {} : { whole: `${ownAmountId(row)}${perJob[row.cost.driver]}` }),
      says: row.cost.kind === 'formula' ? 'Your own formula.' : `Your own row, each ${row.cost.driver}.`,
    }),
  );
  const amounts = rows
    .filter((row) => row.cost.kind === 'driver')
    .map(
      (row): RowDefinition => ({
        id: ownAmountId(row),
        table: 'job',
        label: row.label,
        unit: 'money',
        family: 'own',
        formula: null,
        says: 'As you set it.',
      }),
    );
  return [
    ...amounts,
    ...costs,
    sum('ownCosts', 'Your own rows', rows),
    sum(
      'ownCash',
      'Your own rows, out of pocket',
      rows.filter((row) => row.outOfPocket),
    ),
  ];
}

function sum(id: string, label: string, rows: readonly OwnRow[]): RowDefinition {
  return {
    id,
    table: 'case',
    label,
    unit: 'money',
    family: 'own',
    total: 'adds',
    whole: 'itself',
    formula: rows.length === 0 ? '0' : rows.map((row) => row.id).join(' + '),
    says: 'Rows you added yourself.',
  };
}
