import { wallTime } from './testDay';

/**
 * Sets the clock that this file's tests and everything they import read: it starts at the time set and runs on.
 * Timers and days that are written out are left alone.
 */
export function startClock(): void {
  // Files that share a thread each start the clock; one wrapped around another would only slow it down.
  const Real = realDate();
  const { day, time } = wallTime();
  // Without a zone behind it a time is that of the place.
  const ahead = new Real(`${day}T${time}:00`).getTime() - Real.now();
  if (Number.isNaN(ahead)) throw new Error(`no calendar has ${day} ${time}`);
  const now = () => Real.now() + ahead;
  globalThis.Date = new Proxy(Real, {
    construct: (_, args) => Reflect.construct(Real, args.length === 0 ? [now()] : args),
    apply: () => new Real(now()).toString(),
    get: (_, name) => (name === 'now' ? now : Reflect.get(Real, name)),
  });
}

const KEY = Symbol.for('the clock of the machine');

function realDate(): DateConstructor {
  const kept: unknown = Reflect.get(globalThis, KEY);
  if (isDate(kept)) return kept;
  Reflect.set(globalThis, KEY, Date);
  return Date;
}

const isDate = (value: unknown): value is DateConstructor => typeof value === 'function';
