import { readOwnFormulas } from '@/lib/grid/readOwnFormulas';
import { formulaFindings } from '@/lib/grid/rowFindings';
import type { Finding } from '@/shared/finding';
import type { OwnRow } from '@/shared/schemas/ownRow';

/** @returns what keeps the formula of a row from being read among the others; the engine comes along with this file. */
export function judgeOwnFormula(
  row: OwnRow,
  others: readonly OwnRow[],
  placements: number,
): readonly Finding[] {
  const rows = [...others, row];
  const found = readOwnFormulas(rows, placements).filter(({ rowId }) => rowId === row.id);
  return formulaFindings(found, [], rows);
}
