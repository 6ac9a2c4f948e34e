import { MINUTES_NOISE } from '@/lib/calendar/minutes';
import type { Span } from '@/lib/calendar/span';
import { walk } from '@/lib/calendar/walk';
import type { Run } from '@/shared/schemas/making/run';
import { runLimits } from '@/shared/tables/runLimits';
import type { LaidPart } from './laidPart';
import { handMinutesOf, type LaidPrint, loose, printIn, type Sheets } from './layPrint';
import type { RunBlocks } from './runBlocks';
import type { RunWorkload } from './runWork';

/** A heating-up with its good pieces. */
interface Heated extends Span {
  readonly pieces: number;
}

/**
 * The sheets of each heating-up in the latest block before it that holds them, for sheets that lie draw damp: on the
 * evening before, where there is one. What finds no room since the heating-up before it is printed with that one's.
 *
 * @param sessions in order, laid so that all sheets have room before the first
 * @param from the first minute in which there is time to print
 * @returns null where they find no room so
 */
export function latePrint(
  { feedMinutes, printerMinutes, pieces }: RunWorkload,
  drying: Pick<Run, 'dryMinutes'>,
  blocks: RunBlocks,
  sessions: readonly Heated[],
  from: number,
): readonly LaidPart[] | null {
  const parts: LaidPart[] = [];
  let held = 0;
  for (const [at, session] of [...sessions.entries()].toReversed()) {
    held += session.pieces;
    const share = held / pieces;
    const sheets = { feedMinutes: feedMinutes * share, printerMinutes: printerMinutes * share };
    const start = sessions[at - 1]?.to ?? from;
    const found = latest(sheets, drying, freeBetween(blocks, start, session.from), session.from);
    if (found === null) continue;
    parts.unshift(...found.parts);
    held = 0;
  }
  return held === 0 ? parts : null;
}

// Helpers

function freeBetween(blocks: RunBlocks, from: number, to: number): readonly Span[] {
  const spans: Span[] = [];
  for (const span of blocks.spansFrom(from)) {
    if (span.from >= to) break;
    spans.push({ from: span.from, to: Math.min(span.to, to) });
  }
  return spans;
}

/** In one go, unless the sheets would then lie for longer than they should and go over several blocks later. */
function latest(
  sheets: Sheets,
  drying: Pick<Run, 'dryMinutes'>,
  free: readonly Span[],
  by: number,
): LaidPrint | null {
  const laid = (inOnePiece: boolean): LaidPrint | null => {
    for (let first = free.length - 1; first >= 0; first -= 1) {
      const task = { ...loose(handMinutesOf(sheets)), inOnePiece };
      const spans = walk(inOnePiece ? free.slice(first, first + 1) : free.slice(first), [task]);
      const print = spans && printIn(spans, sheets, drying, by);
      if (print !== null && print.ready <= by + MINUTES_NOISE) return print;
    }
    return null;
  };
  const whole = laid(true);
  if (whole !== null && by - whole.ready <= runLimits.lying.value * HOUR) return whole;
  return laid(false) ?? whole;
}

const HOUR = 60;
