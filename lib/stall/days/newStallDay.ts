import type { Rate } from '@/shared/schemas/rate';
import { type StallDay, stallDaySchema } from '@/shared/schemas/stallDay';
import type { Workshop } from '@/shared/schemas/workshop';

interface NewAt {
  readonly name: string;
  /** The first day of selling, YYYY-MM-DD; null where nobody knows it yet. */
  readonly day: string | null;
  /** Of the open day. */
  readonly dayId: string;
}

/** A stall day that another one is begun like. */
interface Earlier {
  readonly id: string;
  readonly stallDay: StallDay;
}

interface Opening {
  readonly fromMinute: number;
  readonly toMinute: number;
}

/** Ten to five, as most fairs have it. */
const USUAL: Opening = { fromMinute: 10 * 60, toMinute: 17 * 60 };

/** What a weather leaves of a dry day’s sales. [common practice] */
const weathers = [
  { id: 'dry', name: 'dry', factor: 1 },
  { id: 'showers', name: 'showers', factor: 0.65 },
  { id: 'wet', name: 'wet', factor: 0.3 },
] as const;

/** What an unsold piece is worth at the next fair, share of its cost. [common practice] */
const LEFTOVER_SHARE = 0.6;

/**
 * A stall day of which nothing but its name is known. Factors of weathers are typical; how likely each is nobody has
 * said. The way of selling is chosen where there is but one.
 *
 * @param today YYYY-MM-DD, of which the typical figures are
 */
export function freshStallDay(at: NewAt, { channels }: Pick<Workshop, 'channels'>, today: string): StallDay {
  const [only, ...others] = channels;
  const typical = (value: number): Rate<'share'> => ({
    value,
    unit: 'share',
    date: today,
    origin: 'typical',
  });
  return stallDaySchema.parse({
    name: at.name,
    days: openDays(at, USUAL),
    channelId: only !== undefined && others.length === 0 ? only.id : null,
    weathers: weathers.map(({ factor, ...weather }) => ({ ...weather, factor: typical(factor) })),
    leftoverShare: typical(LEFTOVER_SHARE),
  });
}

/**
 * A stall day like an earlier one: its costs, hours, goods, prices and take-along list, with nothing paid, packed,
 * proved, made or typed for that day alone. What was noted for next time stays where it is, in that day's close.
 */
export function copiedStallDay(at: NewAt, { id, stallDay: from }: Earlier): StallDay {
  const { permit, insurance, attachments, held, made, ...kept } = from;
  return stallDaySchema.parse({
    ...kept,
    name: at.name,
    stage: 'idea',
    applyBy: null,
    answerBy: null,
    days: openDays(at, from.days[0] ?? USUAL),
    costs: from.costs.map((cost) => ({ ...cost, paidOn: null })),
    float: { ...from.float, firstTickets: null },
    takeAlong: from.takeAlong.map((thing) => ({ ...thing, isPacked: false })),
    note: '',
    likeId: id,
    archivedOn: null,
  });
}

// Helpers

const openDays = ({ day, dayId }: NewAt, { fromMinute, toMinute }: Opening): StallDay['days'] =>
  day === null ? [] : [{ id: dayId, day, fromMinute, toMinute, weight: 1 }];
