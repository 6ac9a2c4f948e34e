import { MINUTES_NOISE } from '@/lib/calendar/minutes';
import { sessionParts } from '@/lib/calendar/sessionParts';
import type { ClockPart } from '@/shared/schemas/making/runPapers';
import { splitWhole } from '@/shared/splitWhole';
import type { RunWorkload } from './runWork';

/** A part of the work in one block, one after another. */
export interface TimedPart {
  readonly what: 'setUp' | 'test' | 'press' | 'break' | 'cool' | 'finish' | 'pack' | 'cleanDown';
  /** The print that is pressed or tested; empty elsewhere. */
  readonly name: string;
  readonly minutes: number;
  /** Of what is pressed or tested. */
  readonly turn?: NonNullable<ClockPart['turn']>;
}

/** One heating-up: good pieces and its parts. */
export interface HeatedSession {
  readonly pieces: number;
  readonly parts: readonly TimedPart[];
}

/** No maker heats up more often for one run; the schema holds no more. */
const MOST_HEATINGS = 60;

/**
 * The run in so many heatings-up, evenly by pieces: line after line, or of every job an even part where a session would
 * otherwise hold more of one than that job says it carries. Tests of a print are pressed where it is pressed first.
 *
 * @param heatings at least the sessions that the job with most is priced for, at most one a piece
 */
export function runSessions(work: RunWorkload, heatings: number): readonly HeatedSession[] {
  const inTurn = lineAfterLine(work, heatings);
  const shares = inTurn.every((own) => isCarried(work, own)) ? inTurn : dealt(work, heatings);
  const left = work.lines.map(({ pieces }) => pieces);
  return shares.map((own) => {
    const before = [...left];
    for (const [at, pieces] of own.entries()) left[at] = (left[at] ?? 0) - pieces;
    const pieces = own.reduce((sum, one) => sum + one, 0);
    return { pieces, parts: partsOf(work, pieces, before, [...left]) };
  });
}

/**
 * @param longest the longest block there is, min
 * @returns the fewest heatings-up, not fewer than asked, that blocks hold as they are parted here; null where none do
 */
export function heatingsNeeded(work: RunWorkload, longest: number): number | null {
  for (let many = work.least; many <= Math.min(work.pieces, MOST_HEATINGS); many += 1)
    if (runSessions(work, many).every(({ parts }) => minutesOf(parts) <= longest + MINUTES_NOISE))
      return many;
  return null;
}

export const minutesOf = (parts: readonly { readonly minutes: number }[]): number =>
  parts.reduce((sum, { minutes }) => sum + minutes, 0);

/** @returns the shortest session there could be: one piece of every line that is pressed, nothing tested. */
export const leastSessionMinutes = (work: RunWorkload): number =>
  work.setUpMinutes +
  work.cleanDownMinutes +
  Math.max(
    ...work.lines.map(({ jobId, lineId, pieces }) =>
      work.turns.reduce(
        (sum, turn) =>
          turn.jobId === jobId && turn.lineId === lineId ? sum + turn.pressMinutes / pieces : sum,
        0,
      ),
    ),
  );

// Helpers

/** Good pieces of each line in one session. */
type Share = readonly number[];

function lineAfterLine({ pieces, lines }: RunWorkload, heatings: number): readonly Share[] {
  const left = lines.map((line) => line.pieces);
  const each = Array.from({ length: heatings }, () => pieces / heatings);
  return splitWhole(pieces, each).map((held) => {
    let open = held;
    return left.map((rest, at) => {
      const taken = Math.min(rest, open);
      left[at] = rest - taken;
      open -= taken;
      return taken;
    });
  });
}

const isCarried = ({ lines }: RunWorkload, own: Share): boolean =>
  lines.every(({ jobId, mostOfJob }) => {
    const ofJob = lines.reduce((sum, line, at) => (line.jobId === jobId ? sum + (own[at] ?? 0) : sum), 0);
    return mostOfJob === null || ofJob <= mostOfJob;
  });

/** All pieces, job after job, dealt out like cards: no session has two pieces more of a job than another. */
function dealt({ lines }: RunWorkload, heatings: number): readonly Share[] {
  const shares = Array.from({ length: heatings }, () => lines.map(() => 0));
  const byJob = [...new Set(lines.map(({ jobId }) => jobId))].flatMap((jobId) =>
    lines.flatMap((line, at) => (line.jobId === jobId ? [{ at, pieces: line.pieces }] : [])),
  );
  let next = 0;
  for (const { at, pieces } of byJob) {
    for (let piece = 0; piece < pieces; piece += 1) {
      const share = shares[next % heatings];
      if (share !== undefined) share[at] = (share[at] ?? 0) + 1;
      next += 1;
    }
  }
  return shares;
}

/** @param before pieces of each line still to be pressed before the session, `after` those after it */
function partsOf(
  work: RunWorkload,
  pieces: number,
  before: readonly number[],
  after: readonly number[],
): readonly TimedPart[] {
  const runs = work.turns.flatMap((turn, index) => {
    const at = work.lines.findIndex(({ jobId, lineId }) => jobId === turn.jobId && lineId === turn.lineId);
    const all = work.lines[at]?.pieces ?? 0;
    const pressed = (before[at] ?? 0) - (after[at] ?? 0);
    if (pressed <= 0) return [];
    const isFirst = before[at] === all;
    const tests = { name: `test ${index}`, minutes: turn.testMinutes };
    const run = { name: `press ${index}`, minutes: (turn.pressMinutes * pressed) / all };
    return isFirst && turn.testMinutes > 0 ? [tests, run] : [run];
  });
  const { setUpMinutes, cleanDownMinutes, breakMinutes } = work;
  const held = { pieces, sessions: 1, inkMl: 0, setUpMinutes, cleanDownMinutes, breakMinutes, runs };
  return sessionParts(held, pieces).map(({ what, name, minutes }): TimedPart => {
    if (what !== 'press') return { what, name, minutes };
    const [kind, index] = name.split(' ');
    const pressed = work.turns[Number(index)];
    const told = { what: kind === 'test' ? ('test' as const) : ('press' as const), minutes };
    if (pressed === undefined) return { ...told, name: '' };
    const { jobId, lineId, placementId } = pressed;
    return { ...told, name: pressed.name, turn: { jobId, lineId, placementId } };
  });
}
