import { daysBetween } from '@/shared/days';
import type { BoardOrder } from './todayList';

/** How many quotes of a kind were answered, and how many of them with yes. */
interface HitRate<Band> {
  readonly band: Band;
  readonly decided: number;
  readonly won: number;
  /** Share of won among decided; null where none was decided. */
  readonly share: number | null;
  /** Too few to say anything. */
  readonly isFew: boolean;
}

/** From one amount up to below another, whole minor units; null is open at its end. */
interface PriceBand {
  readonly fromMinor: number;
  readonly belowMinor: number | null;
}
/** From so many days to the quote up to and with so many; null is open. */
interface AnswerBand {
  readonly fromDays: number;
  readonly toDays: number | null;
}

interface HitRates {
  readonly currency: string;
  readonly all: HitRate<null>;
  readonly byPrice: readonly HitRate<PriceBand>[];
  readonly byAnswer: readonly HitRate<AnswerBand>[];
}

/** Of fewer than these a share says nothing; from memory of common practice. */
const FEW = 5;

const answerBands: readonly AnswerBand[] = [
  { fromDays: 0, toDays: 0 },
  { fromDays: 1, toDays: 1 },
  { fromDays: 2, toDays: 3 },
  { fromDays: 4, toDays: 7 },
  { fromDays: 8, toDays: null },
];

/** @returns how quotes in one currency were answered; those that nobody answered yet count in none. */
export function hitRates(orders: readonly BoardOrder[], currency: string): HitRates {
  const decided = orders.flatMap((order) => decidedQuote(order, currency));
  return {
    currency,
    all: rateOf(null, decided),
    byPrice: priceBands(decided.map(({ totalMinor }) => totalMinor)).map((band) =>
      rateOf(
        band,
        decided.filter(
          ({ totalMinor }) =>
            totalMinor >= band.fromMinor && (band.belowMinor === null || totalMinor < band.belowMinor),
        ),
      ),
    ),
    byAnswer: answerBands.map((band) =>
      rateOf(
        band,
        decided.filter(
          ({ days }) =>
            days !== null && days >= band.fromDays && (band.toDays === null || days <= band.toDays),
        ),
      ),
    ),
  };
}

// Helpers

interface DecidedQuote {
  readonly won: boolean;
  readonly totalMinor: number;
  /** From the enquiry to the first quote; null where nobody noted the enquiry, or noted it later. */
  readonly days: number | null;
}

function decidedQuote({ facts, standing }: BoardOrder, currency: string): readonly DecidedQuote[] {
  const quotes = facts.happened.flatMap((one) => (one.kind === 'quote' && !one.withdrawn ? [one.body] : []));
  const won = standing.acceptance !== null;
  const last = standing.agreed?.quote.body ?? quotes.at(-1);
  if (last === undefined || last.currency !== currency || !(won || standing.side.side === 'lost')) return [];
  const first = quotes[0]?.issuedOn;
  const days =
    standing.enquiredOn === null || first === undefined ? -1 : daysBetween(standing.enquiredOn, first);
  return [{ won, totalMinor: standing.agreed?.sums.total ?? last.sums.total, days: days < 0 ? null : days }];
}

function rateOf<Band>(band: Band, decided: readonly DecidedQuote[]): HitRate<Band> {
  const won = decided.filter((one) => one.won).length;
  return {
    ...{ band, won },
    decided: decided.length,
    share: decided.length === 0 ? null : won / decided.length,
    isFew: decided.length < FEW,
  };
}

/** Bands at 1, 2 and 5 of each power of ten, from the lowest total to the highest; what lies outside four is in their ends. */
function priceBands(totals: readonly number[]): readonly PriceBand[] {
  const positive = totals.filter((total) => total > 0);
  if (positive.length === 0) return [];
  const [low, high] = [Math.min(...positive), Math.max(...positive)];
  const edges = roundAmounts(high).filter((edge) => edge > low && edge <= high);
  const kept = edges.slice(-MOST_EDGES);
  return [0, ...kept].map((fromMinor, at) => ({ fromMinor, belowMinor: kept[at] ?? null }));
}

const MOST_EDGES = 4;

function roundAmounts(upTo: number): readonly number[] {
  const amounts: number[] = [];
  for (let ten = 1; ten <= upTo; ten *= 10) amounts.push(ten, 2 * ten, 5 * ten);
  return amounts;
}
