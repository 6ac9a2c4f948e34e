import type { BenchWork } from './benchWork';
import type { Calendar } from './calendar';
import { minutesBetween } from './freeMinutes';
import { type Load, loadOf, type OrderLoad, type PlannedOrder } from './load';
import { sessionMinutes } from './sessionParts';

/** What would be if every open quote were accepted; what one sentence needs. */
export interface IfAllCome {
  readonly quotes: number;
  /** Minutes of all of them, and what may be expected by how often quotes come. */
  readonly minutes: number;
  readonly expectedMinutes: number;
  /** Orders that would then be late and are not now, by wanted day. */
  readonly late: readonly PlannedOrder[];
  /** Orders that are late even if no quote comes. */
  readonly lateAnyway: readonly PlannedOrder[];
  /** Minutes needed and free from today to the last wanted day of all; null where no day is agreed. */
  readonly until: { readonly day: string; readonly needed: number; readonly free: number } | null;
}

interface Accepted {
  readonly orders: readonly OrderLoad[];
  /** The same, planned from the first day on. */
  readonly load: Load;
}

/**
 * @param winChance how likely a quote comes, 0 to 1
 * @returns null where no quote is open
 */
export function ifAllCome(
  calendar: Calendar,
  from: string,
  { orders: accepted, load }: Accepted,
  quotes: readonly OrderLoad[],
  winChance: number,
): IfAllCome | null {
  if (quotes.length === 0) return null;
  const now = lateOf(load);
  const then = lateOf(loadOf(calendar, [...accepted, ...quotes], from));
  const isLateNow = new Set(now.map(({ id }) => id));
  const minutes = minutesOf(quotes);
  const lastDay = [...accepted, ...quotes]
    .flatMap(({ wantedOn }) => wantedOn ?? [])
    .toSorted()
    .at(-1);
  return {
    quotes: quotes.length,
    minutes,
    expectedMinutes: minutes * winChance,
    late: then.filter(({ id }) => !isLateNow.has(id)),
    lateAnyway: now,
    until:
      lastDay === undefined
        ? null
        : {
            day: lastDay,
            needed: minutesOf(accepted) + minutes,
            free: minutesBetween(calendar, from, lastDay),
          },
  };
}

/** What is never done is late as well. */
const lateOf = ({ orders }: Load): readonly PlannedOrder[] =>
  orders.filter(
    ({ daysLate, planned, wantedOn }) => daysLate > 0 || (wantedOn !== null && planned.kind !== 'planned'),
  );

const minutesOf = (orders: readonly OrderLoad[]): number =>
  orders.flatMap(({ works }) => works).reduce((sum, work) => sum + benchMinutes(work), 0);

/** @returns minutes of a job's work in the sessions it is priced for, as a plan takes them. */
export function benchMinutes({ before, press, after }: BenchWork): number {
  const loose = [...before, ...after].reduce((sum, { minutes }) => sum + minutes, 0);
  if (press === null || press.sessions === 0) return loose;
  return loose + press.sessions * sessionMinutes(press, press.pieces / press.sessions);
}
