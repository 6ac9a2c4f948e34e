import type { WallClock } from '@/lib/stall/count/sellingTime';
import { tapsDigest } from '@/lib/stall/count/tapsDigest';
import type { PaperNumber } from '@/shared/schemas/happened';
import type { DayClose } from '@/shared/schemas/stallPapers';
import { type DayWeather, saidWeathers } from './dayWeather';
import type { EveningAnswers } from './eveningAnswers';
import { lostLearned, lostStretches } from './lostSales';
import type { Evening } from './reconcile';
import type { StockRow } from './stockRows';
import { strayRow } from './strayRow';
import { wishesKept } from './wishesKept';

interface CloseMade {
  readonly number: PaperNumber;
  /** YYYY-MM-DD. */
  readonly issuedOn: string;
  readonly planId: string;
  readonly answers: Pick<
    EveningAnswers,
    'decision' | 'note' | 'notLost' | 'lostAfterAll' | 'weatherId' | 'weatherOfDays'
  >;
  readonly clock: WallClock;
}

/** What is numbered together: the closes of one stall day, each in the place of the one before. */
export const closeSeries = (stallDayId: string): string => `dayClose ${stallDayId}`;

/** @returns the paper that closes a day. */
export function closeBody(evening: Evening, made: CloseMade): DayClose {
  const { plan, count, money, result } = evening;
  const { written: _w, isReckoned: _r, beyond: _b, reductions, ...kept } = money;
  return {
    ...{
      number: made.number,
      issuedOn: made.issuedOn,
      planId: made.planId,
      soldFrom: evening.soldFrom,
      taps: count.tapIds.length,
      tapsDigest: tapsDigest(count.tapIds),
    },
    ...{ stallDayId: plan.stallDayId, title: plan.title, currency: plan.currency },
    days: plan.days.map(({ day }) => day),
    goods: evening.rows.map((row) => goodsClosed(evening, row, made)),
    ...(evening.strays.length === 0 ? {} : { strays: evening.strays.map(strayRow) }),
    reductions,
    money: kept,
    weatherId: evening.weatherId,
    weather: weatherClosed(evening.weather),
    weatherSaid: saidWeathers(plan, made.answers).map((one) => ({ ...one })),
    result: {
      contribution: result.contribution,
      fixed: result.fixed,
      leftoverCost: result.leftoverCost,
      profit: result.profit,
      hours: result.hours,
      benchHours: plan.costs.benchHours,
      payPerHour: result.payPerHour,
    },
    sellingHours: evening.sellingHours,
    hours: [...count.hours],
    askedFor: [...wishesKept(count.askedFor).kept],
    putBack: count.putBack,
    decision: made.answers.decision,
    note: made.answers.note,
  };
}

// Helpers

const weatherClosed = ({ factor, parts }: DayWeather): DayClose['weather'] =>
  factor === null ? null : { factor, parts: [...parts] };

function goodsClosed(
  { plan, soldFrom }: Evening,
  row: StockRow,
  { answers, clock }: Pick<CloseMade, 'answers' | 'clock'>,
): DayClose['goods'][number] {
  const { jobId, lineId, size, design, cost } = row.goods;
  const stretches = lostStretches(plan, row, clock);
  const isTaken = answers.lostAfterAll.includes(row.key) && stretches.some(({ isThin }) => isThin);
  return {
    ...{ jobId, lineId, size, design, cost },
    ...{ brought: row.brought, sold: row.sold, given: row.given, damaged: row.damaged },
    ...(row.keptBrought === 0 ? {} : { keptBrought: row.keptBrought, keptSold: row.keptSold }),
    ...{ seconds: row.seconds, counted: row.counted, reason: row.reason, asked: row.asked },
    ...(row.reason === null || row.difference === null ? {} : { reasonFor: row.difference }),
    ...(soldFrom === 'taps' && row.untapped !== 0 ? { untappedPay: row.untappedPay } : {}),
    lost: lostLearned(row.key, stretches, answers),
    ...(answers.notLost.includes(row.key) ? { isLostLeftOut: true } : isTaken ? { isLostTaken: true } : {}),
    revenue: row.revenueMinor,
  };
}
