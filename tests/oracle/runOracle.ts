import type { Decimal } from 'decimal.js';
import type { JobInput } from '@/shared/schemas/request';
import { exact, known, ONE, sum, ZERO } from './exact';
import { type LinePlan, type PlacementPlan, type PrintsPerSheet, planOf } from './planOf';
import { shopOf } from './shopOf';
import { jobUse, pieceUse } from './use';

/** One print of one line in a run, in decimals. */
export interface PressOracle {
  readonly lineId: string;
  /** Place in its line, from 0. */
  readonly slot: number;
  /** N ÷ Π y of this press and all after it. */
  readonly entering: Decimal;
  /** At the pace of the press: its hands and what it works alone, of the tests and of all that enter. */
  readonly testMinutes: Decimal;
  readonly pressMinutes: Decimal;
}

/** What one job of a run is expected to take for so many good pieces. */
export interface RunOracle {
  readonly presses: readonly PressOracle[];
  /** N ÷ Y ÷ (1 − d), all lines. */
  readonly blanks: Decimal;
  readonly blanksMoney: Decimal;
  readonly sheets: Decimal;
  readonly sheetPrice: Decimal;
  readonly inkMl: Decimal;
  readonly inkPrice: Decimal;
  /** Paid minutes. */
  readonly minutes: Decimal;
  readonly wage: Decimal;
  readonly overhead: Decimal;
  /** On the clock, whatever the sessions: sheets, one heating-up and its end, folding. */
  readonly printMinutes: Decimal;
  readonly setUpMinutes: Decimal;
  readonly cleanDownMinutes: Decimal;
  readonly finishMinutes: Decimal;
}

/**
 * A run of one job from the formulas of the trade: E_j = N ÷ Π y, B = E_1 ÷ (1 − d), H_j = (whole sheets + (E_j − N) q) ÷
 * (1 − r) and its tests, ink of every print that is printed and of each session, minutes of each element times its
 * driver. What a piece of a size takes goes with its pieces, whole sheets shared by those planned; order, design, session
 * and tests stay.
 *
 * @param goodOf good pieces of a size; left out they are those that were wanted
 */
export function runOracle(
  input: JobInput,
  perSheet: PrintsPerSheet,
  goodOf?: (lineId: string, size: string) => number,
): RunOracle {
  const shop = shopOf(input);
  const plan = planOf(input, shop, perSheet);
  const slots = Math.max(...plan.lines.map(({ placements }) => placements.length));
  const planned = jobUse(plan, shop, slots);
  const lines = plan.lines.map((line) => madeOf(line, goodOf));
  const pieces = sum(lines.map(({ good }) => good));
  const each = lines.flatMap(({ line, sizes }) =>
    sizes.map(({ size, good }) => ({ good, use: pieceUse(plan, line, size, shop, slots) })),
  );
  const sheets = sum(
    each.flatMap(({ good, use }) => use.slots.map(({ sheetsRun }) => sheetsRun.times(good))),
  ).plus(sum(planned.slots.map(({ testSheets }) => testSheets)));
  const presses = lines.flatMap(({ line, good }) =>
    line.placements.map((placement, slot) => pressOf(line, placement, slot, good, shop.restFactor)),
  );
  const hands = sum(
    lines.flatMap(({ line, good }) =>
      line.placements.map(({ entering, tests, handMinutes }) =>
        entering.times(good).plus(tests).times(handMinutes),
      ),
    ),
  );
  const finish = sum(lines.map(({ line, good }) => line.finishMinutes.times(good)));
  const once = shop.orderMinutes
    .plus(sum([...plan.artworks.values()].map(({ prep }) => prep)))
    .plus(shop.sessionMinutes.times(plan.sessions));
  const feed = sheets.times(shop.sheetMinutes).times(shop.restFactor);
  const printing = sheets.times(shop.printerMinutes);
  const rate = (name: 'setUpMinutes' | 'cleanDownMinutes') =>
    exact(known(input.job.rates[name] ?? input.workshop.rates[name], name).value).times(shop.restFactor);
  return {
    presses,
    blanks: sum(lines.map(({ line, good }) => line.blanksPerPiece.times(good))),
    blanksMoney: sum(lines.map(({ line, money }) => line.blanksPerPiece.times(money))),
    sheets,
    sheetPrice: shop.sheetPrice,
    inkMl: sum(each.map(({ good, use }) => use.inkRun.times(good)))
      .plus(planned.inkTests)
      .plus(shop.sessionInk.times(plan.sessions)),
    inkPrice: shop.inkPrice,
    minutes: once
      .plus(sheets.times(shop.sheetMinutes))
      .plus(hands)
      .plus(finish)
      .plus(pieces.times(shop.sellingMinutes))
      .times(shop.restFactor),
    wage: shop.wage,
    overhead: shop.overheadRate,
    printMinutes: feed.gt(printing) ? feed : printing,
    setUpMinutes: rate('setUpMinutes'),
    cleanDownMinutes: rate('cleanDownMinutes'),
    finishMinutes: finish.times(shop.restFactor),
  };
}

/** What was used of a run. Money as it was paid for all of it; null where that is as planned. */
export interface UsedOracle {
  readonly blanks: number;
  readonly blanksMoney: number | null;
  readonly sheets: number;
  readonly sheetsMoney: number | null;
  readonly inkMl: number;
  readonly minutes: number;
}

/** Flexible-budget variances, money unrounded: (SP − AP) AQ, (SQ − AQ) SP, (SH − AH) rate; in favour above 0. */
export function varianceOracle(standard: RunOracle, used: UsedOracle): Readonly<Record<string, Decimal>> {
  const { blanks, blanksMoney, sheets, sheetPrice, inkMl, inkPrice, minutes, wage, overhead } = standard;
  const blankPrice = blanks.isZero() ? ZERO : blanksMoney.div(blanks);
  const price = (each: Decimal, quantity: number, paid: number | null) =>
    paid === null ? ZERO : each.times(quantity).minus(exact(paid));
  const hours = minutes.minus(exact(used.minutes)).div(60);
  return {
    blanksPrice: price(blankPrice, used.blanks, used.blanksMoney),
    blanksUsage: blanks.minus(used.blanks).times(blankPrice),
    paperPrice: price(sheetPrice, used.sheets, used.sheetsMoney),
    paperUsage: sheets.minus(exact(used.sheets)).times(sheetPrice),
    inkUsage: inkMl.minus(exact(used.inkMl)).times(inkPrice),
    labour: hours.times(wage),
    overhead: hours.times(overhead),
  };
}

// Helpers

function madeOf(line: LinePlan, goodOf: ((lineId: string, size: string) => number) | undefined) {
  const sizes = line.sizes.map((size) => {
    const good = goodOf === undefined ? size.pieces : exact(goodOf(line.id, size.size));
    return { size, good, money: good.times(size.blankPrice) };
  });
  return {
    ...{ line, sizes },
    good: sum(sizes.map(({ good }) => good)),
    money: sum(sizes.map(({ money }) => money)),
  };
}

function pressOf(
  line: LinePlan,
  { entering, tests, handMinutes, aloneMinutes }: PlacementPlan,
  slot: number,
  good: Decimal,
  restFactor: Decimal,
): PressOracle {
  const each = handMinutes.times(restFactor).plus(aloneMinutes.times(ONE));
  const enters = entering.times(good);
  return {
    ...{ lineId: line.id, slot, entering: enters },
    testMinutes: tests.times(each),
    pressMinutes: enters.times(each),
  };
}
