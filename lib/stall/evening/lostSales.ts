import type { SellingStretch } from '@/lib/stall/count/sellingStretches';
import { sellingTime, type WallClock } from '@/lib/stall/count/sellingTime';
import { openHours, openMinutes } from '@/lib/stall/days/openHours';
import { daysInOrder } from '@/lib/stall/sellingDays';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import type { EveningAnswers } from './eveningAnswers';
import type { StockRow } from './stockRows';

/** A time through which goods were gone: from the last piece until more was put out, or to the end. */
export interface LostStretch {
  /** When the last one was sold, minutes since the midnight its day began at; null where no tap told. */
  readonly goneAtMinute: number | null;
  /** Pieces that went before the last one, and in how many minutes of selling; null where nobody can tell. */
  readonly before: number;
  readonly withinMinutes: number | null;
  readonly isPutOutAgain: boolean;
  /** Pieces that would have sold in it at the pace of those before; unrounded. */
  readonly lost: number;
  /** So few pieces or minutes that forecasts learn nothing of it unless the maker says so. */
  readonly isThin: boolean;
}

type Rows = Pick<StockRow, 'left' | 'untapped' | 'stretches'>;

/**
 * Fewer pieces or minutes say too little of a pace: of two pieces the time until the second may be anything, so that
 * the pace reckoned from it has no bounded spread (of n it has the relative variance 1 ÷ (n − 2)), and what goes in the
 * first quarter of an hour may be one family. The product's own choice.
 */
export const thinBelow = { pieces: 3, minutes: 15 } as const;

/**
 * Each time that goods were gone, and what would have sold in it: (q − 1) pieces took until the last of q, and the same
 * pace goes on until more is put out, or to the end. Only minutes count in which the stall was open. One piece alone says
 * nothing of a pace.
 *
 * @returns none of goods of which there were always some; those that were put out again and did not sell out are left
 */
export function lostStretches(
  plan: Pick<StallPlan, 'days'>,
  { left, untapped, stretches }: Rows,
  clock: WallClock,
): readonly LostStretch[] {
  if (stretches.length === 0) return left === 0 ? [unknownStretch] : [];
  return stretches.flatMap((stretch, at): readonly LostStretch[] => {
    const next = stretches[at + 1];
    // What is left at the end is told by the count, and what the count found sold was sold last.
    const isGone = next === undefined ? left === 0 : stretch.goneAt !== null;
    const sold = stretch.sold + (next === undefined ? untapped : 0);
    return isGone ? [lostIn(plan, { ...stretch, sold }, next?.fromAt ?? null, clock)] : [];
  });
}

/** @returns pieces that would have sold too, thin stretches and all; unrounded */
export const lostAtPace = (stretches: readonly LostStretch[]): number =>
  stretches.reduce((sum, { lost }) => sum + lost, 0);

/**
 * What the next plans learn of lost sales: what is reckoned from enough, all or nothing of it where the maker says so.
 *
 * @returns pieces, unrounded
 */
export function lostLearned(
  key: string,
  stretches: readonly LostStretch[],
  { notLost, lostAfterAll }: Pick<EveningAnswers, 'notLost' | 'lostAfterAll'>,
): number {
  if (notLost.includes(key)) return 0;
  return lostAtPace(lostAfterAll.includes(key) ? stretches : stretches.filter(({ isThin }) => !isThin));
}

// Helpers

const unknownStretch: LostStretch = {
  ...{ goneAtMinute: null, before: 0, withinMinutes: null, isPutOutAgain: false, lost: 0, isThin: false },
};

/** @param untilAt when more was put out; null where nothing was */
function lostIn(
  plan: Pick<StallPlan, 'days'>,
  { fromAt, sold, lastSoldAt, goneAt }: SellingStretch,
  untilAt: number | null,
  clock: WallClock,
): LostStretch {
  const isPutOutAgain = untilAt !== null;
  if (lastSoldAt === null || sold < 1) return { ...unknownStretch, isPutOutAgain };
  const before = sold - 1;
  const { minute: goneAtMinute } = sellingTime(plan, clock(lastSoldAt));
  const base = { ...unknownStretch, isPutOutAgain, before, goneAtMinute };
  const from = fromAt === null ? 0 : minutesPutOut(plan, fromAt, clock);
  const last = sellingMinutesUntil(plan, lastSoldAt, clock);
  const gone = sellingMinutesUntil(plan, Math.max(lastSoldAt, goneAt ?? lastSoldAt), clock);
  const until = untilAt === null ? openHours(plan) * 60 : minutesPutOut(plan, untilAt, clock);
  if (from === null || last === null || gone === null || until === null) return base;
  const withinMinutes = Math.max(0, last - from);
  const lost = withinMinutes === 0 ? 0 : (before / withinMinutes) * Math.max(0, until - gone);
  const isThin = lost > 0 && (sold < thinBelow.pieces || withinMinutes < thinBelow.minutes);
  return { ...base, withinMinutes, lost, isThin };
}

/** @returns minutes of selling until a moment, all days joined; null where the clock names no day of the plan */
function sellingMinutesUntil(plan: Pick<StallPlan, 'days'>, at: number, clock: WallClock): number | null {
  const { day, minute, isOfPlan } = sellingTime(plan, clock(at));
  return isOfPlan ? minutesBefore(plan, day, minute) : null;
}

/** More may be put out on a day between those of selling as well; null where the clock stands outside of them. */
function minutesPutOut(plan: Pick<StallPlan, 'days'>, at: number, clock: WallClock): number | null {
  const { day, minute } = sellingTime(plan, clock(at));
  const days = daysInOrder(plan);
  const isWithin = day >= (days[0]?.day ?? day) && day <= (days.at(-1)?.day ?? day);
  return isWithin ? minutesBefore(plan, day, minute) : null;
}

function minutesBefore(plan: Pick<StallPlan, 'days'>, day: string, minute: number): number {
  let until = 0;
  for (const one of daysInOrder(plan)) {
    if (one.day < day) until += openMinutes(one);
    else if (one.day === day) until += Math.min(Math.max(0, minute - one.fromMinute), openMinutes(one));
  }
  return until;
}
