import { splitWhole } from '@/shared/splitWhole';
import type { CostLineId } from './costLines';
import { type CostSheet, wholeJob } from './costSheet';
import type { GridRow } from './rowTypes';

export type CostGroupId = 'blanks' | 'time' | 'overhead' | 'loss' | 'sheets' | 'packing' | 'running' | 'own';

interface CostGroup {
  readonly id: CostGroupId;
  readonly label: string;
  readonly lines: readonly CostLineId[];
}

/** Cost lines that are looked at together, in the order of the cost sheet. Every line stands in one of them. */
export const costGroups: readonly CostGroup[] = [
  { id: 'blanks', label: 'Blanks with freight', lines: ['blanks'] },
  { id: 'time', label: 'Your time', lines: ['labour'] },
  { id: 'overhead', label: 'Overhead', lines: ['overhead'] },
  { id: 'loss', label: 'Spoilage and reprints', lines: ['spoilage', 'reprints'] },
  { id: 'sheets', label: 'Sheets, ink, tape', lines: ['paper', 'ink', 'supplies'] },
  { id: 'packing', label: 'Packaging, delivery', lines: ['packaging', 'delivery'] },
  { id: 'running', label: 'Power and wear', lines: ['electricity', 'wear'] },
  { id: 'own', label: 'Your own rows', lines: ['ownCosts'] },
];

/** Where a group of several lines stands as a row; of one line it is that line. */
const groupRowId = ({ id, lines }: CostGroup): string =>
  lines.length === 1 ? (lines[0] ?? id) : `group_${id}`;

/** @returns the sheet with a row for every group, so that it opens to its lines as any row opens to its sum. */
export function withCostGroups(sheet: CostSheet): CostSheet {
  const groups = costGroups.filter(({ lines }) => lines.length > 1);
  const rows = groups.map(
    (group): GridRow => ({
      id: groupRowId(group),
      table: 'case',
      label: group.label,
      unit: 'money',
      family: 'price',
      total: 'adds',
      whole: 'itself',
      formula: group.lines.join(' + '),
      says: 'These lines of the cost sheet together.',
    }),
  );
  const sums = groups.map((group) => [
    groupRowId(group),
    [...sheet.cases, null].map((_, at) =>
      group.lines.reduce((sum, line) => sum + (sheet.values[line]?.[at] ?? 0), 0),
    ),
  ]);
  return {
    ...sheet,
    rows: [...sheet.rows, ...rows],
    values: { ...sheet.values, ...Object.fromEntries(sums) },
  };
}

interface GroupShare {
  readonly id: CostGroupId;
  readonly label: string;
  readonly rowId: string;
  /** Whole job, currency units, unrounded. */
  readonly amount: number;
  /** Share of full cost, 0 to 1; 0 where nothing costs anything. */
  readonly share: number;
  /** The share in whole per cent; those of all groups add to a hundred. */
  readonly percent: number;
}

/** @returns the groups that cost something, the dearest first; they add to full cost. */
export function groupShares(sheet: CostSheet): readonly GroupShare[] {
  const groups = costGroups
    .map((group) => {
      const amount = group.lines.reduce((sum, line) => sum + wholeJob(sheet, line), 0);
      const share = sheet.fullCost > 0 ? amount / sheet.fullCost : 0;
      return { id: group.id, label: group.label, rowId: groupRowId(group), amount, share };
    })
    .filter(({ amount }) => amount !== 0)
    .sort((a, b) => b.amount - a.amount);
  // One rounding for wherever a share is told: bar, list and sentence say the same.
  const percents = splitWhole(
    sheet.fullCost > 0 && groups.length > 0 ? 100 : 0,
    groups.map(({ share }) => share * 100),
  );
  return groups.map((group, at) => ({ ...group, percent: percents[at] ?? 0 }));
}
