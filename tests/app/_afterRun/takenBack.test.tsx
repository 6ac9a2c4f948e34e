// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import '@/tests/app/_screens/stage';
import { act, cleanup, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, it, vi } from 'vitest';
import { AfterRunScreen } from '@/app/_afterRun/AfterRunScreen';
import { canonicalText } from '@/lib/stored/canonicalText';
import type { RateTaken } from '@/shared/schemas/making/learnedEvents';
import { runSchema } from '@/shared/schemas/making/run';
import { supplierSchema } from '@/shared/schemas/making/supply';
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

it('a price taken over from a bill goes back in all places of its supplier, to the last bit', async () => {
  await act(() => screenStore().open());
  const { actions } = screenStore();
  await act(() => actions.edit('Mill', [{ do: 'add', kind: 'supplier', id: 'mill', body: mill(4.95) }]));
  await act(() => actions.note('Price', [{ kind: 'rateTaken', body: taken }]));
  const body = runSchema.parse({ name: 'Club shirts', works: [{ jobId: 'club', orderId: null }] });
  await act(() => actions.edit('Run', [{ do: 'add', kind: 'run', id: 'run', body }]));
  await act(() =>
    actions.issue('Begin', {
      ...{ kind: 'runStandard', about: { kind: 'run', id: 'run' }, series: 'runStandard run' },
      body: (number) => ({ ...clubStandard(), number, issuedOn: TEST_DAY }),
    }),
  );
  await enter(<AfterRunScreen runId="run" />);
  await userEvent.click(await screen.findByRole('button', { name: /^Take back: Price of what is used up/ }));
  await eventually(() => expect(canonicalText(bodyOf('supplier', 'mill'))).toBe(canonicalText(mill(4.6))));
  expect(screenStore().getState().entries.rateTaken).toEqual([]);
  expect(screen.queryByText(/changed by hand since/)).toBeNull();
});
