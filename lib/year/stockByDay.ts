import type { DayPaper } from '@/lib/stall/closeInForce';
import type { StockEntry } from '@/lib/stock/stockEntry';
import { compareText } from '@/shared/compareText';
import type { Entry } from '@/shared/schemas/happened';
import type { RunStep } from '@/shared/schemas/making/runEvents';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';
import type { DayClose } from '@/shared/schemas/stallPapers';
import { dayOfClose } from './takingRows';

/** What says on which day something came or went, where it was noted later. */
export interface StockDaysTold {
  readonly goodsIn: readonly Entry<'goodsIn', GoodsIn>[];
  readonly runSteps: readonly Entry<'runStep', RunStep>[];
  readonly closes: readonly DayPaper<'dayClose', DayClose>[];
  /** The maker's calendar day of a moment. */
  readonly dayOf: (at: number) => string;
}

/** What was noted of stock, with the day it is of. */
export interface DatedStock {
  /** YYYY-MM-DD. */
  readonly day: string;
  readonly entry: StockEntry;
  /** It came with a delivery, which says what was paid. */
  readonly isDelivered: boolean;
}

/**
 * What was noted of stock by the day it is of: a delivery's on the day of the delivery, that of a run or a stall day on the
 * day it was closed on, all else on the day it was noted. So a bill of December noted in January is in one year with its
 * goods, and a count between both has counted them. Of one day they stand as they were noted.
 *
 * @param entries in force, in their one order
 * @returns rising; their entries are numbered anew, so that a fold takes them in this order
 */
export function stockByDay(entries: readonly StockEntry[], told: StockDaysTold): readonly DatedStock[] {
  const dayOfEntry = dayTeller(told);
  const deliveries = new Set(told.goodsIn.map(writtenAt));
  const isDelivered = (one: StockEntry) =>
    one.kind === 'stockMove' && one.body.cause === 'bought' && deliveries.has(writtenAt(one));
  return entries
    .map((entry) => ({ day: dayOfEntry(entry), entry, isDelivered: isDelivered(entry) }))
    .toSorted((one, other) => compareText(one.day, other.day))
    .map((one, index) => ({
      ...one,
      entry: { ...one.entry, device: 'byday00', count: index + 1, at: index },
    }));
}

// Helpers

/** What one step wrote bears one device and one moment. */
const writtenAt = ({ device, at }: Pick<Entry, 'device' | 'at'>): string => `${device} ${at}`;

function dayTeller({ goodsIn, runSteps, closes, dayOf }: StockDaysTold): (entry: StockEntry) => string {
  const deliveries = new Map(goodsIn.map((one) => [writtenAt(one), one.body.day]));
  const ends = new Map(closes.map(({ id, body }) => [id, dayOfClose(body)]));
  const runs = new Map<string, { at: number; day: string }[]>();
  for (const { at, body } of runSteps) {
    if (body.step.what !== 'closed') continue;
    const own = runs.get(body.runId) ?? [];
    own.push({ at, day: body.day });
    runs.set(body.runId, own);
  }
  return (entry) => {
    const { kind, body, at } = entry;
    const noted = dayOf(at);
    if (kind !== 'stockMove') return noted;
    if (body.cause === 'bought') return deliveries.get(writtenAt(entry)) ?? noted;
    const { reference } = body;
    if (reference?.kind === 'paper') return ends.get(reference.id) ?? noted;
    if (reference?.kind !== 'run') return noted;
    return runs.get(reference.id)?.findLast((close) => close.at <= at)?.day ?? noted;
  };
}
