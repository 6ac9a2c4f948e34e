import { act, screen } from '@testing-library/react';
import { CountScreen } from '@/app/_count/CountScreen';
import { laterParts } from '@/app/_count/laterParts';
import type { Lazy } from '@/app/_network/lazy';
import { planSeries } from '@/lib/stall/car/plansOf';
import type { Tap } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { enter, screenStore } from '@/tests/app/_screens/screens';
import { fairPlan } from '@/tests/fixtures/stallPlan';

/** Opens the store as any screen does, and fixes a plan. */
export async function fixPlan(more: Partial<StallPlan> = {}): Promise<string> {
  await act(() => screenStore().open());
  const outcome = await act(() =>
    screenStore().actions.issue('Plan', {
      kind: 'stallPlan',
      about: { kind: 'stallDay', id: fairPlan.stallDayId },
      series: planSeries(fairPlan.stallDayId),
      body: (number) => ({ ...fairPlan, number, ...more }),
    }),
  );
  if (outcome.state !== 'issued') throw new Error(`the plan was not issued: ${outcome.state}`);
  return outcome.paper.id;
}

/** Enters the count of the fair, with the parts that come later. */
export async function enterCount(): Promise<void> {
  await Promise.all(Object.values(laterParts).map((part: Lazy<unknown>) => part.fetch()));
  await enter(<CountScreen stallDayId={fairPlan.stallDayId} />);
}

/** What was tapped and counts. */
export const tapped = (): readonly Tap[] =>
  screenStore()
    .getState()
    .entries.stallTap.map(({ body }) => body.tap);

export const tile = (name: RegExp): HTMLElement => screen.getByRole('button', { name });
export const key = (name: RegExp): HTMLElement => screen.getByRole('button', { name });
