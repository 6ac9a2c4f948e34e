import type { CostedJob } from '@/lib/grid/costJob';
import { type CostSheet, wholeJob } from '@/lib/grid/costSheet';
import type { StandardWork } from '@/shared/schemas/making/runPapers';
import type { OwnRow } from '@/shared/schemas/ownRow';
import { testPresses } from './testPresses';

/** @returns what of a job's costs is the same however many pieces come out well */
export function onceOf({ sheet, laidOut: { job } }: CostedJob): NonNullable<StandardWork['once']> {
  const given = (row: string) => sheet.inputs.job[row]?.value ?? 0;
  const shared = (row: string) => sheet.jobValues[row] ?? 0;
  const tariff = given('tariff');
  const warm = wholeJob(sheet, 'sessions') * shared('warmUpKwh') * tariff;
  return {
    testMl: wholeJob(sheet, 'inkTests'),
    otherCost:
      given('packagingPerOrder') +
      given('deliveryKm') * given('travelRate') +
      warm +
      testsCost(sheet) +
      job.ownRows.reduce((sum, row) => sum + ownOnce(sheet, row), 0),
    feeShare: shared('feeShare'),
  };
}

// Helpers

/** Tape, wear and power of the planned tests, and wear and power of printing their sheets. */
function testsCost(sheet: CostSheet): number {
  const given = (row: string) => sheet.inputs.job[row]?.value ?? 0;
  const printing =
    (sheet.jobValues.printerWear ?? 0) +
    ((given('printerPowerKw') * given('printerMinutesPerSheet')) / 60) * given('tariff');
  const pressing = testPresses(sheet).reduce((sum, { slot, lineId, presses, sheets }) => {
    const line = sheet.lineIds.indexOf(lineId);
    const ofLine = (row: string) => sheet.lineValues[row]?.[line] ?? 0;
    const each = ofLine(`suppliesOfPress_${slot}`) + ofLine(`pressWear_${slot}`);
    return sum + presses * each + sheets * printing;
  }, 0);
  return pressing + wholeJob(sheet, 'holdKwhTests') * given('tariff');
}

/** A row of the maker's own that is paid once an order, a design or a session; a formula is taken to grow with pieces. */
const ownOnce = (sheet: CostSheet, { id, cost }: OwnRow): number =>
  cost.kind === 'driver' && ['order', 'design', 'session'].includes(cost.driver) ? wholeJob(sheet, id) : 0;
