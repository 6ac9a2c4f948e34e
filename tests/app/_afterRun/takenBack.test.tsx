// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import '@/tests/app/_screens/stage';
import { act, cleanup, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, it, vi } from 'vitest';
import { AfterRunScreen } from '@/app/_afterRun/AfterRunScreen';
import { SPRING_FAIR_ID } from '@/lib/examples/springFair';
import { canonicalText } from '@/lib/stored/canonicalText';
import type { RateTaken } from '@/shared/schemas/making/learnedEvents';
import { runSchema } from '@/shared/schemas/making/run';
import { supplierSchema } from '@/shared/schemas/making/supply';
import { stallDaySchema } from '@/shared/schemas/stallDay';
import { bodyOf, enter, leaveScreens, screenStore } from '@/tests/app/_screens/screens';
import { clubStandard } from '@/tests/fixtures/clubStandard';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';

vi.mock('next/navigation', () => ({
  usePathname: () => '/making/run/after',
  useRouter: () => ({ push: () => undefined }),
}));

afterEach(() => {
  cleanup();
  leaveScreens();
});

const mill = (each: number) =>
  supplierSchema.parse({
    name: 'Mill',
    offers: [
      { id: 'tape', item: { kind: 'consumable', consumableId: 'tape' }, tiers: [{ from: 1, each }] },
      {
        id: 'paper',
        item: { kind: 'consumable', consumableId: 'paper' },
        tiers: [
          { from: 1, each },
          { from: 10, each: 4 },
        ],
      },
    ],
  });

/** Taken over as goods came in: what stood at 4.60 now stands at 4.95. */
const taken: RateTaken = {
  ...{ day: TEST_DAY, subject: { of: 'consumablePrice', consumableId: 'tape' } },
  ...{ value: 4.95, observations: 1, spread: null, runIds: [] },
  places: ['tape', 'paper'].map((offer) => ({
    ...{ kind: 'supplier', id: 'mill', path: ['offers', offer, 'tiers', 0, 'each'] },
    ...{ before: 4.6, after: 4.95 },
  })),
};

async function beginRun(): Promise<void> {
  const { actions } = screenStore();
  const body = runSchema.parse({ name: 'Club shirts', works: [{ jobId: 'club', orderId: null }] });
  await act(() => actions.edit('Run', [{ do: 'add', kind: 'run', id: 'run', body }]));
  await act(() =>
    actions.issue('Begin', {
      ...{ kind: 'runStandard', about: { kind: 'run', id: 'run' }, series: 'runStandard run' },
      body: (number) => ({ ...clubStandard(), number, issuedOn: TEST_DAY }),
    }),
  );
}

it('a price taken over from a bill goes back in all places of its supplier, to the last bit', async () => {
  await act(() => screenStore().open());
  const { actions } = screenStore();
  await act(() => actions.edit('Mill', [{ do: 'add', kind: 'supplier', id: 'mill', body: mill(4.95) }]));
  await act(() => actions.note('Price', [{ kind: 'rateTaken', body: taken }]));
  await beginRun();
  await enter(<AfterRunScreen runId="run" />);
  await userEvent.click(await screen.findByRole('button', { name: /^Take back: Price of what is used up/ }));
  await eventually(() => expect(canonicalText(bodyOf('supplier', 'mill'))).toBe(canonicalText(mill(4.6))));
  expect(screenStore().getState().entries.rateTaken).toEqual([]);
  expect(screen.queryByText(/changed by hand since/)).toBeNull();
});

it('sizes that were ordered go to a stall day to come by one button, and back by one tap', async () => {
  await act(() => screenStore().open());
  const fair = stallDaySchema.parse({
    name: 'Fair',
    ranges: [
      {
        ...{ id: 'shirts', name: 'Shirts', pieces: 40, sizes: { from: 'audience', audience: 'women' } },
        designs: [{ jobId: 'club-order', lineId: 'shirts', share: 1 }],
      },
    ],
  });
  await act(() =>
    screenStore().actions.edit('Fair', [{ do: 'add', kind: 'stallDay', id: 'fair', body: fair }]),
  );
  await beginRun();
  await enter(<AfterRunScreen runId="run" />);
  // The worked fair comes first, where 20 % wear XL: (50 · 0.2 + 8) ÷ 87. Its shirts are all of this blank.
  expect(await screen.findByText(/XL 20.7 % \(20\), .*37 pieces, spread up to 4.9 %/)).toBeVisible();
  const spring = canonicalText(bodyOf('stallDay', SPRING_FAIR_ID));
  await userEvent.click(screen.getByRole('button', { name: /^Take it over: Mix of sizes of White shirt/ }));
  expect(bodyOf('stallDay', 'fair').ranges[0]?.sizes).toEqual({
    ...{ from: 'audience', audience: 'women' },
    ordered: [
      { size: 'S', pieces: 4 },
      { size: 'M', pieces: 9 },
      { size: 'L', pieces: 11 },
      { size: 'XL', pieces: 8 },
      { size: '2XL', pieces: 4 },
      { size: '3XL', pieces: 1 },
    ],
  });
  await userEvent.click(screen.getByRole('button', { name: /^Take back: Mix of sizes of White shirt/ }));
  await eventually(() => expect(bodyOf('stallDay', 'fair')).toEqual(fair));
  expect(canonicalText(bodyOf('stallDay', SPRING_FAIR_ID))).toBe(spring);
});
