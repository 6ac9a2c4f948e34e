import type { CostedJob } from '@/lib/grid/costJob';
import { wholeJob } from '@/lib/grid/costSheet';
import type { WorkElement } from '@/shared/schemas/making/runEvents';
import type { StandardWork } from '@/shared/schemas/making/runPapers';

/** @returns the paid minutes of a job by element of work, rest in them; they add to all of them */
export function labourElements({ sheet, laidOut }: CostedJob): StandardWork['labour']['elements'] {
  const rest = sheet.jobValues.restFactor ?? 1;
  const whole = (row: string) => wholeJob(sheet, row);
  const given = (row: string) => sheet.inputs.job[row]?.value ?? 0;
  const sessions = whole('sessions');
  const finish = sheet.cases.reduce((sum, { lineId, quantity }) => {
    const line = laidOut.job.lines.find((one) => one.line.id === lineId);
    return sum + quantity * (line?.finishMinutes.value ?? 0);
  }, 0);
  const minutes: Readonly<Partial<Record<WorkElement, number>>> = {
    enquiry: given('enquiryMinutes'),
    art: whole('designTime'),
    proof: given('proofMinutes'),
    setUp: sessions * given('setUpMinutes'),
    sheets: whole('sheetTime'),
    presses: whole('pressTime'),
    finish,
    pack: given('packMinutes'),
    cleanDown: sessions * given('cleanDownMinutes'),
    deliver: given('deliverMinutes'),
    selling: whole('sellingTime'),
  };
  return Object.entries(minutes)
    .filter(([, many]) => many > 0)
    .map(([element, many]) => ({ element, minutes: many * rest }));
}
