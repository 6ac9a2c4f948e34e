import type { CostedJob } from '@/lib/grid/costJob';
import { type CostSheet, caseValue } from '@/lib/grid/costSheet';
import { ownAmountId } from '@/lib/grid/rows/ownRows';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import type { StandardWork } from '@/shared/schemas/making/runPapers';
import type { OwnRow } from '@/shared/schemas/ownRow';

type Takes = StandardWork['lines'][number]['sizes'][number]['takes'];

/**
 * What one good piece takes: paper, ink and presses of its own line, so that of a line that is not made nothing is spent.
 * What an order, a design, a session and the tests take is no part of it. Whole sheets are spread over their pieces.
 *
 * @param line of the piece
 * @param index which case of the sums it is
 */
export function pieceTakes(
  { sheet, laidOut: { job } }: CostedJob,
  { placements, finishMinutes }: ResolvedLine,
  index: number,
): Takes {
  const given = (row: string) => sheet.inputs.job[row]?.value ?? 0;
  const of = (row: string) => caseValue(sheet, row, index);
  const lineIndex = sheet.lineIds.indexOf(sheet.cases[index]?.lineId ?? '');
  const ofLine = (row: string) => sheet.lineValues[row]?.[lineIndex] ?? 0;
  const slots = placements.map((_, slot) => slot + 1);
  const sum = (each: (slot: number) => number) => slots.reduce((all, slot) => all + each(slot), 0);
  const sheets = sum((slot) => of(`sheetsRun_${slot}`));
  const mL = of('inkRun');
  const supplies = sum((slot) => of(`entering_${slot}`) * ofLine(`suppliesOfPress_${slot}`));
  const wear =
    sum((slot) => of(`entering_${slot}`) * ofLine(`pressWear_${slot}`)) +
    sheets * (sheet.jobValues.printerWear ?? 0);
  const printingKwh = (given('printerPowerKw') * given('printerMinutesPerSheet') * sheets) / 60;
  const power = (of('holdKwhRun') + printingKwh) * given('tariff');
  const pieces = sheet.inputs.cases[index]?.jobPieces?.value ?? 1;
  const rest = sheet.jobValues.restFactor ?? 1;
  const presses = sum((slot) => of(`entering_${slot}`));
  const hands = placements.reduce(
    (all, { handMinutes }, slot) => all + of(`entering_${slot + 1}`) * handMinutes.value,
    0,
  );
  const minutes = (sheets * given('sheetMinutes') + hands + finishMinutes.value) * rest;
  const packaging = of('packaging') - given('packagingPerOrder') / pieces;
  const sellingDay = of('delivery') - (given('deliveryKm') * given('travelRate')) / pieces;
  const own = ownCosts(sheet, job.ownRows, { index, sheets, presses });
  const blank = of('blanksDrawn') * (sheet.inputs.cases[index]?.blankPrice?.value ?? 0);
  const materials = blank + sheets * given('sheetPrice') + mL * given('inkPrice') + supplies;
  return {
    ...{ sheets, mL },
    finishMinutes: finishMinutes.value * rest,
    otherCost: supplies + packaging + power + wear + sellingDay + own.all,
    reprints:
      given('reprintShare') *
      (materials + (minutes / 60) * (given('wage') + (sheet.jobValues.overheadRate ?? 0))),
    boughtIn: materials + packaging + power + own.paid,
  };
}

// Helpers

/** The maker's own rows but those paid once an order, a design or a session; a formula is taken to grow with pieces. */
function ownCosts(
  sheet: CostSheet,
  rows: readonly OwnRow[],
  { index, sheets, presses }: { readonly index: number; readonly sheets: number; readonly presses: number },
) {
  const times = { order: 0, design: 0, session: 0, sheet: sheets, press: presses, piece: 1 };
  let [all, paid] = [0, 0];
  for (const row of rows) {
    const amount =
      row.cost.kind === 'formula'
        ? caseValue(sheet, row.id, index)
        : times[row.cost.driver] * (sheet.inputs.job[ownAmountId(row)]?.value ?? 0);
    all += amount;
    if (row.outOfPocket) paid += amount;
  }
  return { all, paid };
}
