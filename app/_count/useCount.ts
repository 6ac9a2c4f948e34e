'use client';

import { useCallback, useMemo, useState } from 'react';
import { wallAt } from '@/app/_clock/wallAt';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { WAITING_DEVICE } from '@/app/_store/happenedState';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { tapWords } from '@/app/_words/stall/count/tapWords';
import { type FixedPlan, plansCountedBy, plansOf } from '@/lib/stall/car/plansOf';
import { besidePlan } from '@/lib/stall/count/besidePlan';
import type { DayCount } from '@/lib/stall/count/dayCount';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import { type OpenTicket, openTicket } from '@/lib/stall/count/openTicket';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import type { Tap } from '@/shared/schemas/stallEvents';
import type { PlannedGoods } from '@/shared/schemas/stallPapers';

/** Plans of a stall day: the one that is counted by, and those before it, the newest first. */
export interface CountedPlans {
  readonly counts: FixedPlan;
  readonly former: readonly FixedPlan[];
}

/** What everything on the screen of the count works with. */
export interface Counting {
  readonly workspace: ReadyWorkspace;
  readonly plan: FixedPlan['body'];
  readonly locale: string;
  readonly count: DayCount;
  readonly ticket: OpenTicket;
  /** Goods that were tapped by a former plan, which this one does not name, as the newest that names them does. */
  readonly beside: readonly PlannedGoods[];
  /** The plan with those beside it: what names goods in words. */
  readonly named: FixedPlan['body'];
  /** Taps of the day that were counted by an earlier plan. */
  readonly tapsBefore: number;
  /** Why the last tap was not taken; null where it was. */
  readonly problem: string | null;
  /** Keeps a tap at once. Stays the same through all taps. @returns whether it was taken */
  readonly tap: (tap: Tap) => boolean;
  /** Keeps a tap in the place of the last one of this device, as one step. */
  readonly tapInstead: (tap: Tap) => void;
  /** Takes the last tap of this device back that counts. */
  readonly undo: () => void;
}

/** The count of a stall day as this device sees it, and how one taps. */
export function useCount(
  workspace: ReadyWorkspace,
  { counts: { id: planId, body: plan }, former }: CountedPlans,
  locale: string,
): Counting {
  const device = workspace.device?.id ?? WAITING_DEVICE;
  const { note } = workspace;
  const [problem, setProblem] = useState<string | null>(null);
  const taps = useMemo(
    () => ownTaps(workspace.entries.stallTap, plan.stallDayId, device),
    [workspace.entries.stallTap, plan.stallDayId, device],
  );
  const { stallPlan, dayClose } = workspace.papers;
  const earlier = useMemo(
    () => plansOf(stallPlan, plan.stallDayId, plansCountedBy(taps, dayClose)).earlier,
    [stallPlan, dayClose, taps, plan.stallDayId],
  );
  const count = useMemo(() => foldTaps(plan, taps, wallAt, earlier), [plan, taps, earlier]);
  const ticket = useMemo(() => openTicket(plan, taps, device), [plan, taps, device]);
  const tapsBefore = useMemo(() => taps.filter(({ body }) => body.planId !== planId).length, [taps, planId]);
  const settle = useCallback((outcome: ReturnType<typeof note>): boolean => {
    setProblem(outcome.state === 'shown' ? null : notNotedWords(outcome.state));
    return outcome.state === 'shown';
  }, []);
  const beside = useKept(besidePlan(plan, former, count.goods));
  const named = useMemo(
    () => (beside.length === 0 ? plan : { ...plan, goods: [...plan.goods, ...beside] }),
    [plan, beside],
  );
  const keep = useCallback(
    (one: Tap, instead: readonly TappedEntry[]): boolean => {
      const { stallDayId, currency } = plan;
      return settle(
        note(tapWords(one, named, locale), [
          ...instead.map(({ id }) => ({ kind: 'takeBack' as const, body: { entryId: id } })),
          { kind: 'stallTap', body: { stallDayId, planId, currency, tap: one } },
        ]),
      );
    },
    [note, plan, named, planId, locale, settle],
  );
  const tap = useCallback((one: Tap): boolean => keep(one, []), [keep]);
  const { last } = ticket;
  const tapInstead = useCallback(
    (one: Tap): void => void keep(one, last === null ? [] : [last]),
    [keep, last],
  );
  const undo = useCallback(() => {
    if (last === null) return;
    settle(
      note(`Undo ${tapWords(last.body.tap, named, locale)}`, [
        { kind: 'takeBack', body: { entryId: last.id } },
      ]),
    );
  }, [note, named, locale, last, settle]);
  return {
    workspace,
    plan,
    locale,
    count,
    beside,
    named,
    ticket,
    tapsBefore,
    problem,
    tap,
    tapInstead,
    undo,
  };
}

// Helpers

/** The same list while the same goods are on it: what is drawn by it is drawn anew only then. */
function useKept(goods: readonly PlannedGoods[]): readonly PlannedGoods[] {
  const [kept, setKept] = useState(goods);
  const isSame = kept.length === goods.length && kept.every((one, at) => one === goods[at]);
  if (!isSame) setKept(goods);
  return isSame ? kept : goods;
}

/** What waits before this device counted anything is of this device like the rest. */
function ownTaps(taps: readonly TappedEntry[], stallDayId: string, device: string): readonly TappedEntry[] {
  return taps
    .filter(({ body }) => body.stallDayId === stallDayId)
    .map((tap) => (tap.device === WAITING_DEVICE ? { ...tap, device } : tap));
}
