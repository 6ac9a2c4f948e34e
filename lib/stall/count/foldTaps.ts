import type { StallPlan } from '@/shared/schemas/stallPapers';
import type { DayCount, ForeignCount } from './dayCount';
import { goodsCounts } from './goodsCounts';
import type { EarlierPlan } from './putOutBefore';
import { sellingTime, type WallClock } from './sellingTime';
import { type TappedEntry, tapsOfDay } from './tappedEntry';
import { type Ticket, ticketsOf } from './ticketLines';
import { ticketMoney } from './ticketMoney';
import { weatherMinutes } from './weatherMinutes';
import { withinReach } from './withinReach';

/**
 * What all taps of a stall day come to: in whatever order they are given, and however often one comes.
 *
 * @param plan what was brought and at which prices; taps by an earlier plan of the same day count as well
 * @param taps those in force; others than of this day are left out
 * @param wallAt reads the moment of a tap as the wall of the stall shows it
 * @param earlier plans of the day that this one took the place of, the newest first: what was put out by them may be
 *   among what this one brings
 */
export function foldTaps(
  plan: StallPlan,
  taps: readonly TappedEntry[],
  wallAt: WallClock,
  earlier: readonly EarlierPlan[] = [],
): DayCount {
  const { taps: all, setAside } = withinReach(tapsOfDay(taps, plan.stallDayId), plan.currency);
  const tickets = ticketsOf(all);
  const money = ticketMoney(tickets, plan);
  const goods = goodsCounts(plan, all, earlier, wallAt);
  return {
    tapIds: all.map(({ id }) => id),
    setAside,
    goods,
    pieces: goods.reduce((sum, { sold }) => sum + sold, 0),
    ...money,
    hasTickets: money.tickets.length > 0 && money.tickets.every(({ isUnclosed }) => !isUnclosed),
    ...countsBeside(all, plan),
    foreign: foreignOf(tickets, plan.currency),
    hours: hoursOf(all, plan, wallAt),
    weatherMinutes: weatherMinutes(plan, all, wallAt),
    askedFor: askedFor(all),
    spentOn: spentOn(all, plan.currency),
  };
}

// Helpers

const MS_PER_MINUTE = 60_000;

type Beside = Pick<
  DayCount,
  | 'reductionsMinor'
  | 'tinMinor'
  | 'spentMinor'
  | 'putBack'
  | 'visitors'
  | 'weatherId'
  | 'notes'
  | 'leads'
  | 'pay'
>;

/** What is counted beside goods and tickets. */
function countsBeside(taps: readonly TappedEntry[], plan: StallPlan): Beside {
  const notes: DayCount['notes'][number][] = [];
  const leads: DayCount['leads'][number][] = [];
  let [reductionsMinor, tinMinor, spentMinor, putBack, visitors] = [0, 0, 0, 0, 0];
  let [weatherId, pay]: [string | null, DayCount['pay']] = [null, 'card'];
  for (const { id, at, body } of taps) {
    const { tap } = body;
    const isOwn = body.currency === plan.currency;
    if (tap.what === 'set' && isOwn) reductionsMinor += tap.minor;
    if (tap.what === 'tin' && isOwn) tinMinor += tap.cause === 'added' ? tap.minor : -tap.minor;
    if (tap.what === 'tin' && tap.cause === 'spent' && isOwn) spentMinor += tap.minor;
    if (tap.what === 'putBack') putBack += 1;
    if (tap.what === 'visitors') visitors += tap.count;
    if (tap.what === 'weather') weatherId = tap.weatherId;
    if (tap.what === 'note') notes.push({ id, at, words: tap.words });
    if (tap.what === 'lead') leads.push({ id, at, words: tap.words });
    if (tap.what === 'sale' || tap.what === 'pay') pay = tap.pay;
  }
  return { reductionsMinor, tinMinor, spentMinor, putBack, visitors, weatherId, notes, leads, pay };
}

function foreignOf(tickets: readonly Ticket[], currency: string): readonly ForeignCount[] {
  const sums = new Map<string, ForeignCount>();
  for (const { lines } of tickets) {
    for (const line of lines) {
      if (line.currency === currency) continue;
      const { pieces, minor } = sums.get(line.currency) ?? { pieces: 0, minor: 0 };
      const more = { pieces: pieces + line.pieces, minor: minor + line.minor };
      sums.set(line.currency, { currency: line.currency, ...more });
    }
  }
  return [...sums.values()].toSorted((one, other) => (one.currency < other.currency ? -1 : 1));
}

function hoursOf(taps: readonly TappedEntry[], plan: StallPlan, wallAt: WallClock): DayCount['hours'] {
  const hours = new Map<string, DayCount['hours'][number]>();
  const known = new Map<number, { readonly day: string; readonly hour: number }>();
  /** Clocks on walls differ by whole minutes. */
  const hourOf = (minuteAt: number) => {
    const before = known.get(minuteAt);
    if (before !== undefined) return before;
    const { day, minute } = sellingTime(plan, wallAt(minuteAt * MS_PER_MINUTE));
    const found = { day, hour: Math.floor(minute / 60) };
    known.set(minuteAt, found);
    return found;
  };
  for (const { at, body } of taps) {
    if (body.tap.what !== 'sale') continue;
    const { day, hour } = hourOf(Math.floor(at / MS_PER_MINUTE));
    const key = `${day} ${String(hour).padStart(2, '0')}`;
    hours.set(key, { day, hour, pieces: (hours.get(key)?.pieces ?? 0) + 1 });
  }
  return [...hours].toSorted(([one], [other]) => (one < other ? -1 : 1)).map(([, hour]) => hour);
}

/** The same words in other letters are the same thing. */
function askedFor(taps: readonly TappedEntry[]): DayCount['askedFor'] {
  const asked = new Map<string, DayCount['askedFor'][number]>();
  for (const { body } of taps) {
    const { tap } = body;
    if (tap.what !== 'asked' || tap.goods !== null) continue;
    const key = tap.words.toLowerCase();
    const before = asked.get(key);
    asked.set(key, { words: before?.words ?? tap.words, count: (before?.count ?? 0) + 1 });
  }
  return [...asked.values()];
}

function spentOn(taps: readonly TappedEntry[], currency: string): DayCount['spentOn'] {
  const spent = new Map<string, DayCount['spentOn'][number]>();
  for (const { body } of taps) {
    const { tap } = body;
    if (tap.what !== 'tin' || tap.cause !== 'spent' || body.currency !== currency) continue;
    const key = tap.words.toLowerCase();
    const before = spent.get(key);
    spent.set(key, { words: before?.words ?? tap.words, minor: (before?.minor ?? 0) + tap.minor });
  }
  return [...spent.values()];
}
