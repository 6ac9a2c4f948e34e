'use client';

import { useCallback, useMemo, useState } from 'react';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { WAITING_DEVICE } from '@/app/_store/waitingDevice';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { tapWords } from '@/app/_words/stall/count/tapWords';
import type { FixedPlan } from '@/lib/stall/car/plansOf';
import type { DayCount } from '@/lib/stall/count/dayCount';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import { type OpenTicket, openTicket } from '@/lib/stall/count/openTicket';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import type { Tap } from '@/shared/schemas/stallEvents';
import { wallAt } from './useWall';

/** What everything on the screen of the count works with. */
export interface Counting {
  readonly workspace: ReadyWorkspace;
  readonly planId: string;
  readonly plan: FixedPlan['body'];
  readonly locale: string;
  readonly count: DayCount;
  readonly ticket: OpenTicket;
  /** Taps of the day that were counted by an earlier plan. */
  readonly tapsBefore: number;
  /** Why the last tap was not taken; null where it was. */
  readonly problem: string | null;
  /** Keeps a tap at once. Stays the same through all taps. @returns whether it was taken */
  readonly tap: (tap: Tap) => boolean;
  /** Takes the last tap of this device back that counts. */
  readonly undo: () => void;
}

/** The count of a stall day as this device sees it, and how one taps. */
export function useCount(
  workspace: ReadyWorkspace,
  { id: planId, body: plan }: FixedPlan,
  locale: string,
): Counting {
  const device = workspace.device?.id ?? WAITING_DEVICE;
  const { note } = workspace;
  const [problem, setProblem] = useState<string | null>(null);
  const taps = useMemo(
    () => ownTaps(workspace.entries.stallTap, plan.stallDayId, device),
    [workspace.entries.stallTap, plan.stallDayId, device],
  );
  const count = useMemo(() => foldTaps(plan, taps, wallAt), [plan, taps]);
  const ticket = useMemo(() => openTicket(plan, taps, device), [plan, taps, device]);
  const tapsBefore = useMemo(() => taps.filter(({ body }) => body.planId !== planId).length, [taps, planId]);
  const settle = useCallback((outcome: ReturnType<typeof note>): boolean => {
    setProblem(outcome.state === 'shown' ? null : notNotedWords(outcome.state));
    return outcome.state === 'shown';
  }, []);
  const tap = useCallback(
    (one: Tap): boolean => {
      const { stallDayId, currency } = plan;
      const body = { stallDayId, planId, currency, tap: one };
      return settle(note(tapWords(one, plan, locale), [{ kind: 'stallTap', body }]));
    },
    [note, plan, planId, locale, settle],
  );
  const { last } = ticket;
  const undo = useCallback(() => {
    if (last === null) return;
    settle(
      note(`Undo ${tapWords(last.body.tap, plan, locale)}`, [
        { kind: 'takeBack', body: { entryId: last.id } },
      ]),
    );
  }, [note, plan, locale, last, settle]);
  return { workspace, planId, plan, locale, count, ticket, tapsBefore, problem, tap, undo };
}

// Helpers

/** What waits before this device counted anything is of this device like the rest. */
function ownTaps(taps: readonly TappedEntry[], stallDayId: string, device: string): readonly TappedEntry[] {
  return taps
    .filter(({ body }) => body.stallDayId === stallDayId)
    .map((tap) => (tap.device === WAITING_DEVICE ? { ...tap, device } : tap));
}
