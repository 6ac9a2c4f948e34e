import type { CostFacts } from '@/lib/check/costFacts';
import { type CostedJob, costJob } from '@/lib/grid/costJob';
import { caseValue, wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { piecesOf } from '@/lib/grid/fillLine';
import type { CheckedJob, ResolvedLine } from '@/lib/job/checkedJob';
import { layOutJob } from '@/lib/layout/layOutJob';
import { lyingPrints } from '@/lib/layout/lyingPrints';
import { sheetsOf } from '@/lib/layout/sheetsOf';
import { priceLine, type TablePrice } from '@/lib/price/priceTable';
import { askedLine, suggestedPrice } from '@/lib/price/suggestedPrice';
import { taxTerms } from '@/lib/price/taxTerms';
import { fromMinor } from '@/shared/money';
import { benchWorkOf } from './benchWorkOf';

/** @returns what the check needs to know of the sums to judge time, price, paper and press order. */
export function costFactsOf(costed: CostedJob, grid: Grid): CostFacts {
  const { sheet, laidOut } = costed;
  const asked = new Map(
    laidOut.job.lines.flatMap(({ line, sizes }) =>
      sizes.map(({ size, askedPrice }) => [JSON.stringify([line.id, size]), askedPrice] as const),
    ),
  );
  const { written } = taxTerms(sheet);
  const table = ownPricedTable(costed, grid);
  const cases = sheet.cases.map(({ lineId, size }, index) => {
    const fees = caseValue(sheet, 'fees', index);
    return {
      lineId,
      size,
      price: asked.get(JSON.stringify([lineId, size])) ?? null,
      outOfPocketFloor: written(caseValue(sheet, 'outOfPocketFloor', index)),
      fullCost: written(caseValue(sheet, 'fullCost', index) + fees),
      fees: written(fees),
    };
  });
  // A list is made for those lines alone whose price is no price.
  const tooLow = new Set(
    cases
      .filter(({ price, outOfPocketFloor }) => price !== null && price < outOfPocketFloor)
      .map(({ lineId }) => lineId),
  );
  return {
    attendedMinutes: wholeJob(sheet, 'attended'),
    benchMinutes: wholeJob(sheet, 'benchTime'),
    work: benchWorkOf(costed),
    sheets: wholeJob(sheet, 'sheets'),
    cases,
    suggested: laidOut.job.lines.flatMap((line) => {
      if (!tooLow.has(line.line.id)) return [];
      const found = suggestedPrice(laidOut.job, priceLine(costed, line, grid), piecesOf(line));
      const { askedPrice, upCharges } = askedLine(line.line, found, sheet.currency);
      return askedPrice === null ? [] : [{ lineId: line.line.id, askedPrice, upCharges }];
    }),
    placements: laidOut.prints.map(
      ({ lineId, placementId, print, perSheet, pieces: count, sheets, spare }) => ({
        lineId,
        placementId,
        print,
        perSheet,
        pieces: count,
        sheets,
        spare,
      }),
    ),
    lying:
      laidOut.job.job.gang === 'together'
        ? lyingPrints(laidOut.prints, sheetsOf(laidOut), laidOut.job.sheet)
        : [],
    pressOrders: laidOut.job.lines
      .filter((line) => line.placements.length > 1)
      .map((line) => pressOrder(costed, line, grid)),
    ownPrices: table.flatMap(({ lineId, size, from, pricedAt, isOwn, price, margin }) => {
      const own = fromMinor(price, sheet.currency);
      return isOwn ? [{ lineId, size, from, at: pricedAt, written: own, profit: margin * own }] : [];
    }),
    breakPrices: table.map(({ lineId, size, from, price }) => ({
      lineId,
      size,
      from,
      written: fromMinor(price, sheet.currency),
    })),
  };
}

/** The prices of all breaks of the lines for which the maker has typed one. */
function ownPricedTable(costed: CostedJob, grid: Grid): readonly TablePrice[] {
  return costed.laidOut.job.lines.flatMap((line) =>
    line.line.ownPrices.length === 0 ? [] : priceLine(costed, line, grid).table,
  );
}

/**
 * The cheapest order to press in is by falling scrap share ÷ cost of the press. Where that is another order than
 * the maker's, the job is costed in it too, and the difference is the saving.
 */
function pressOrder(
  { sheet, laidOut }: CostedJob,
  line: ResolvedLine,
  grid: Grid,
): CostFacts['pressOrders'][number] {
  const first = sheet.cases.findIndex(({ lineId }) => lineId === line.line.id);
  const ranked = line.placements
    .map((resolved, index) => ({
      resolved,
      loss: resolved.scrap.value / caseValue(sheet, `pressCost_${index + 1}`, first),
    }))
    .sort((a, b) => b.loss - a.loss)
    .map(({ resolved }) => resolved);
  const stay = { lineId: line.line.id, cheaperOrder: null, saving: 0 };
  if (ranked.every((resolved, index) => resolved === line.placements[index])) return stay;
  const lines = laidOut.job.lines.map((other) => (other === line ? { ...line, placements: ranked } : other));
  const again = costJob(layOutJob({ ...laidOut.job, lines } as CheckedJob), grid);
  if (again.kind === 'faulty') return stay;
  const saving = sheet.fullCost - again.job.sheet.fullCost;
  if (saving <= 0) return stay;
  return { lineId: line.line.id, cheaperOrder: ranked.map(({ placement }) => placement.id), saving };
}
