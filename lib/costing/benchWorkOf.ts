import type { BenchWork, PressRun } from '@/lib/calendar/benchWork';
import type { StageMinutes } from '@/lib/calendar/pace';
import type { CostedJob } from '@/lib/grid/costJob';
import { caseValue, wholeJob } from '@/lib/grid/costSheet';

/** Breaks at the press, where no rest is in the minutes; as in the worked run, from memory. */
const BREAK_MINUTES = 10;

/**
 * What a costed job asks of the bench, from the sums that price it. A press keeps the clock: the minutes it works alone
 * count beside those of the hands.
 */
export function benchWorkOf(costed: CostedJob): BenchWork {
  const { sheet, laidOut } = costed;
  const { job } = laidOut;
  const rest = job.rates.restAllowance.value;
  const paid = (minutes: number) => minutes * (1 + rest);
  const once = (row: string) => paid(sheet.inputs.job[row]?.value ?? 0);
  const stages = stagesOf(costed);
  const print = paid(wholeJob(sheet, 'sheetTime'));
  // Where the printer takes longer than all the work of the hands, the rest of its time is waited for.
  const waited = Math.max(0, stages.printer - stages.hands);
  return {
    before: [{ what: 'print', minutes: print + waited }],
    press: {
      pieces: wholeJob(sheet, 'goodPieces'),
      sessions: wholeJob(sheet, 'sessions'),
      setUpMinutes: once('setUpMinutes'),
      cleanDownMinutes: once('cleanDownMinutes'),
      breakMinutes: rest > 0 ? 0 : BREAK_MINUTES,
      inkMl: job.rates.sessionInk.value,
      runs: runsOf(costed),
    },
    after: [
      {
        what: 'finish',
        minutes: paid(
          sheet.cases.reduce((sum, { lineId, quantity }) => {
            const line = job.lines.find((one) => one.line.id === lineId);
            return sum + quantity * (line?.finishMinutes.value ?? 0);
          }, 0),
        ),
      },
      { what: 'pack', minutes: once('packMinutes') },
      { what: 'deliver', minutes: once('deliverMinutes') },
    ],
  };
}

/** @returns minutes of the whole job by who is busy: printer, press, hands. */
export function stagesOf(costed: CostedJob): StageMinutes {
  const { sheet } = costed;
  return {
    pieces: wholeJob(sheet, 'goodPieces'),
    printer: wholeJob(sheet, 'sheets') * (sheet.inputs.job.printerMinutesPerSheet?.value ?? 0),
    press: runsOf(costed).reduce((sum, { minutes }) => sum + minutes, 0),
    hands: wholeJob(sheet, 'benchTime'),
  };
}

/** Each print of each line, tests and spoiled pieces included. */
function runsOf({ sheet, laidOut: { job } }: CostedJob): readonly PressRun[] {
  return job.lines.flatMap(({ line, placements }) =>
    placements.map(({ placement, handMinutes, aloneMinutes }, slot): PressRun => {
      const presses = sheet.cases.reduce(
        (sum, one, index) =>
          one.lineId === line.id ? sum + one.quantity * caseValue(sheet, `presses_${slot + 1}`, index) : sum,
        0,
      );
      const each = handMinutes.value * (1 + job.rates.restAllowance.value) + aloneMinutes.value;
      return { name: placement.name, minutes: presses * each };
    }),
  );
}
