import type { Decimal } from 'decimal.js';
import type { OwnRow } from '@/shared/schemas/ownRow';
import type { JobInput } from '@/shared/schemas/request';
import { exact, ONE, sum, ZERO } from './exact';
import { costsOf, type Figures, pricesOf, quantitiesOf } from './figuresOf';
import { lineAlone } from './lineAlone';
import { ownCostsOfJob, ownCostsOfPiece, ownRowsOf } from './ownCostsOf';
import {
  type LinePlan,
  type OtherBatch,
  type Plan,
  type PrintsPerSheet,
  planOf,
  type SizePlan,
} from './planOf';
import { type Shop, shopOf } from './shopOf';
import { groupOf, jobUse, pieceUse, type Use } from './use';

export interface RecomputedCase {
  readonly lineId: string;
  readonly size: string;
  readonly quantity: Decimal;
  readonly figures: Figures;
}

/** The whole model of one job, worked out anew in decimals. */
export interface Recomputed {
  readonly job: Figures;
  readonly lines: readonly Figures[];
  /** One good piece of each size of each line, in the order of the blank's sizes. */
  readonly cases: readonly RecomputedCase[];
  readonly whole: Figures;
}

/**
 * Works a job out from its documents and from the count of prints on a sheet, without the formula grid. The
 * whole job is worked out from its totals, each case from its shares of them.
 */
export function recompute(input: JobInput, perSheet: PrintsPerSheet): Recomputed {
  const shop = shopOf(input);
  const plan = planOf(input, shop, perSheet);
  const slots = slotsOf(plan);
  const rows = ownRowsOf(input);
  const pieces = plan.lines.flatMap((line) => workedPieces(plan, line, shop, rows));
  const use = jobUse(plan, shop, slots);
  const quantities = quantitiesOf(use, shop);
  const own = ownCostsOfJob(
    rows,
    use,
    quantities,
    pieces.map((piece) => ({ count: piece.size.pieces, own: piece.own })),
  );
  const costs = costsOf(use, quantities, shop, own);
  const paid = sum(pieces.map(({ size, price }) => size.pieces.times(price)));
  return {
    job: jobFigures(shop),
    lines: plan.lines.map((line) => lineFigures(line, slots)),
    cases: pieces.map(({ line, size, figures }) => ({
      lineId: line.id,
      size: size.size,
      quantity: size.pieces,
      figures,
    })),
    whole: {
      ...slotFigures(use),
      ...quantities,
      ...costs,
      ...pricesOf(use, quantities, costs, shop, paid),
      sessions: plan.sessions,
      jobPieces: plan.pieces,
    },
  };
}

/** Figures of one good piece of each size of a line, in a batch of the line that is not the one ordered. */
export function recomputeBatch(
  input: JobInput,
  perSheet: PrintsPerSheet,
  other: OtherBatch,
): ReadonlyMap<string, Figures> {
  const shop = shopOf(input);
  const plan = planOf(input, shop, perSheet, other);
  const rows = ownRowsOf(input);
  const lines = plan.lines.filter(({ id }) => id === other.lineId);
  return new Map(
    lines.flatMap((line) =>
      workedPieces(plan, line, shop, rows).map(({ size, figures }) => [size.size, figures] as const),
    ),
  );
}

/**
 * The same in an order of that line and nothing else, as a list sells it: the documents without the other lines.
 */
export function recomputeAlone(
  input: JobInput,
  perSheet: PrintsPerSheet,
  other: OtherBatch,
): ReadonlyMap<string, Figures> {
  return recomputeBatch(lineAlone(input, other.lineId), perSheet, other);
}

const slotsOf = (plan: Plan): number => Math.max(...plan.lines.map(({ placements }) => placements.length));

function workedPieces(plan: Plan, line: LinePlan, shop: Shop, rows: readonly OwnRow[]) {
  const slots = slotsOf(plan);
  return line.sizes.map((size) => {
    const use = pieceUse(plan, line, size, shop, slots);
    const quantities = quantitiesOf(use, shop);
    const own = ownCostsOfPiece(rows, { use, quantities, size, jobPieces: plan.pieces });
    const costs = costsOf(use, quantities, shop, own);
    const prices = pricesOf(use, quantities, costs, shop, use.asked);
    const figures = {
      ...slotFigures(use),
      ...printFigures(line, size, shop, slots),
      ...quantities,
      ...costs,
      ...prices,
      startShare: line.startShare,
      sessions: plan.sessions,
    };
    return { line, size, own, price: prices.price, figures };
  });
}

const jobFigures = (shop: Shop): Figures => ({
  printerWear: shop.printerWear,
  overheadRate: shop.overheadRate,
  restFactor: shop.restFactor,
  warmUpKwh: shop.warmUpKwh,
  warmUpMinutes: shop.warmUpMinutes,
  feeShare: shop.feeShare,
  keepShare: ONE.minus(shop.feeShare).minus(shop.targetMargin),
  cardTickets: shop.cardTicketsPerPiece,
});

/** A press that a line does not use lets every piece through at no cost. */
function lineFigures(line: LinePlan, slots: number): Figures {
  const each = Array.from({ length: slots }, (_, index): readonly (readonly [string, Decimal])[] => {
    const placement = line.placements[index];
    return [
      [`enter_${index + 1}`, placement?.entering ?? ONE],
      [`pressWear_${index + 1}`, placement?.wear ?? ZERO],
      [`suppliesOfPress_${index + 1}`, placement?.supplies ?? ZERO],
    ];
  });
  return { ...Object.fromEntries(each.flat()), blanksPerPiece: line.blanksPerPiece };
}

const slotFigures = (use: Use): Figures =>
  Object.fromEntries(
    use.slots.flatMap((slot, index) => [
      [`entering_${index + 1}`, slot.entering],
      [`testsShared_${index + 1}`, slot.tests],
      [`fullSheets_${index + 1}`, slot.wholeSheets],
      [`sheetsRun_${index + 1}`, slot.sheetsRun],
      [`presses_${index + 1}`, slot.entering.plus(slot.tests)],
    ]),
  );

/** Ink of one print, and all cost of sending one more piece through a press. */
function printFigures(line: LinePlan, size: SizePlan, shop: Shop, slots: number): Figures {
  const paid = shop.wage.plus(shop.overheadRate).times(shop.restFactor).div(60);
  const each = Array.from({ length: slots }, (_, index): readonly (readonly [string, Decimal])[] => {
    const placement = line.placements[index];
    if (placement === undefined) {
      return [
        [`inkPerPrint_${index + 1}`, ZERO],
        [`pressCost_${index + 1}`, ZERO],
      ];
    }
    const group = groupOf(placement, size.size);
    const sheet = sum([
      shop.sheetPrice,
      shop.printerWear,
      shop.sheetMinutes.times(paid),
      shop.printerKwh.times(shop.tariff),
    ]);
    const printed = sheet
      .times(placement.perReplacement(group))
      .plus(group.inkPerPrint.times(shop.inkPrice))
      .div(shop.kept);
    const pressed = sum([
      placement.supplies,
      placement.wear,
      placement.holdKwh.times(shop.tariff),
      placement.handMinutes.times(paid),
    ]);
    return [
      [`inkPerPrint_${index + 1}`, group.inkPerPrint],
      [`pressCost_${index + 1}`, printed.plus(pressed)],
    ];
  });
  return Object.fromEntries(each.flat());
}

/** Whether a double is a decimal to 1e-9 of its size; figures that are differences may miss by 1e-9 outright. */
export function agrees(value: number, wanted: Decimal, isDifference: boolean): boolean {
  const gap = exact(value).minus(wanted).abs();
  return gap.lte(wanted.abs().times('1e-9')) || gap.lte(isDifference ? '1e-9' : '1e-15');
}
