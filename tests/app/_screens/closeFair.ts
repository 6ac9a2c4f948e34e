import { act } from '@testing-library/react';
import { SPRING_FAIR_ID } from '@/lib/examples/springFair';
import { springFairTap, springFairTaps } from '@/lib/examples/springFairCount';
import { planSeries } from '@/lib/stall/car/plansOf';
import { closeBody, closeSeries } from '@/lib/stall/evening/closeBody';
import { closeMoves } from '@/lib/stall/evening/closeMoves';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { fairAnswers, fairClock, fairEvening, fairTaps } from '@/tests/lib/stall/evening/fairEvening';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { screenStore } from './screens';

/**
 * Opens the store and closes the worked fair by its fixed plan, in the weather that is told; the maker goes again.
 *
 * @param note for next time
 * @returns the id of its plan
 */
export async function closeFair(weatherId: string, note = ''): Promise<string> {
  await act(() => screenStore().open());
  const { actions } = screenStore();
  const fixed = await act(() =>
    actions.issue('Load the car', {
      kind: 'stallPlan',
      about: { kind: 'stallDay', id: SPRING_FAIR_ID },
      series: planSeries(SPRING_FAIR_ID),
      body: (number) => ({ ...fairPlan, number }),
    }),
  );
  if (fixed.state !== 'issued') throw new Error('no plan');
  const taps = springFairTaps().map(({ tap }) => springFairTap(fixed.paper.id, { minute: 0, tap }));
  await act(async () => {
    actions.note(
      'Taps',
      taps.map((body) => ({ kind: 'stallTap', body })),
    );
    await screenStore().flush();
  });
  const answers = { ...fairAnswers, weatherId, decision: 'again' as const, note };
  // The taps as they were kept, at the minutes of the fair.
  const kept = screenStore().getState().entries.stallTap;
  const evening = fairEvening(
    answers,
    fairPlan,
    fairTaps.map((tap, at) => ({ ...tap, id: kept[at]?.id ?? tap.id })),
  );
  await act(() =>
    actions.issue('Close', {
      kind: 'dayClose',
      about: { kind: 'stallDay', id: SPRING_FAIR_ID },
      series: closeSeries(SPRING_FAIR_ID),
      body: (number) =>
        closeBody(evening, { number, issuedOn: TEST_DAY, planId: fixed.paper.id, answers, clock: fairClock }),
      notes: (paperId) =>
        closeMoves(
          evening.rows,
          { stallDayId: SPRING_FAIR_ID, moves: [], piles: [], closes: [] },
          paperId,
        ).map((body) => ({ kind: 'stockMove' as const, body })),
    }),
  );
  return fixed.paper.id;
}
