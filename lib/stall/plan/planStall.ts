import type { Grid } from '@/lib/grid/evaluateGrid';
import { goodsKey } from '@/lib/stall/goodsKey';
import { adviseCarried } from '@/lib/stall/plan/advice/adviseCarried';
import type { Limited } from '@/lib/stall/plan/advice/withinLimits';
import { type Batches, batchesOf } from '@/lib/stall/plan/costs/batchesOf';
import { type DayCosts, dayCosts } from '@/lib/stall/plan/costs/dayCosts';
import { dayPrice } from '@/lib/stall/plan/costs/dayPrice';
import { jobForStall } from '@/lib/stall/plan/costs/jobForStall';
import type { MakingCosts } from '@/lib/stall/plan/costs/makingCosts';
import { MakingKept } from '@/lib/stall/plan/costs/makingKept';
import { paidAlready } from '@/lib/stall/plan/costs/paidAlready';
import { type GoodsAsked, goodsAsked } from '@/lib/stall/plan/demand/goodsAsked';
import { holdsOneWeather, type Scenario, scenariosOf } from '@/lib/stall/plan/demand/scenarios';
import { type PlanSeen, planOutcomes, weightedOutcome } from '@/lib/stall/plan/outcomes/planOutcomes';
import { seePlan } from '@/lib/stall/plan/outcomes/seePlan';
import { canonicalText } from '@/lib/stored/canonicalText';
import type { JobInput } from '@/shared/schemas/request';
import type { Channel } from '@/shared/schemas/workshop';
import { channelTypicals } from '@/shared/tables/typicalRates';
import { type GoodsReckoned, reckonGoods } from './goodsReckoned';
import { planTroubles } from './planTroubles';
import { restsOn } from './restsOn';
import type { StallAsked } from './stallAsked';
import type { GoodsPlanned, StallAnswer, StallTrouble } from './stallPlanned';

/** What everything of a plan is reckoned with. */
interface Ground {
  readonly asked: StallAsked;
  readonly channel: Channel;
  readonly day: DayCosts;
  /** Of the costs of the day, when it is asked. */
  readonly paid: number;
  readonly scenarios: readonly Scenario[];
  readonly leftoverShare: number;
}

/**
 * How many of each goods to bring to a stall day, and what comes of it: of the maker's own numbers and of the advice.
 *
 * @param grid the thread's formula grid
 * @param kept what jobs cost, kept by the thread from question to question
 * @returns all that stands in the way at once, where anything does
 */
export function planStall(asked: StallAsked, grid: Grid, kept = new MakingKept()): StallAnswer {
  const troubles = planTroubles(asked);
  const ground = groundOf(asked);
  if (ground === null || troubles.length > 0) return { kind: 'refused', troubles };
  const { goods, troubles: unasked } = goodsAsked(
    asked,
    ground.channel.piecesPerTicket?.value ?? channelTypicals.stall.piecesPerTicket.typical ?? 1,
    ground.leftoverShare,
  );
  const made = makingOf(ground, goods, (jobId, input) => kept.of(jobId, input, grid));
  const unpriced = goods.flatMap((one): readonly StallTrouble[] => {
    const { jobId, lineId, size, design, line } = one;
    return dayPrice(asked.stallDay, one, line) === null
      ? [{ kind: 'noPrice', goods: { jobId, lineId, size }, design }]
      : [];
  });
  // Where nobody is expected to ask for anything there is nothing to plan.
  const noGoods: StallTrouble = { kind: 'noForecast', rangeId: null, range: null };
  const found = eachOnce([...unasked, ...made.troubles, ...unpriced]);
  const all = found.length === 0 && goods.length === 0 ? [noGoods] : found;
  if (all.length > 0) return { kind: 'refused', troubles: all };
  return planned(ground, reckoned(ground, goods, made.jobs), made.jobs);
}

// Helpers

/** What stands in the way of several designs, such as a job that is gone, is said once. */
const eachOnce = (troubles: readonly StallTrouble[]): readonly StallTrouble[] => [
  ...new Map(troubles.map((trouble) => [canonicalText(trouble), trouble])).values(),
];

function groundOf(asked: StallAsked): Ground | null {
  const { stallDay, workshop } = asked;
  const channel = workshop.channels.find(({ id }) => id === stallDay.channelId);
  const day = dayCosts(stallDay, workshop);
  const { leftoverShare } = stallDay;
  if (channel === undefined || day === null || leftoverShare === null) return null;
  return {
    ...{ asked, channel, day, paid: paidAlready(stallDay, workshop, asked.day) },
    ...{ scenarios: scenariosOf(stallDay), leftoverShare: leftoverShare.value },
  };
}

type Planned = Extract<StallAnswer, { readonly kind: 'planned' }>;
type Jobs = ReadonlyMap<string, MakingCosts>;

function makingOf(
  { asked, channel }: Ground,
  goods: readonly GoodsAsked[],
  costsOf: (jobId: string, input: JobInput) => MakingCosts | null,
) {
  const jobs = new Map<string, MakingCosts>();
  const troubles: StallTrouble[] = [];
  for (const { jobId, input } of asked.jobs) {
    const own = goods.filter((one) => one.jobId === jobId);
    if (own.length === 0) continue;
    const { day, workshop } = asked;
    const costs = costsOf(jobId, jobForStall(input, { day, workshop, channel, goods: own }));
    if (costs === null) troubles.push({ kind: 'jobStopped', jobId, jobName: input.job.name });
    else jobs.set(jobId, costs);
  }
  return { jobs, troubles };
}

function reckoned(
  { asked, channel, scenarios }: Ground,
  goods: readonly GoodsAsked[],
  jobs: Jobs,
): readonly GoodsReckoned[] {
  return goods.flatMap((one) => {
    const costs = jobs.get(one.jobId)?.pieces.get(goodsKey(one));
    const price = dayPrice(asked.stallDay, one, one.line);
    return costs === undefined || price === null ? [] : [reckonGoods(one, costs, price, channel, scenarios)];
  });
}

function planned(ground: Ground, goods: readonly GoodsReckoned[], jobs: Jobs): StallAnswer {
  const { asked, day, paid, scenarios, channel } = ground;
  const { stallDay, workshop } = asked;
  const taxed = channel.taxMode === 'none' ? 0 : (channel.tax?.value ?? 0);
  const batches = batchesOf(goods, jobs);
  const seen = (bring: readonly number[]): PlanSeen => ({
    ...{ goods, bring, scenarios, day, withTax: 1 + taxed },
    batch: batches.all(bring),
  });
  // What does not carry its cost without limits does not within them, and sets no money aside.
  const free = adviseCarried(goods, { tablePieces: null, cash: null }, batches.ofJob);
  const limits = limitsOf(ground, goods, free.advice.bring, batches);
  const { advice: advised } = adviseCarried(goods, limits, batches.ofJob, free.leftOut);
  const mine = goods.map(({ held }, at) => held ?? advised.bring[at] ?? 0);
  const taking = [...new Set(goods.map(({ rangeId }) => rangeId))].map((rangeId) => {
    const bring = goods.map((one, at) => (one.rangeId === rangeId ? advised.bring[at] : mine[at]) ?? 0);
    const taken = seen(bring);
    return {
      rangeId,
      weightedProfit: weightedOutcome(taken).profit,
      pieces: bring.reduce((sum, count) => sum + count, 0),
      outcomes: planOutcomes(taken),
    };
  });
  return {
    kind: 'planned',
    currency: workshop.currency,
    goods: goods.map((one, at) =>
      shown(one, mine[at] ?? 0, advised.bring[at] ?? 0, advised.why[at] ?? 'rule'),
    ),
    mine: seePlan(seen(mine), stallDay.limits, paid),
    advice: seePlan(seen(advised.bring), stallDay.limits, paid),
    taking,
    limitGap: advised.gap,
    nothingFits: nothingFits(advised.nothingFits, limits.setAside, stallDay),
    troubles: [...besideTroubles(channel), ...weatherTroubles(asked), ...belowZero(asked, goods)],
    restsOn: restsOn(asked, channel, goods),
  };
}

/** What the limits leave for pieces: what of the day is not paid yet and its batch come first, by the plan without limits. */
function limitsOf(
  { asked, day, paid }: Ground,
  goods: readonly GoodsReckoned[],
  bring: readonly number[],
  batches: Batches,
) {
  const { tablePieces, cash } = asked.stallDay.limits;
  if (cash === null) return { tablePieces, cash, setAside: 0 };
  const ofPieces = goods.reduce(
    (sum, each, at) => sum + Math.max(0, (bring[at] ?? 0) - each.atHome) * each.cash,
    0,
  );
  const once = batches.all(bring).cash - ofPieces;
  const setAside = day.sunk + day.avoidable - paid + once;
  return { tablePieces, cash: cash - setAside, setAside };
}

function nothingFits(
  found: Limited['nothingFits'],
  setAside: number,
  { limits }: StallAsked['stallDay'],
): Planned['nothingFits'] {
  const most = found === null ? null : limits[found.limit];
  if (found === null || most === null) return null;
  return found.limit === 'cash'
    ? { limit: 'cash', most, setAside, least: setAside + found.least }
    : { limit: 'tablePieces', most, least: found.least };
}

function shown(
  one: GoodsReckoned,
  mine: number,
  advised: number,
  advisedBy: GoodsPlanned['advisedBy'],
): GoodsPlanned {
  const { jobId, lineId, size, rangeId, design, price, netPrice, fees, packaging } = one;
  const { cost, costWithOverhead, leftoverShare, expected, criticalRatio, atHome, finishedBefore, held } =
    one;
  return {
    ...{ jobId, lineId, size, rangeId, design, price, netPrice, fees, packaging, cost },
    ...{ costWithOverhead, leftoverShare, expected, criticalRatio, atHome, finishedBefore },
    ...{ mine, isHeld: held !== null, sold: one.demand.sold(mine), advised, advisedBy },
  };
}

const weatherTroubles = ({ stallDay }: StallAsked): readonly StallTrouble[] =>
  holdsOneWeather(stallDay) ? [{ kind: 'oneWeather' }] : [];

const belowZero = ({ atHome }: StallAsked, goods: readonly GoodsReckoned[]): readonly StallTrouble[] =>
  atHome.flatMap(({ pieces, ...home }): readonly StallTrouble[] => {
    if (pieces >= 0) return [];
    const one = goods.find((each) => goodsKey(each) === goodsKey(home));
    if (one === undefined) return [];
    return [{ kind: 'stockBelowZero', goods: home, design: one.design, pieces }];
  });

/** Terms of the way of selling that nobody has told stand at what is usual. */
const besideTroubles = (channel: Channel): readonly StallTrouble[] =>
  (['cardShare', 'cardFee', 'cardFixedFee', 'piecesPerTicket', 'commission'] as const).flatMap((what) => {
    const isByCard = what !== 'commission' && what !== 'cardShare';
    if (isByCard && channel.cardShare?.value === 0) return [];
    return channel[what] === null ? [{ kind: 'channelLacks', what }] : [];
  });
