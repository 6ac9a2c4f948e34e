import { closesInForce, type DayPaper } from '@/lib/stall/closeInForce';
import { runTime } from '@/lib/variances/runTime';
import { benchElements, sharedHours, standardsInForce } from '@/lib/variances/sharedHours';
import { grouped } from '@/shared/grouped';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { Run } from '@/shared/schemas/making/run';
import type { Hours, Pressing, RunStep, WorkElement } from '@/shared/schemas/making/runEvents';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import type { DayClose } from '@/shared/schemas/stallPapers';
import { LONG_DAY_MINUTES } from '@/shared/tables/longDay';
import { dayOfClose } from './takingRows';
import type { RowAbout } from './yearRow';

type StandardKept = Pick<Paper<'runStandard', RunStandard>, 'id' | 'body'> & { readonly withdrawn: boolean };

/** What says how long something took. */
export interface HoursNoted {
  readonly hours: readonly Entry<'hours', Hours>[];
  readonly closes: readonly DayPaper<'dayClose', DayClose>[];
  /** In order. */
  readonly runSteps: readonly Entry<'runStep', RunStep>[];
  readonly standards: readonly StandardKept[];
  readonly pressings: readonly Entry<'pressing', Pressing>[];
  readonly runs: Readonly<Record<string, Run>>;
}

/** Time worked. */
export interface HourRow {
  /** The entry or paper that says so. */
  readonly id: string;
  readonly day: string;
  readonly about: RowAbout;
  readonly minutes: number;
  readonly element: WorkElement | null;
  readonly note: string;
  readonly from: 'noted' | 'close' | 'closePlan' | 'standard';
  /** Told and not counted: the close of the day says what it took. */
  readonly isInClose: boolean;
}

/**
 * Hours of all years, each once. What a close says a day took is what that day took; what was noted for it beside counts
 * where it was at the bench. Bench hours of a day count as planned only where neither a run nor a note says them; work of a
 * run that nobody noted as its bridge has it, once it is closed.
 */
export function hourRows(noted: HoursNoted): readonly HourRow[] {
  const closes = closesInForce(noted.closes);
  const entries = noted.hours.map(({ id, body }): HourRow => {
    const { day, minutes, element, note } = body;
    const isDay = body.for.kind === 'stallDay' && closes.has(body.for.id);
    const isInClose = isDay && !benchElements.has(element);
    return { id, day, about: body.for, minutes, element, note, from: 'noted', isInClose };
  });
  const runs = closedRuns(noted);
  return [
    ...entries,
    ...[...closes.values()].flatMap((close) =>
      closeHours(close, entries, daysWithRuns(runs, entries, noted)),
    ),
    ...plannedHours(runs, noted),
  ];
}

/** @returns hours of those that count. */
export const sumOfHours = (rows: readonly HourRow[]): number =>
  rows.reduce((sum, { minutes, isInClose }) => (isInClose ? sum : sum + minutes), 0) / 60;

/** @returns days on which more was noted than a day has room for, with what was, rising; counted all the same. */
export function longDays(
  rows: readonly HourRow[],
): readonly { readonly day: string; readonly minutes: number }[] {
  const noted = rows.filter(({ from, isInClose }) => from === 'noted' && !isInClose);
  return [...grouped(noted, ({ day }) => day)]
    .map(([day, own]) => ({ day, minutes: own.reduce((sum, { minutes }) => sum + minutes, 0) }))
    .filter(({ minutes }) => minutes > LONG_DAY_MINUTES)
    .toSorted((one, other) => (one.day < other.day ? -1 : 1));
}

// Helpers

/** @returns stall days for which a run was made whose time is known: it is closed, or somebody noted hours of it. */
function daysWithRuns(
  closed: readonly ClosedRun[],
  entries: readonly HourRow[],
  { runs }: HoursNoted,
): ReadonlySet<string> {
  const timed = new Set(closed.map(({ runId }) => runId));
  for (const { about } of entries) if (about.kind === 'run') timed.add(about.id);
  const works = [...timed].flatMap((id) => runs[id]?.works ?? []);
  return new Set(works.flatMap(({ stallDayId }) => stallDayId ?? []));
}

function closeHours(
  { id, body }: DayPaper<'dayClose', DayClose>,
  entries: readonly HourRow[],
  hasRun: ReadonlySet<string>,
): readonly HourRow[] {
  const { stallDayId, result } = body;
  const about = { kind: 'stallDay', id: stallDayId } as const;
  const row = { id, day: dayOfClose(body), about, element: null, note: '', isInClose: false } as const;
  const hasBench = entries.some((one) => isAbout(one, 'stallDay', stallDayId) && !one.isInClose);
  const day: HourRow = { ...row, minutes: result.hours * 60, from: 'close' };
  const bench: HourRow = { ...row, minutes: result.benchHours * 60, from: 'closePlan' };
  const rows = hasBench || hasRun.has(stallDayId) ? [day] : [day, bench];
  return rows.filter(({ minutes }) => minutes > 0);
}

interface ClosedRun {
  readonly runId: string;
  readonly day: string;
  readonly standard: StandardKept;
}

/** Runs that are closed and not opened again, with the standard that counts. */
function closedRuns({ runSteps, standards }: HoursNoted): readonly ClosedRun[] {
  const inForce = standardsInForce(standards);
  return [...grouped(runSteps, ({ body }) => body.runId)].flatMap(([runId, own]) => {
    const last = own.findLast(({ body: { step } }) => step.what === 'closed' || step.what === 'reopened');
    const standard = inForce.get(runId);
    if (last?.body.step.what !== 'closed' || standard === undefined) return [];
    return [{ runId, day: last.body.day, standard }];
  });
}

/** What of closed runs nobody noted, as planned; selling and what else is done on a stall day is in its close. */
function plannedHours(runs: readonly ClosedRun[], { hours, standards, pressings }: HoursNoted) {
  if (runs.length === 0) return [];
  const shared = sharedHours(hours, standards);
  const pressed = grouped(pressings, ({ body }) => body.runId);
  const worked = grouped(hours, ({ body }) => (body.for.kind === 'run' ? body.for.id : ''));
  const bodies = <Of>(notes: readonly { readonly body: Of }[] = []) => notes.map(({ body }) => body);
  return runs.flatMap(({ runId, day, standard: { id, body } }): readonly HourRow[] => {
    const { plannedMinutes, onTheDayMinutes } = runTime({
      ...{ standard: body, pressings: bodies(pressed.get(runId)) },
      ...{ hours: bodies(worked.get(runId)), shared: shared.get(runId) ?? [] },
    });
    const about = { kind: 'run', id: runId } as const;
    const minutes = plannedMinutes - onTheDayMinutes;
    if (minutes <= 0) return [];
    return [{ id, day, about, minutes, element: null, note: '', from: 'standard', isInClose: false }];
  });
}

const isAbout = ({ about }: Pick<HourRow, 'about'>, kind: RowAbout['kind'], id: string): boolean =>
  about.kind === kind && 'id' in about && about.id === id;
