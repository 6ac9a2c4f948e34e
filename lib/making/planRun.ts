import { DAY_MINUTES, dayOfMinute, minuteOf } from '@/lib/calendar/minutes';
import { inClockOrder } from '@/lib/pressing/pressTurns';
import { daysBetween } from '@/shared/days';
import type { ClockPart } from '@/shared/schemas/making/runPapers';
import { emptyBlocks, overlappingBlocks } from './clock/doubtfulBlocks';
import type { LaidPart } from './clock/laidPart';
import { type LaidRun, layRun } from './clock/layRun';
import { moreHeatings } from './clock/moreHeatings';
import { type RunBlocks, runBlocks } from './clock/runBlocks';
import { heatingsNeeded, leastSessionMinutes, minutesOf, runSessions } from './clock/runSessions';
import { type RunWorkload, runWorkload } from './clock/runWork';
import { runPace } from './pace/runPace';
import type { RunAsked, RunJob, RunPlan, RunPlanNote, RunPlanned, RunTrouble } from './runPlan';
import { sizesOf } from './sequence/sizesOf';

/**
 * Lays a run into the blocks of the week, or its own: every part with its day and minute, nothing overlapped.
 *
 * @returns the plan, or every trouble that keeps it from being made
 */
export function planRun(asked: RunAsked): RunPlanned {
  const troubles = [...workTroubles(asked), ...emptyBlocks(asked.run)];
  const blocks = runBlocks(asked);
  if (blocks === null) troubles.push({ kind: 'noBlocks' });
  if (troubles.length > 0 || blocks === null) return { kind: 'troubled', troubles };
  const jobs = asked.found.flatMap((one): readonly RunJob[] => (one.kind === 'costed' ? [one] : []));
  const work = runWorkload(jobs, asked.run.isPreTaped);
  const allowed = heatingsOf(asked, jobs, work, blocks);
  if ('kind' in allowed) return { kind: 'troubled', troubles: [allowed] };
  for (let heatings = allowed.fewest; heatings <= allowed.most; heatings += 1) {
    const laid = layRun(work, runSessions(work, heatings), asked.run, blocks);
    if (laid !== null) return { kind: 'planned', plan: planOf(asked, jobs, work, heatings, laid) };
  }
  const overlaps = overlappingBlocks(asked.run).map((one): RunTrouble => ({ kind: 'blocksOverlap', ...one }));
  return { kind: 'troubled', troubles: [...overlaps, { kind: 'blocksEnd', isOwn: blocks.isOwn }] };
}

// Helpers

function workTroubles({ found }: RunAsked): RunTrouble[] {
  if (found.length === 0) return [{ kind: 'noWorks' }];
  const ids = found.map(({ work }) => work.jobId);
  const twice = new Set(ids.filter((id, at) => ids.indexOf(id) !== at));
  return [
    ...[...twice].map((jobId): RunTrouble => ({ kind: 'jobTwice', jobId })),
    ...found.flatMap((one): readonly RunTrouble[] => {
      const { jobId } = one.work;
      if (one.kind === 'missing') return [{ kind: 'jobMissing', jobId }];
      const { name, lines } = one.input.job;
      const isEmpty = lines.every(({ quantities }) => quantities.every(({ quantity }) => quantity <= 0));
      if (isEmpty) return [{ kind: 'noPieces', jobId, name }];
      return one.kind === 'stopped' ? [{ kind: 'jobStopped', jobId, name, why: one.why }] : [];
    }),
  ];
}

/** From the fewest whose blocks are long enough to what is priced for or accepted: fewer are always taken first. */
function heatingsOf(
  { run }: RunAsked,
  jobs: readonly RunJob[],
  work: RunWorkload,
  { longest }: RunBlocks,
): { readonly fewest: number; readonly most: number } | RunTrouble {
  const needed = heatingsNeeded(work, longest);
  if (needed === null)
    return { kind: 'noBlock', neededMinutes: leastSessionMinutes(work), longestMinutes: longest };
  const accepted = Math.max(run.heatings ?? 0, work.priced);
  if (needed <= accepted) return { fewest: needed, most: Math.min(accepted, work.pieces) };
  return {
    kind: 'moreHeatings',
    ...{ accepted, needed },
    more: moreHeatings(
      jobs.map(({ costed }) => costed),
      needed - work.priced,
    ),
    neededMinutes: longestSession(work, 1),
    acceptedMinutes: longestSession(work, accepted),
    longestMinutes: longest,
  };
}

const longestSession = (work: RunWorkload, heatings: number): number =>
  Math.max(...runSessions(work, heatings).map(({ parts }) => minutesOf(parts)));

function planOf(
  asked: RunAsked,
  jobs: readonly RunJob[],
  work: RunWorkload,
  heatings: number,
  laid: LaidRun,
): RunPlan {
  const clock = laid.parts
    .toSorted((one, other) => one.from - other.from)
    .map((part) => clockPart(part, laid));
  const ends = laid.parts.map(({ to }) => to);
  const [firstDay, lastDay] = [clock[0]?.day ?? asked.today, dayOfMinute(Math.max(...ends) - MINUTE_BEFORE)];
  const costed = jobs.map((job) => job.costed);
  const turns = inClockOrder(work.turns, clock);
  return {
    clock,
    sessions: laid.sessions.map(({ pieces, ...span }) => ({ ...dated(span.from, span.to), pieces })),
    turns,
    sizes: sizesOf(jobs, turns, asked.run),
    heatings,
    pricedHeatings: work.priced,
    more: heatings > work.priced ? moreHeatings(costed, heatings - work.priced) : null,
    isInOneBlock: laid.isInOneBlock,
    ...{ firstDay, lastDay },
    pace: runPace(jobs, asked.run.isPreTaped),
    notes: notesOf(asked, work, heatings, laid, firstDay),
  };
}

/** What ends at midnight is done on the day that ends there. */
const MINUTE_BEFORE = 1e-3;

/** Parts of a session bear the day on which it begins, also past midnight. */
function clockPart({ from, to, ...part }: LaidPart, { sessions }: LaidRun): ClockPart {
  const { session } = part;
  const begun = session === null ? from : (sessions[session]?.from ?? from);
  const midnight = Math.floor(begun / DAY_MINUTES) * DAY_MINUTES;
  return { ...part, day: dayOfMinute(midnight), fromMinute: from - midnight, minutes: to - from };
}

function dated(from: number, to: number) {
  const midnight = Math.floor(from / DAY_MINUTES) * DAY_MINUTES;
  return { day: dayOfMinute(midnight), fromMinute: from - midnight, minutes: to - from };
}

function notesOf(
  { run, today }: RunAsked,
  work: RunWorkload,
  heatings: number,
  laid: LaidRun,
  firstDay: string,
): readonly RunPlanNote[] {
  const isPast = daysBetween(today, firstDay) < 0;
  const session = laid.sessions[0];
  const pressed = session === undefined ? firstDay : dayOfMinute(session.from);
  return [
    ...(minuteOf(pressed) < minuteOf(today) && run.ownBlocks !== null
      ? [{ kind: 'past' as const, day: pressed }]
      : []),
    ...overlappingBlocks(run).map((one) => ({ kind: 'blocksOverlap' as const, ...one })),
    ...(laid.printed === 'before' ? [{ kind: 'printedBefore' as const, day: firstDay, isPast }] : []),
    ...(laid.printed === 'taken' ? [{ kind: 'sheetsTaken' as const }] : []),
    ...(laid.isUndelivered ? [{ kind: 'notDelivered' as const, minutes: work.deliverMinutes }] : []),
    ...(heatings < work.priced ? [{ kind: 'fewerHeatings' as const, heatings, priced: work.priced }] : []),
  ];
}
