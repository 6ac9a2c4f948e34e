import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { FloatToSay } from '@/app/_words/stall/carWords';
import type { LeftInCar } from '@/lib/stall/car/carHeld';
import type { NotedMove } from '@/lib/stall/car/dayMoves';
import { type PlanDifferences, planDifferences } from '@/lib/stall/car/planDifferences';
import { planMoves } from '@/lib/stall/car/planMoves';
import { type PlansOfDay, plansCountedBy, plansOf } from '@/lib/stall/car/plansOf';
import { secondsFor } from '@/lib/stall/car/secondsFor';
import { takenAlong, takenMoves } from '@/lib/stall/car/takenAlong';
import { closeInForce } from '@/lib/stall/closeInForce';
import { adviseFloat } from '@/lib/stall/float/adviseFloat';
import { goodsKey } from '@/lib/stall/goodsKey';
import { sellingTerms } from '@/lib/stall/plan/costs/sellingTerms';
import { type PlanToIssue, planBody } from '@/lib/stall/plan/planBody';
import type { StallAnswer } from '@/lib/stall/plan/stallPlanned';
import type { Coins, StallDay } from '@/shared/schemas/stallDay';
import type { StockMove } from '@/shared/schemas/stock';

/** What a part of a stall day's screen is about. */
export interface StallPart {
  readonly workspace: ReadyWorkspace;
  readonly id: string;
  readonly stallDay: StallDay;
  /** The last plan that could be made; null while there was none. */
  readonly answer: Extract<StallAnswer, { readonly kind: 'planned' }> | null;
  /** What closed days left in the car. */
  readonly left: readonly LeftInCar[];
  /** It is of figures before those of now. */
  readonly isOld: boolean;
  readonly today: string;
}

export type ShownPlan = ReadyWorkspace['papers']['stallPlan'][number];

export interface CarOnScreen {
  readonly plans: PlansOfDay<ShownPlan>;
  /** Whether taps or a close name the plan that counts. */
  readonly isCounted: boolean;
  readonly advice: FloatToSay;
  /** What goes into the tin: typed, else advised. */
  readonly float: Coins;
  /** Null while there is no plan. */
  readonly toIssue: PlanToIssue | null;
  /** What fixing now moves. */
  readonly loads: readonly StockMove[];
  /** Of what is brought, what closed days left in the car: fixing takes it over. */
  readonly taken: readonly LeftInCar[];
  /** Pieces that are brought of goods nobody counted. */
  readonly unknown: number;
  /** Null where nothing was fixed, or the plan of now is the fixed one. */
  readonly differences: PlanDifferences | null;
  /** Whether the plan of now is the one that was fixed, and it was not taken back. */
  readonly isFixed: boolean;
}

/**
 * Everything that is said of loading the car.
 *
 * @param loaded moves that loaded the car for the day
 */
export function carOnScreen(
  { workspace, id, stallDay, answer, left, today }: StallPart,
  loaded: readonly NotedMove[],
): CarOnScreen {
  const { workshop, papers, piles, entries } = workspace;
  const countedBy = plansCountedBy(entries.stallTap, papers.dayClose);
  const plans = plansOf(papers.stallPlan, id, countedBy);
  const channel = workshop.channels.find((one) => one.id === stallDay.channelId);
  const terms = channel === undefined ? null : sellingTerms(channel);
  const found = adviseFloat({
    currency: workshop.currency,
    stallDay,
    goods: answer === null ? [] : answer.goods.filter(({ mine }) => mine > 0),
    sets: stallDay.prices.sets.flatMap(({ price }) => price ?? []),
    taxMode: terms?.taxMode ?? 'none',
    tax: terms?.tax ?? 0,
    cardShare: terms?.cardShare ?? 0,
    piecesPerTicket: terms?.piecesPerTicket ?? 1,
  });
  const advice: FloatToSay = answer === null && found.kind === 'nothingExpected' ? { kind: 'noPlan' } : found;
  const float = stallDay.float.coins ?? (advice.kind === 'advised' ? advice.coins : []);
  const stock = { piles, moves: loaded };
  const seconds = secondsFor(id, stock);
  const toIssue =
    answer === null
      ? null
      : planBody({ stallDayId: id, day: today, stallDay, workshop, answer, float, seconds });
  const now = toIssue?.kind === 'ready' ? toIssue.body({ count: 1, letter: null }) : null;
  const goods = now?.goods ?? [];
  const counted = new Set(piles.flatMap(({ item }) => (item.kind === 'finished' ? [goodsKey(item)] : [])));
  const differences = plans.counts === null || now === null ? null : planDifferences(plans.counts.body, now);
  // What a closed day brought has come home or gone: a newer plan corrects the close.
  const isOpen = now !== null && closeInForce(papers.dayClose, id) === null;
  const taken = isOpen ? takenAlong(id, goods, loaded, left) : [];
  return {
    plans,
    isCounted: plans.counts !== null && countedBy.has(plans.counts.id),
    advice,
    float,
    toIssue,
    loads: isOpen ? [...takenMoves(taken), ...planMoves(id, goods, stock)] : [],
    taken,
    unknown: goods.reduce((sum, one) => (counted.has(goodsKey(one)) ? sum : sum + one.bring), 0),
    differences,
    isFixed: plans.counts !== null && !plans.isTakenBack && now !== null && differences === null,
  };
}

/** @returns what coins come to, currency units. */
export const worthOf = (coins: Coins): number =>
  Number(coins.reduce((sum, { value, count }) => sum + value * count, 0).toFixed(4));
