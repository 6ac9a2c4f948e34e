import { MINUTES_NOISE } from './minutes';
import type { Span } from './span';

/** A stretch of work on its way through free time. */
export interface Task {
  readonly minutes: number;
  /** Whether it lies in one free span; two of the same group never lie in the same. */
  readonly inOnePiece: boolean;
  readonly group: number | null;
  /** It cannot begin before this minute. */
  readonly notBefore: number;
}

export interface Placed<T extends Task> extends Span {
  readonly task: T;
}

/**
 * Lays tasks one behind another into free time, each as early as it goes.
 *
 * @param spans free time in order, apart
 * @returns null where the free time ends first
 */
export function walk<T extends Task>(
  spans: Iterable<Span>,
  tasks: readonly T[],
): readonly Placed<T>[] | null {
  const free = spans[Symbol.iterator]();
  const placed: Placed<T>[] = [];
  // Nothing is asked of free time before there is work.
  let span: Span | null = { from: Number.NEGATIVE_INFINITY, to: Number.NEGATIVE_INFINITY };
  let at = Number.NEGATIVE_INFINITY;
  let taken: { readonly group: number; readonly span: Span } | null = null;
  for (const task of tasks) {
    for (let left = task.minutes; left > MINUTES_NOISE; ) {
      if (span === null) return null;
      const from = Math.max(at, span.from, task.notBefore);
      const room = span.to - from;
      const isTaken = task.group !== null && taken?.span === span && taken.group === task.group;
      const fits = task.inOnePiece ? room >= left - MINUTES_NOISE : room > MINUTES_NOISE;
      if (isTaken || !fits) {
        const next = free.next();
        span = next.done === true ? null : next.value;
        continue;
      }
      const to = Math.min(span.to, from + left);
      placed.push({ task, from, to });
      at = to;
      left = task.inOnePiece ? 0 : left - (to - from);
      if (task.group !== null) taken = { group: task.group, span };
    }
  }
  return placed;
}
