import type { CostFacts } from '@/lib/check/costFacts';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { CheckedJob, KnownPress } from '@/lib/job/checkedJob';
import { piecesOfJob } from '@/lib/job/piecesOfJob';
import type { Finding, Fix, Where } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';
import { sessionsOf } from './sessions';
import { splitFix } from './splitFix';

/** ELE-04: what a job asks of its machines against what their makers rate them for, where that is known. */
export const dutyRating = (job: CheckedJob, facts: CostFacts): readonly Finding[] => [
  ...sheetsPerMonth(job, facts),
  ...pressesOf(job).flatMap((press) => pressDuty(job, facts, press)),
];

function sheetsPerMonth({ printer, workshop }: CheckedJob, { sheets }: CostFacts): readonly Finding[] {
  const index = workshop.printers.findIndex(({ id }) => id === printer.id);
  const where: Where = { document: 'workshop', path: ['printers', index, 'ratedSheetsPerMonth'] };
  return judge('sheets', printer.name, sheets, printer.ratedSheetsPerMonth, where, null);
}

interface PressUse {
  readonly press: KnownPress;
  /** Over the whole job, spoiled pieces and tests included. */
  readonly presses: number;
  readonly hotMinutes: number;
}

function pressDuty(
  job: CheckedJob,
  facts: CostFacts,
  { press, presses, hotMinutes }: PressUse,
): readonly Finding[] {
  const sessions = sessionsOf(job);
  const { pressesPerDay, hotHoursPerDay } = press.rating;
  const index = job.workshop.presses.findIndex(({ id }) => id === press.id);
  const where = (key: string): Where => ({ document: 'workshop', path: ['presses', index, 'rating', key] });
  const tell = (variant: 'presses' | 'hours', whole: number, rated: number | null, key: string) =>
    judge(
      variant,
      press.name,
      whole / sessions,
      rated,
      where(key),
      lighterDays(job, facts, whole / (rated ?? whole)),
    );
  return [
    ...tell('presses', presses, pressesPerDay, 'pressesPerDay'),
    ...tell('hours', hotMinutes / 60, hotHoursPerDay, 'hotHoursPerDay'),
  ];
}

function judge(
  variant: 'presses' | 'hours' | 'sheets',
  machine: string,
  planned: number,
  rated: number | null,
  where: Where,
  fix: Fix | null,
): readonly Finding[] {
  const { full, double } = thresholds.duty;
  if (rated === null || planned <= rated * full.value + 1e-9) return [];
  return [
    makeFinding({
      id: 'ELE-04',
      severity: planned > rated * double.value + 1e-9 ? 'stop' : 'caution',
      variant,
      where,
      found: { value: planned, unit: variant === 'hours' ? 'h' : variant },
      limit: { value: rated, unit: variant === 'hours' ? 'h' : variant },
      facts: { machine, planned, rated },
      fix,
    }),
  ];
}

/** So many pieces a session that none asks more of the press than it is rated for. */
const lighterDays = (job: CheckedJob, facts: CostFacts, times: number): Fix | null =>
  splitFix(job, facts, Math.floor(piecesOfJob(job) / times));

function pressesOf({ lines }: CheckedJob): readonly PressUse[] {
  const uses = new Map<string, PressUse>();
  for (const { sizes, placements } of lines) {
    let entering = sizes.reduce((sum, { quantity }) => sum + quantity, 0);
    for (const { placement, press, scrap, hotMinutes } of placements.toReversed()) {
      entering /= 1 - scrap.value;
      const presses = entering / placement.recipe.steps.piecesPerPress + placement.testPresses;
      // Minutes are a piece's own share of a press, however many lie in it.
      const pieces = entering + placement.testPresses;
      const before = uses.get(press.id);
      uses.set(press.id, {
        press,
        presses: presses + (before?.presses ?? 0),
        hotMinutes: pieces * hotMinutes.value + (before?.hotMinutes ?? 0),
      });
    }
  }
  return [...uses.values()];
}
