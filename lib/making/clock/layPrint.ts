import { DAY_MINUTES, dayOfEnd, MINUTES_NOISE } from '@/lib/calendar/minutes';
import type { Span } from '@/lib/calendar/span';
import { type Task, walk } from '@/lib/calendar/walk';
import type { Run } from '@/shared/schemas/making/run';
import type { LaidPart } from './laidPart';
import type { RunBlocks } from './runBlocks';
import type { RunWorkload } from './runWork';

type Drying = Pick<Run, 'dryMinutes'>;
/** Sheets of the run or of one heating-up: the hands' minutes, and those the printer runs. */
export type Sheets = Pick<RunWorkload, 'feedMinutes' | 'printerMinutes'>;

/** Sheets printed and left to dry. */
export interface LaidPrint {
  readonly parts: readonly LaidPart[];
  /** The minutes in which the hands and the sheets are ready. */
  readonly hands: number;
  readonly ready: number;
}

/** What is said to take no time is laid all the same, min: what has no length is laid nowhere. */
export const LEAST_LAID = 2 * MINUTES_NOISE;

export const loose = (minutes: number, notBefore = Number.NEGATIVE_INFINITY): Task => ({
  minutes,
  inOnePiece: false,
  group: null,
  notBefore,
});

/**
 * Work that may be split, but is done in one go where that ends on the same day: nobody begins for the last minutes of a
 * block what the next evening holds whole.
 */
export function layLoose(
  blocks: RunBlocks,
  from: number,
  minutes: number,
  notBefore: number,
): readonly Span[] | null {
  const split = walk(blocks.spansFrom(from), [loose(minutes, notBefore)]);
  if (minutes > blocks.longest) return split;
  const whole = walk(blocks.spansFrom(from), [{ ...loose(minutes, notBefore), inOnePiece: true }]);
  const ends = [whole?.at(-1)?.to, split?.at(-1)?.to];
  return ends[0] !== undefined && ends[1] !== undefined && dayOfEnd(ends[0]) === dayOfEnd(ends[1])
    ? whole
    : split;
}

/** Minutes of the hands that sheets are laid with, for what the printer does alone begins with a hand as well. */
export const handMinutesOf = ({ feedMinutes, printerMinutes }: Sheets): number =>
  printerMinutes > 0 ? Math.max(feedMinutes, LEAST_LAID) : feedMinutes;

/** As soon as it goes, from a minute on. */
export function layPrint(sheets: Sheets, drying: Drying, blocks: RunBlocks, from: number): LaidPrint | null {
  const spans = layLoose(blocks, from, handMinutesOf(sheets), Number.NEGATIVE_INFINITY);
  return spans === null ? null : printIn(spans, sheets, drying, from);
}

/** The hands feed and trim in the blocks; the printer runs on by itself. */
export function printIn(
  spans: readonly Span[],
  { printerMinutes }: Sheets,
  { dryMinutes }: Drying,
  from: number,
): LaidPrint {
  const hands = spans.at(-1)?.to ?? from;
  const printed = Math.max(hands, (spans[0]?.from ?? from) + printerMinutes);
  const dry = dryMinutes ?? 0;
  return {
    parts: [
      ...spans.map((span, index): LaidPart => {
        const to = index === spans.length - 1 ? printed : span.to;
        return { what: 'print', name: '', session: null, from: span.from, to };
      }),
      ...(spans.length === 0 ? [] : drying(printed, dry)),
    ],
    hands,
    ready: printed + dry,
  };
}

const drying = (from: number, minutes: number): readonly LaidPart[] =>
  minutes > 0 ? [{ what: 'dry', name: '', session: null, from, to: from + minutes }] : [];

/**
 * The day before at the hour at which the press is heated, or earlier where it has to dry for longer; where that is over
 * at once, from now on. Before a session that is over itself they count as printed when they should have been.
 *
 * @returns null where too little time is left
 */
export function printBefore(
  { feedMinutes, printerMinutes }: Sheets,
  { dryMinutes }: Drying,
  session: number,
  now: number,
): readonly LaidPart[] | null {
  const minutes = Math.max(feedMinutes, printerMinutes);
  if (minutes <= 0) return [];
  const dry = dryMinutes ?? 0;
  const latest = session - dry - minutes;
  const evening = Math.min(session - DAY_MINUTES, latest);
  if (session >= now && latest < now) return null;
  const from = session < now ? evening : Math.max(evening, now);
  return [
    { what: 'print', name: '', session: null, from, to: from + minutes },
    ...drying(from + minutes, dry),
  ];
}
