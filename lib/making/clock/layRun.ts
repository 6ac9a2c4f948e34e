import { dayOfEnd, dayOfMinute, MINUTES_NOISE } from '@/lib/calendar/minutes';
import type { Span } from '@/lib/calendar/span';
import { type Task, walk } from '@/lib/calendar/walk';
import type { Run } from '@/shared/schemas/making/run';
import { runLimits } from '@/shared/tables/runLimits';
import type { LaidPart } from './laidPart';
import { latePrint } from './latePrint';
import { LEAST_LAID, layLoose, layPrint, loose, printBefore } from './layPrint';
import type { RunBlocks } from './runBlocks';
import { type HeatedSession, minutesOf, type TimedPart } from './runSessions';
import type { RunWorkload } from './runWork';

interface LaidSession extends Span {
  readonly pieces: number;
}

/** A run laid into blocks. */
export interface LaidRun {
  readonly parts: readonly LaidPart[];
  readonly sessions: readonly LaidSession[];
  readonly isInOneBlock: boolean;
  /**
   * When the sheets are printed: in the blocks; before the first session, beside the run's own blocks; or they are taken
   * as printed, for too little time is left.
   */
  readonly printed: 'inBlocks' | 'before' | 'taken';
  /** The way to the customer found no room in the run's own blocks. */
  readonly isUndelivered: boolean;
}

type Waits = Pick<Run, 'dryMinutes' | 'coolMinutes'>;

/**
 * Lays a run into blocks, none beside another: sessions, cooling, finishing, packing and the way to the customer as early
 * as it goes, sheets as late as they need to be for that.
 *
 * @returns null where the blocks end first
 */
export function layRun(
  work: RunWorkload,
  heated: readonly HeatedSession[],
  waits: Waits,
  blocks: RunBlocks,
): LaidRun | null {
  if (!blocks.isOwn) {
    const soonest = layFrom(work, heated, waits, blocks, blocks.from)?.run ?? null;
    const first = soonest?.sessions[0]?.from;
    if (soonest === null || first === undefined || !isStale(soonest.parts, first)) return soonest;
    // Printed in the block in which the press is heated, if that costs no day.
    const fresh = layFrom(work, heated, waits, blocks, first)?.run ?? null;
    return fresh !== null && daysOf(fresh).every((day, at) => day === daysOf(soonest)[at]) ? fresh : soonest;
  }
  const alone = laySessions(work, heated, waits, blocks, blocks.from, Number.NEGATIVE_INFINITY);
  if (alone === null) return null;
  const first = alone.sessions[0]?.from ?? 0;
  const inBlocks = layFrom(
    ...([work, heated, waits, blocks] as const),
    // Where the day itself is over, so is the time to print for it.
    first < blocks.now ? blocks.from : Math.max(blocks.from, blocks.now),
  );
  if (inBlocks?.laid.sessions[0]?.from === first && inBlocks.laid.isInOneBlock === alone.isInOneBlock)
    return inBlocks.run;
  const before = printBefore(work, waits, first, blocks.now);
  if (before !== null) return joined(work, waits, blocks, before, alone, 'before');
  const later = inBlocks?.laid.sessions[0]?.from;
  return inBlocks !== null && later !== undefined && dayOfMinute(later) === dayOfMinute(first)
    ? inBlocks.run
    : joined(work, waits, blocks, [], alone, 'taken');
}

// Helpers

interface LaidSessions {
  readonly parts: readonly LaidPart[];
  readonly sessions: readonly LaidSession[];
  readonly isInOneBlock: boolean;
}

/** @returns whether sheets lie for longer than they should until the press is heated up. */
const isStale = (parts: readonly LaidPart[], first: number): boolean =>
  parts.some(({ what, to }) => what === 'print' && first - to > runLimits.lying.value * 60);

/** The days of all heatings-up, and that on which all is done. */
const daysOf = ({ sessions, parts }: LaidRun): readonly string[] =>
  [...sessions, { to: Math.max(...parts.map(({ to }) => to)) }].map(({ to }) => dayOfEnd(to));

/** Sheets in the blocks as well: the sessions as early as they leave room for, then the sheets as late as those do. */
function layFrom(
  work: RunWorkload,
  heated: readonly HeatedSession[],
  waits: Waits,
  blocks: RunBlocks,
  from: number,
): { readonly laid: LaidSessions; readonly run: LaidRun | null } | null {
  const soonest = layPrint(work, waits, blocks, from);
  if (soonest === null) return null;
  const laid = laySessions(work, heated, waits, blocks, soonest.hands, soonest.ready);
  if (laid === null) return null;
  const printed = latePrint(work, waits, blocks, laid.sessions, from) ?? soonest.parts;
  return { laid, run: joined(work, waits, blocks, printed, laid, 'inBlocks') };
}

/** @param from the first minute of the hands, `ready` that of the press */
function laySessions(
  work: RunWorkload,
  heated: readonly HeatedSession[],
  { coolMinutes }: Waits,
  blocks: RunBlocks,
  from: number,
  ready: number,
): LaidSessions | null {
  const tasks = heated.map(({ parts }): Task => sessionTask(parts, ready));
  const placed = walk(blocks.spansFrom(from), tasks);
  if (placed === null || placed.length < heated.length) return null;
  const last = heated.at(-1);
  const ended = last === undefined ? null : withEnd(work, last, coolMinutes ?? 0);
  const together =
    ended === null
      ? null
      : walk(blocks.spansFrom(from), [...tasks.slice(0, -1), sessionTask(ended.parts, ready)]);
  // The block of the last session holds all the rest as well.
  const isInOneBlock = together !== null && together.at(-1)?.from === placed.at(-1)?.from;
  const held = isInOneBlock && ended !== null ? [...heated.slice(0, -1), ended] : heated;
  const spans = isInOneBlock ? together : placed;
  return {
    parts: held.flatMap(({ parts }, session) => {
      let at = spans[session]?.from ?? 0;
      return parts.map(({ minutes, ...part }): LaidPart => {
        const begun = at;
        at += minutes;
        return { ...part, session, from: begun, to: at };
      });
    }),
    sessions: held.map(({ pieces }, session) => {
      const { from: begun = 0, to = 0 } = spans[session] ?? {};
      return { pieces, from: begun, to };
    }),
    isInOneBlock,
  };
}

const sessionTask = (parts: readonly TimedPart[], notBefore: number): Task => ({
  minutes: Math.max(minutesOf(parts), LEAST_LAID),
  inOnePiece: true,
  group: 0,
  notBefore,
});

/** A session with cooling, finishing and packing before its clean-down. */
function withEnd(
  { finishMinutes, packMinutes }: RunWorkload,
  { pieces, parts }: HeatedSession,
  coolMinutes: number,
): HeatedSession {
  const part = (what: TimedPart['what'], minutes: number): readonly TimedPart[] =>
    minutes > 0 ? [{ what, name: '', minutes }] : [];
  return {
    pieces,
    parts: [
      ...parts.filter(({ what }) => what !== 'cleanDown'),
      ...part('cool', coolMinutes),
      ...part('finish', finishMinutes),
      ...part('pack', packMinutes),
      ...parts.filter(({ what }) => what === 'cleanDown'),
    ],
  };
}

/** Puts what follows the sessions behind them. */
function joined(
  work: RunWorkload,
  { coolMinutes }: Waits,
  blocks: RunBlocks,
  printed: readonly LaidPart[],
  laid: LaidSessions,
  when: LaidRun['printed'],
): LaidRun | null {
  const end = laid.sessions.at(-1)?.to ?? blocks.from;
  const cool = coolMinutes ?? 0;
  const pressed = laid.parts.findLast(({ what }) => what === 'press')?.to ?? end;
  const cooling: readonly LaidPart[] =
    cool > 0 && !laid.isInOneBlock
      ? [{ what: 'cool', name: '', session: null, from: pressed, to: pressed + cool }]
      : [];
  const closed = laid.isInOneBlock ? [] : layClosing(work, blocks, end, pressed + cool);
  if (closed === null) return null;
  const brought = layWay(work, blocks, Math.max(end, closed.at(-1)?.to ?? end));
  if (brought === null && !blocks.isOwn) return null;
  const { sessions, isInOneBlock } = laid;
  return {
    parts: [...printed, ...laid.parts, ...cooling, ...closed, ...(brought ?? [])],
    ...{ sessions, isInOneBlock, printed: when },
    isUndelivered: brought === null,
  };
}

/** Finishing and packing after the sessions, as one piece of work where that costs no day. */
function layClosing(
  { finishMinutes, packMinutes }: RunWorkload,
  blocks: RunBlocks,
  from: number,
  notBefore: number,
): readonly LaidPart[] | null {
  const spans = layLoose(blocks, from, finishMinutes + packMinutes, notBefore);
  if (spans === null) return null;
  let finishing = finishMinutes;
  return spans.flatMap((span): readonly LaidPart[] => {
    const cut = Math.min(span.to, span.from + finishing);
    finishing -= cut - span.from;
    const parts = [
      { what: 'finish' as const, from: span.from, to: cut },
      { what: 'pack' as const, from: cut, to: span.to },
    ];
    return parts.flatMap((part) =>
      part.to - part.from > MINUTES_NOISE ? [{ ...part, name: '', session: null }] : [],
    );
  });
}

function layWay(
  { deliverMinutes }: RunWorkload,
  blocks: RunBlocks,
  from: number,
): readonly LaidPart[] | null {
  const task = { ...loose(deliverMinutes), inOnePiece: deliverMinutes <= blocks.longest };
  return (
    walk(blocks.spansFrom(from), [task])?.map((span) => ({
      what: 'deliver' as const,
      name: '',
      session: null,
      from: span.from,
      to: span.to,
    })) ?? null
  );
}
