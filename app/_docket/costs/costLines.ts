import type { Family } from '@/app/_controls/FamilyMark';
import { type CostLineId, costLineIds } from '@/lib/grid/costLines';
import type { CostSheet } from '@/lib/grid/costSheet';
import type { GridRow } from '@/lib/grid/rowTypes';

interface CostLine {
  readonly row: GridRow;
  readonly family: Family;
  readonly shade: 1 | 2 | 3;
}

/** The lines of a cost sheet in the order they are read, each of the maker's own rows by itself. */
export function costLines(sheet: CostSheet): readonly CostLine[] {
  const own = sheet.rows.filter(({ id, table }) => table === 'case' && id.startsWith('own_'));
  return costLineIds.flatMap((id) => {
    const rows = id === 'ownCosts' ? own : sheet.rows.filter((row) => row.id === id);
    return rows.map((row) => ({ row, family: familyOf(row), shade: shades[id] }));
  });
}

// Helpers

const shades: Readonly<Record<CostLineId, 1 | 2 | 3>> = {
  blanks: 1,
  paper: 2,
  ink: 3,
  supplies: 3,
  electricity: 1,
  wear: 2,
  labour: 1,
  overhead: 1,
  packaging: 1,
  delivery: 1,
  ownCosts: 1,
  spoilage: 1,
  reprints: 1,
};

function familyOf({ family }: GridRow): Family {
  switch (family) {
    case 'materials':
    case 'time':
    case 'running':
    case 'loss':
    case 'house':
      return family;
    case 'own':
    case 'price':
    case 'quantity':
      return 'house';
    default:
      return family satisfies never;
  }
}
