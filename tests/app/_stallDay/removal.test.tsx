// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import '@/tests/app/_screens/stage';
import { act, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { NoteFields } from '@/app/_stallDay/day/NoteFields';
import { formatterFor } from '@/app/_words/formatter';
import { SPRING_FAIR_ID } from '@/lib/examples/springFair';
import { springFairTap } from '@/lib/examples/springFairCount';
import { foldStock } from '@/lib/stock/foldStock';
import type { StockMove } from '@/shared/schemas/stock';
import { enter, idsOf, screenStore, undo } from '@/tests/app/_screens/screens';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const Room = () => (
  <WithWorkspace>
    {(workspace) => {
      const stallDay = workspace.stallDays[SPRING_FAIR_ID];
      if (stallDay === undefined) return <h1>Removed</h1>;
      const on = {
        ...{ workspace, id: SPRING_FAIR_ID, stallDay, today: TEST_DAY },
        ...{ formatter: formatterFor(workspace.workshop), set: () => undefined },
      };
      return (
        <>
          <h1>The fair</h1>
          <NoteFields on={on} onRemoved={() => undefined} />
        </>
      );
    }}
  </WithWorkspace>
);

const note = (bodies: readonly StockMove[]) =>
  act(async () => {
    screenStore().actions.note(
      'Load',
      bodies.map((body) => ({ kind: 'stockMove', body })),
    );
  });

const item = { kind: 'finished', jobId: 'fair-shirts', lineId: 'fern', size: 'M' } as const;
const reference = { kind: 'stallDay', id: SPRING_FAIR_ID };

/** Ten Fern M were pressed, and eight of them loaded. */
async function loaded(): Promise<void> {
  await act(() => screenStore().open());
  const move = { item, grade: 'first', unitCost: null } as const;
  await note([
    { ...move, place: { kind: 'home' }, quantity: 10, cause: 'made', reference: null },
    { ...move, place: { kind: 'home' }, quantity: -8, cause: 'returned', reference },
    { ...move, place: { kind: 'van' }, quantity: 8, cause: 'returned', reference },
  ]);
  await enter(<Room />);
}

const lying = () =>
  Object.fromEntries(
    foldStock(screenStore().getState().entries.stockMove).map(({ place, quantity }) => [
      place.kind,
      quantity,
    ]),
  );
const button = () => screen.getByRole('button', { name: 'Remove this stall day' });

describe('a stall day that is removed', () => {
  it('lays home what lies in the car for it, says so before, and undo loads it again', async () => {
    await loaded();
    expect(button()).toHaveAccessibleDescription(
      'If it is removed, 8 pieces in the car for it lie at home again.',
    );
    await userEvent.click(button());
    expect(idsOf('stallDay')).not.toContain(SPRING_FAIR_ID);
    expect(lying()).toEqual({ home: 10, van: 0 });
    await undo();
    expect(idsOf('stallDay')).toContain(SPRING_FAIR_ID);
    expect(lying()).toEqual({ home: 2, van: 8 });
  });

  it('says how many seconds lie in the car among them', async () => {
    await loaded();
    const second = { item, grade: 'second', cause: 'returned', reference, unitCost: null } as const;
    await note([
      { ...second, place: { kind: 'home' }, quantity: -1 },
      { ...second, place: { kind: 'van' }, quantity: 1 },
    ]);
    expect(button()).toHaveAccessibleDescription(
      'If it is removed, 9 pieces in the car for it, 1 second among them, lie at home again.',
    );
  });

  it('stays where something was counted for it and it is not closed, and says why', async () => {
    await loaded();
    const goods = { jobId: 'fair-shirts', lineId: 'fern', size: 'M' };
    const body = springFairTap('plan-1', {
      minute: 700,
      tap: { what: 'sale', goods, minor: 2800, pay: 'cash' },
    });
    await act(async () => {
      screenStore().actions.note('Tap', [{ kind: 'stallTap', body }]);
    });
    expect(button()).toHaveAccessibleDescription(/^Something was counted for this day\. Close it/);
    await userEvent.click(button());
    expect(idsOf('stallDay')).toContain(SPRING_FAIR_ID);
    expect(lying()).toEqual({ home: 2, van: 8 });
  });
});
