import type { PressRun, PressWork } from './benchWork';

/** Time at the press after which a break is due, min; common practice, from memory. */
const UNBROKEN_MINUTES = 120;

/** A break goes between two prints where one ends this near to its time; as a share of the time between breaks. */
const NEAR = 0.25;

export interface SessionPart {
  readonly what: 'setUp' | 'press' | 'break' | 'cleanDown';
  /** The print that is pressed; empty elsewhere. */
  readonly name: string;
  readonly minutes: number;
}

/** @returns what a session of so many pieces holds, one after another. */
export function sessionParts(work: PressWork, pieces: number): readonly SessionPart[] {
  const share = work.pieces === 0 ? 0 : pieces / work.pieces;
  const runs = work.runs.map(({ name, minutes }) => ({ name, minutes: minutes * share }));
  return [
    { what: 'setUp', name: '', minutes: work.setUpMinutes },
    ...withBreaks(runs, work.breakMinutes),
    { what: 'cleanDown', name: '', minutes: work.cleanDownMinutes },
  ];
}

/** @returns minutes of a session of so many pieces; more pieces never take less. */
export const sessionMinutes = (work: PressWork, pieces: number): number =>
  sessionParts(work, pieces).reduce((sum, { minutes }) => sum + minutes, 0);

function withBreaks(runs: readonly PressRun[], breakMinutes: number): readonly SessionPart[] {
  const total = runs.reduce((sum, { minutes }) => sum + minutes, 0);
  const stretches = Math.max(1, Math.ceil(total / UNBROKEN_MINUTES - 1e-9));
  if (breakMinutes === 0 || stretches === 1) return runs.map(({ name, minutes }) => press(name, minutes));
  const between = total / stretches;
  const ends = endsOf(runs);
  const times = Array.from({ length: stretches - 1 }, (_, index) => {
    const due = (index + 1) * between;
    return ends.find((end) => Math.abs(end - due) <= NEAR * between && end < total) ?? due;
  });
  return cut(runs, times, { what: 'break', name: '', minutes: breakMinutes });
}

/** The runs one after another with a break at each time. */
function cut(
  runs: readonly PressRun[],
  times: readonly number[],
  pause: SessionPart,
): readonly SessionPart[] {
  const parts: SessionPart[] = [];
  const due = [...times];
  let at = 0;
  for (const { name, minutes } of runs) {
    const end = at + minutes;
    for (let next = due[0]; next !== undefined && next <= end; next = due[0]) {
      if (next > at) parts.push(press(name, next - at));
      parts.push(pause);
      at = next;
      due.shift();
    }
    if (end > at) parts.push(press(name, end - at));
    at = end;
  }
  return parts;
}

const press = (name: string, minutes: number): SessionPart => ({ what: 'press', name, minutes });

function endsOf(runs: readonly PressRun[]): readonly number[] {
  let at = 0;
  return runs.map(({ minutes }) => {
    at += minutes;
    return at;
  });
}
