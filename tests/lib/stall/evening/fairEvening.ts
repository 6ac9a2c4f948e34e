import { springFairTap, springFairTaps } from '@/lib/examples/springFairCount';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import type { WallClock } from '@/lib/stall/count/sellingTime';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { type EveningAnswers, noAnswers } from '@/lib/stall/evening/eveningAnswers';
import { type Evening, reconcile } from '@/lib/stall/evening/reconcile';
import type { Tap } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';

const MS_PER_MINUTE = 60_000;

/** The moment of a minute of the fair: counted from 0, so that no zone matters. */
export const fairClock: WallClock = (at) => ({
  day: fairPlan.days[0]?.day ?? '',
  minute: Math.floor(at / MS_PER_MINUTE),
});

/** Taps as one phone wrote them. */
export const fairTaps: readonly TappedEntry[] = springFairTaps().map((one, at) => ({
  id: `phone-${at + 1}`,
  device: 'phonephone',
  count: at + 1,
  at: one.minute * MS_PER_MINUTE,
  body: springFairTap('plan-1', one),
}));

export const fairCount = (plan: StallPlan = fairPlan, taps: readonly TappedEntry[] = fairTaps) =>
  foldTaps(plan, taps, fairClock);

/** The tin was counted and all goods were found as they should be. */
export const fairAnswers: EveningAnswers = {
  ...noAnswers,
  cash: { counted: 53_000, coins: null, reason: 'wrongChange', reasonFor: -200 },
  stock: { ...noAnswers.stock, isRestAsReckoned: true },
};

export const fairEvening = (
  answers: EveningAnswers = fairAnswers,
  plan: StallPlan = fairPlan,
  taps: readonly TappedEntry[] = fairTaps,
) => reconcile(plan, fairCount(plan, taps), answers, fairClock);

/** @returns the answers with every reason for a size said of the difference that an evening finds. */
export const asSaidOf = ({ rows }: Evening, answers: EveningAnswers): EveningAnswers => ({
  ...answers,
  stock: {
    ...answers.stock,
    counted: Object.fromEntries(
      Object.entries(answers.stock.counted).map(([of, one]) => [
        of,
        { ...one, reasonFor: rows.find(({ key }) => key === of)?.difference ?? null },
      ]),
    ),
  },
});
export const OTTER_L = { jobId: 'fair-shirts', lineId: 'otter', size: 'L' } as const;

/** A day of these taps alone, by its plan. */
export function dayOf(
  taps: readonly Tap[],
  { answers = noAnswers, plan = fairPlan }: { answers?: EveningAnswers; plan?: StallPlan } = {},
) {
  const told = { stallDayId: 'spring-fair', planId: 'p', currency: plan.currency };
  const entries = taps.map((tap, at) => ({
    ...{ id: `t-${at + 1}`, device: 'phonephone', count: at + 1, at: 700 * MS_PER_MINUTE },
    body: { ...told, tap },
  }));
  return fairEvening(answers, plan, entries);
}
