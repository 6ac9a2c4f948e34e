// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import '@/tests/app/_screens/stage';
import { act, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { GoodsFields } from '@/app/_stallDay/goods/GoodsFields';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { formatterFor } from '@/app/_words/formatter';
import { SPRING_FAIR_ID } from '@/lib/examples/springFair';
import { orderSchema } from '@/shared/schemas/order';
import type { StallDay } from '@/shared/schemas/stallDay';
import { bodyOf, enter, idsOf, screenStore, undo } from '@/tests/app/_screens/screens';

const change = (to: Partial<StallDay>) =>
  act(async () => {
    screenStore().actions.edit('Change', [
      { do: 'change', kind: 'stallDay', id: SPRING_FAIR_ID, to: (now) => ({ ...now, ...to }) },
    ]);
  });

const Room = () => (
  <WithWorkspace>
    {(workspace) => {
      const stallDay = workspace.stallDays[SPRING_FAIR_ID];
      if (stallDay === undefined) throw new Error('no fair');
      const on: Pick<
        StallOnScreen,
        'workspace' | 'id' | 'stallDay' | 'before' | 'formatter' | 'set' | 'change'
      > = {
        ...{ workspace, id: SPRING_FAIR_ID, stallDay, formatter: formatterFor(workspace.workshop) },
        // Nothing was noted and no day closed.
        before: { atHome: [], madeForDay: [], past: [], left: [] },
        set: () => undefined,
        change: () => undefined,
      };
      return (
        <>
          <h1>The fair</h1>
          <GoodsFields on={on as StallOnScreen} />
        </>
      );
    }}
  </WithWorkspace>
);

describe('goods of a stall day', () => {
  it('that are new stay open when their first design comes', async () => {
    await act(() => screenStore().open());
    const [shirts, ...others] = bodyOf('stallDay', SPRING_FAIR_ID).ranges;
    if (shirts === undefined) throw new Error('no goods');
    await change({ ranges: [{ ...shirts, designs: [] }, ...others] });
    await enter(<Room />);
    const [called] = screen.getAllByLabelText('What they are called');
    expect(called).toBeVisible();
    await change({ ranges: [shirts, ...others] });
    expect(called).toBeVisible();
  });

  it('say nothing of own sales where no day before sold any', async () => {
    await act(() => screenStore().open());
    await enter(<Room />);
    await userEvent.click(screen.getByRole('button', { name: /^Shirts/ }));
    expect(screen.getByLabelText('Sizes go by')).toBeVisible();
    expect(screen.queryByText(/own stalls/)).toBeNull();
    expect(screen.queryByRole('checkbox', { name: /^Leave own sales/ })).toBeNull();
  });

  it('made for an order are listed as such, and one tap makes their job stock and brings them', async () => {
    await act(() => screenStore().open());
    const [shirts, ...others] = bodyOf('stallDay', SPRING_FAIR_ID).ranges;
    if (shirts === undefined) throw new Error('no goods');
    const [fern, ...designs] = shirts.designs;
    if (fern === undefined) throw new Error('no design');
    await act(async () => {
      const { actions } = screenStore();
      const of = idsOf('job').filter((id) => bodyOf('job', id).madeFor === 'order');
      // Of the example's own jobs made for an order none is in the way.
      actions.edit('Away', [
        ...of.map((id) => ({ do: 'delete' as const, kind: 'job' as const, id })),
        {
          do: 'add',
          kind: 'job',
          id: 'own',
          body: { ...bodyOf('job', fern.jobId), name: 'Gull tee', madeFor: 'order' },
        },
      ]);
    });
    const lines = bodyOf('job', 'own').lines;
    await change({ ranges: [{ ...shirts, designs }, ...others] });
    await enter(<Room />);
    await userEvent.click(screen.getByRole('button', { name: /^Shirts/ }));
    const offer = screen.getByRole('button', { name: `Make Gull tee stock and add ${lines[0]?.name}` });
    await userEvent.click(offer);
    expect(bodyOf('job', 'own').madeFor).toBe('stock');
    expect(bodyOf('stallDay', SPRING_FAIR_ID).ranges[0]?.designs.at(-1)).toEqual({
      ...{ jobId: 'own', lineId: lines[0]?.id, name: '', share: 1, leftoverShare: null, isLeftOut: false },
    });
    expect(screen.queryByText(/^Made for an order/)).toBeNull();
    await undo();
    expect(bodyOf('job', 'own').madeFor).toBe('order');
    expect(bodyOf('stallDay', SPRING_FAIR_ID).ranges[0]?.designs).toEqual(designs);
    expect(screen.getByText(/^Made for an order/)).toBeVisible();
    // An order names it: it is somebody's.
    await act(async () => {
      const order = orderSchema.parse({ name: 'Club shirts', jobIds: ['own'] });
      screenStore().actions.edit('Order', [{ do: 'add', kind: 'order', id: 'club', body: order }]);
    });
    expect(screen.queryByText(/^Made for an order/)).toBeNull();
  });
});
