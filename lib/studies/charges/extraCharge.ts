import { type CostedJob, shapeOf } from '@/lib/grid/costJob';
import { UnknownFigure } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { fillJob } from '@/lib/grid/fillJob';
import { fillCase, fillLine, piecesOf } from '@/lib/grid/fillLine';
import { present } from '@/lib/grid/present';
import { writtenPrice } from '@/lib/price/writtenPrice';
import { type MinorUnits, toPriceEnding } from '@/shared/money';
import { failed, ok, type Result } from '@/shared/result';
import type { OwnRow } from '@/shared/schemas/ownRow';

/** Something done beside the prints: a name, folding and bagging, splitting by name, a delivery, a change. */
export interface Extra {
  /** Paid minutes each time, without the allowance for rest. */
  readonly minutes: number;
  /** Printed sheets each time, taken alone: a name has no neighbours to share one with. */
  readonly sheets: number;
  /** Money out of the pocket each time, currency units. */
  readonly cash: number;
  /** The least that is charged, as written, currency units; 0 where there is none. */
  readonly atLeast: number;
}

interface ExtraCharge {
  /** Full cost each time, unrounded. */
  readonly cost: number;
  /** Price for the target margin, without tax, unrounded. */
  readonly target: number;
  /** Price to write, at the maker's ending; the least charge where that is more. */
  readonly written: MinorUnits;
}

interface ExtraProblem {
  readonly kind: 'notAnAmount';
  readonly field: keyof Extra;
  readonly value: number;
}

/** The amounts of an extra, as rows of the grid, and its cost and price in formulas over the workshop's rates. */
const rows: readonly OwnRow[] = [
  ...(['minutes', 'sheets', 'cash'] as const).map((field): OwnRow => amountRow(field, 0)),
  formulaRow(
    'own_extra_cost',
    'amount_own_extra_minutes * (1 + restAllowance) / 60 * (wage + overheadRate) + amount_own_extra_sheets / (1 - sheetReject) * (sheetPrice + printerWear + sheetMinutes * (1 + restAllowance) / 60 * (wage + overheadRate) + printerPowerKw * printerMinutesPerSheet / 60 * tariff) + amount_own_extra_cash',
  ),
  formulaRow('own_extra_price', 'own_extra_cost / keepShare'),
];

/**
 * What an extra costs each time, at the workshop's own rates, and what to charge for it.
 *
 * @returns money each time; a negative or endless amount is told, never taken as 0
 */
export function extraCharge(
  { laidOut }: CostedJob,
  grid: Grid,
  extra: Extra,
): Result<ExtraCharge, ExtraProblem> {
  for (const field of ['minutes', 'sheets', 'cash', 'atLeast'] as const) {
    const value = extra[field];
    if (!(value >= 0 && value <= 1e6)) return failed({ kind: 'notAnAmount', field, value });
  }
  const job = {
    ...laidOut.job,
    ownRows: rows.map((row) => {
      const field = (['minutes', 'sheets', 'cash'] as const).find((name) => row.id === `own_extra_${name}`);
      return field === undefined ? row : amountRow(field, extra[field]);
    }),
  };
  const [line] = job.lines;
  const size = line?.sizes[0];
  if (line === undefined || size === undefined) throw new UnknownFigure('a job without pieces has no rates');
  const shape = { ...shapeOf(job), wanted: ['own_extra_cost', 'own_extra_price'] };
  const inputs = fillCase(job, laidOut.prints, line, size, piecesOf(line), size.quantity, shape.placements);
  const values = grid.evaluate(shape, {
    job: fillJob(job),
    lines: [
      {
        lineId: line.line.id,
        inputs: fillLine(line, shape.placements),
        cases: [{ size: size.size, inputs }],
      },
    ],
  });
  const column = values.cases[0]?.[0];
  const target = present(column, 'own_extra_price');
  const written = writtenPrice(job, target);
  const least = toPriceEnding(extra.atLeast, job.workshop.policy.priceStep, job.workshop.currency);
  return ok({
    cost: present(column, 'own_extra_cost'),
    target,
    written: Math.max(written, least) as MinorUnits,
  });
}

function amountRow(field: 'minutes' | 'sheets' | 'cash', value: number): OwnRow {
  return {
    id: `own_extra_${field}`,
    label: field,
    outOfPocket: false,
    cost: {
      kind: 'driver',
      driver: 'order',
      amount: { value, unit: 'money', date: '2000-01-01', origin: 'yours' },
    },
  };
}

function formulaRow(id: string, formula: string): OwnRow {
  return { id, label: id, outOfPocket: false, cost: { kind: 'formula', formula } };
}
