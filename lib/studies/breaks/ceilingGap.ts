import { type CostSheet, caseValue } from '@/lib/grid/costSheet';
import type { TaxTerms } from '@/lib/price/taxTerms';
import type { Line } from '@/shared/schemas/job';

/** What a crowd pays lies under what the job needs: a mean piece of the line, as the channel writes prices. */
export interface CeilingGap {
  /** A lower price is no answer under the floor: every piece sold would cost money. */
  readonly kind: 'underFloor' | 'underTarget';
  readonly ceiling: number;
  /** Out-of-pocket floor, or target. */
  readonly needed: number;
}

/** @returns null where the maker knows of no ceiling, or the target fits under it. */
export function ceilingGap(sheet: CostSheet, line: Line, tax: TaxTerms): CeilingGap | null {
  const ceiling = line.marketCeiling;
  if (ceiling === null) return null;
  const own = sheet.cases.flatMap((one, index) =>
    one.lineId === line.id ? [{ quantity: one.quantity, index }] : [],
  );
  const pieces = own.reduce((sum, { quantity }) => sum + quantity, 0);
  const mean = (row: string) =>
    tax.written(
      own.reduce((sum, { quantity, index }) => sum + quantity * caseValue(sheet, row, index), 0) / pieces,
    );
  const floor = mean('outOfPocketFloor');
  if (ceiling < floor - 1e-9) return { kind: 'underFloor', ceiling, needed: floor };
  const target = mean('target');
  return ceiling < target - 1e-9 ? { kind: 'underTarget', ceiling, needed: target } : null;
}
