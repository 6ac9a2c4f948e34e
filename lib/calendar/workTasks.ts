import type { BenchWork, LooseKind } from './benchWork';
import { type Calendar, longestBlock } from './calendar';
import { heatings } from './heatings';
import { type SessionPart, sessionMinutes, sessionParts } from './sessionParts';
import type { Task } from './walk';

export interface WorkTask extends Task {
  readonly holds:
    | { readonly what: LooseKind }
    | { readonly what: 'session'; readonly pieces: number; readonly parts: readonly SessionPart[] };
}

/** Heatings-up beyond those that the jobs are priced for, and what they cost. */
export interface ExtraSessions {
  readonly sessions: number;
  readonly minutes: number;
  readonly inkMl: number;
}

export type WorkTasks =
  | { readonly kind: 'tasks'; readonly tasks: readonly WorkTask[]; readonly extra: ExtraSessions }
  /** No block of the week holds a session even of one piece. */
  | { readonly kind: 'noBlock'; readonly neededMinutes: number; readonly longestMinutes: number };

/**
 * The jobs of an order as tasks in the order in which they are done: everything printed, then pressed, then folded.
 *
 * @param pressFrom a minute before which nothing can be pressed, for the blanks are not there
 */
export function workTasks(
  calendar: Calendar,
  works: readonly BenchWork[],
  pressFrom = Number.NEGATIVE_INFINITY,
): WorkTasks {
  const longest = longestBlock(calendar);
  const sessions: WorkTask[] = [];
  let extra: ExtraSessions = { sessions: 0, minutes: 0, inkMl: 0 };
  for (const [group, { press }] of works.entries()) {
    if (press === null) continue;
    const pieces = heatings(press, longest);
    if (pieces === null)
      return { kind: 'noBlock', neededMinutes: sessionMinutes(press, 1), longestMinutes: longest };
    for (const many of pieces) {
      const parts = sessionParts(press, many);
      const minutes = parts.reduce((sum, part) => sum + part.minutes, 0);
      const holds = { what: 'session', pieces: many, parts } as const;
      sessions.push({ minutes, inOnePiece: true, group, notBefore: pressFrom, holds });
    }
    const more = Math.max(0, pieces.length - press.sessions);
    extra = {
      sessions: extra.sessions + more,
      minutes: extra.minutes + more * (press.setUpMinutes + press.cleanDownMinutes),
      inkMl: extra.inkMl + more * press.inkMl,
    };
  }
  const loose = (when: 'before' | 'after'): readonly WorkTask[] =>
    works.flatMap((work) =>
      work[when].map(({ what, minutes }) => ({
        minutes,
        // Nobody drives half the way, unless no block is long enough for all of it.
        inOnePiece: what === 'deliver' && minutes <= longest,
        group: null,
        notBefore: Number.NEGATIVE_INFINITY,
        holds: { what },
      })),
    );
  return { kind: 'tasks', tasks: [...loose('before'), ...sessions, ...loose('after')], extra };
}
