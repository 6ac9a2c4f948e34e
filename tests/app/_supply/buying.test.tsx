// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import './supplyStage';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it, vi } from 'vitest';
import type { StudyRequest } from '@/app/_studies/studies';
import { BuyingListScreen } from '@/app/_supply/buying/BuyingListScreen';
import { BuyingListsScreen } from '@/app/_supply/buying/BuyingListsScreen';
import { runSchema } from '@/shared/schemas/making/run';
import { buyingListSchema, supplierSchema } from '@/shared/schemas/making/supply';
import { bodyOf, enter, idsOf, leaveScreens, screenStore } from '@/tests/app/_screens/screens';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

vi.mock('@/app/_studies/shareStudyWorker', async () => {
  const { buyingStudies, openStudies, studies } = await import('@/app/_studies/studies');
  const { grid } = await import('@/tests/fixtures/costed');
  const answerTo = (request: StudyRequest): unknown => {
    if (request.of === 'open') return openStudies.needs(request.asked, grid);
    if (request.of === 'buying') return buyingStudies.plan(request.asked, grid);
    return request.of === 'job' && request.name === 'bench' ? studies.bench(request.input, grid) : null;
  };
  return {
    shareStudyWorker: () => ({
      worker: {
        ask: (_key: string, request: StudyRequest, listener: (answered: unknown) => void) =>
          queueMicrotask(() =>
            act(() => listener({ kind: 'answered', isLast: true, answer: answerTo(request) })),
          ),
        leave: () => undefined,
      },
      giveBack: () => undefined,
    }),
  };
});
vi.stubGlobal('Worker', class {});

const clubOrder = () => screenStore().getState().kinds.order.documents[0];

/** A list for the job of the club, which a mill sells the shirts for. */
async function list() {
  await enter(<BuyingListScreen listId="club-list" />);
  await act(async () => {
    const order = clubOrder();
    if (order === undefined) throw new Error('no order in the example');
    const works = order.body.jobIds.map((jobId) => ({ jobId, orderId: order.id }));
    const shirt = (size: string) => ({ kind: 'blank', blankId: 'white-shirt', size }) as const;
    const offers = ['S', 'M', 'L', 'XL', '2XL', '3XL'].map((size) => ({
      ...{ id: size, item: shirt(size), articleNumber: `WS-${size}` },
      tiers: [{ from: 1, each: 4 }],
    }));
    const mill = supplierSchema.parse({ name: 'Sample Mill', freight: 9.5, offers });
    const body = buyingListSchema.parse({ name: 'For the club', works });
    screenStore().actions.edit('List', [
      { do: 'add', kind: 'supplier', id: 'mill', body: mill },
      { do: 'add', kind: 'buyingList', id: 'club-list', body },
    ]);
    await new Promise((resolve) => setTimeout(resolve, 0));
  });
  await screen.findByText(/^Buy \d/);
}
const listNow = () => bodyOf('buyingList', 'club-list');

describe('a buying list', () => {
  it('says first what to buy, and offers three covers of every size', async () => {
    await list();
    // 37 shirts at 0.936: 45 blanks reach three in four, 40 are expected to be used, 50 reach nineteen in twenty.
    expect(screen.getByText(/^Buy 45 × White shirt/)).toBeInTheDocument();
    const keys = screen.getAllByRole('radio').map((key) => key.closest('label')?.textContent);
    expect(keys).toEqual([
      expect.stringMatching(/40 blanks.*every size whole: 35\.3 %/),
      expect.stringMatching(/45 blanks.*every size whole: 78\.9 %/),
      expect.stringMatching(/50 blanks.*every size whole: 95\.1 %/),
    ]);
    await userEvent.click(screen.getByRole('radio', { name: /95 of 100/ }));
    expect(listNow().cover).toBe('sure');
    expect(await screen.findByText(/^Buy 50 × White shirt/)).toBeInTheDocument();
  });

  it('keeps a number that is typed, and follows the sums once it is emptied', async () => {
    await list();
    const named = { name: 'To buy of White shirt, 100 % polyester, S' };
    await screen.findByRole('textbox', named);
    const field = () => screen.getByRole('textbox', named);
    await userEvent.clear(field());
    await userEvent.type(field(), '9');
    expect(listNow().held).toEqual([
      { item: { kind: 'blank', blankId: 'white-shirt', size: 'S' }, quantity: 9 },
    ]);
    // Five of S in the cover of 45: four more.
    expect(await screen.findByText(/^Buy 49 × White shirt/)).toBeInTheDocument();
    await userEvent.clear(field());
    expect(listNow().held).toEqual([]);
    expect(await screen.findByText(/^Buy 45 × White shirt/)).toBeInTheDocument();
  });

  it('groups by supplier, with what the supplier asks and its freight', async () => {
    await list();
    // 45 × 4.00 and freight of 9.50.
    const mill = await screen.findByRole('region', { name: 'Sample Mill' });
    expect(within(mill).getByText(/180\.00 USD goods · 9\.50 USD freight/)).toBeInTheDocument();
    expect(within(mill).getByRole('button', { name: 'Order from Sample Mill' })).toBeInTheDocument();
  });

  it('is made for what waits to be bought, once', async () => {
    await enter(<BuyingListsScreen />);
    await userEvent.click(screen.getByRole('button', { name: 'New list' }));
    await userEvent.click(screen.getByRole('checkbox', { name: /not accepted yet/ }));
    await userEvent.click(screen.getByRole('button', { name: 'Make the list' }));
    const [id] = idsOf('buyingList');
    expect(bodyOf('buyingList', id ?? '').works).toEqual(
      clubOrder()?.body.jobIds.map((jobId) => ({ jobId, orderId: clubOrder()?.id })),
    );
    await userEvent.click(screen.getByRole('button', { name: 'New list' }));
    await userEvent.click(screen.getByRole('button', { name: 'New list' }));
    expect(screen.queryByRole('checkbox', { name: /not accepted yet/ })).toBeNull();
  });

  it('bears a name no other has, or says that the one typed is taken', async () => {
    await list();
    await act(async () => {
      const [name] = [clubOrder()?.body.name ?? ''];
      const body = buyingListSchema.parse({ name, works: [] });
      screenStore().actions.edit('List', [{ do: 'add', kind: 'buyingList', id: 'first', body }]);
      screenStore().actions.edit('List', [
        { do: 'change', kind: 'buyingList', id: 'club-list', to: (now) => ({ ...now, works: [] }) },
      ]);
    });
    cleanup();
    await enter(<BuyingListsScreen />);
    await userEvent.click(screen.getByRole('button', { name: 'New list' }));
    await userEvent.click(screen.getByRole('checkbox', { name: /not accepted yet/ }));
    const field = screen.getByRole('textbox', { name: 'Name of the list' });
    expect(field).toHaveValue(`${clubOrder()?.body.name} 2`);
    await userEvent.clear(field);
    await userEvent.type(field, 'For the club');
    expect(screen.getByText(/“For the club 2” would tell them apart/)).toBeVisible();
  });

  it('says which job something stops, and that nothing of it is bought', async () => {
    await list();
    const jobId = clubOrder()?.body.jobIds[0] ?? '';
    await act(async () => {
      screenStore().actions.edit('No recipe to press by', [
        {
          do: 'change',
          kind: 'job',
          id: jobId,
          to: (now) => ({
            ...now,
            lines: now.lines.map((line) => ({
              ...line,
              placements: line.placements.map((placement) => ({ ...placement, pressId: 'gone' })),
            })),
          }),
        },
      ]);
      await new Promise((resolve) => setTimeout(resolve, 0));
    });
    expect(await screen.findByText(/^Something stops .*nothing of it is in this list/)).toBeVisible();
    expect(screen.getByText('Nothing is needed yet.')).toBeVisible();
  });

  it('refuses to buy fewer than none, and keeps what is typed to be mended', async () => {
    await list();
    const field = await screen.findByRole('textbox', { name: /^To buy of .*, S$/ });
    await userEvent.clear(field);
    await userEvent.type(field, '-4');
    await userEvent.tab();
    expect(field).toHaveAttribute('aria-invalid', 'true');
    expect(field).toHaveValue('-4');
    expect(screen.getByText(/-4 is too small: the least here is 0/)).toBeVisible();
    expect(listNow().held).toEqual([]);
  });

  it('says that a supplier it chose is gone, and buys where it costs least', async () => {
    await list();
    await act(async () => {
      screenStore().actions.edit('Chosen', [
        {
          do: 'change',
          kind: 'buyingList',
          id: 'club-list',
          to: (now) => ({
            ...now,
            chosen: [
              {
                item: { kind: 'blank', blankId: 'white-shirt', size: 'S' },
                supplierId: 'mill',
                offerId: 'S',
              },
            ],
          }),
        },
      ]);
      screenStore().actions.edit('Remove', [{ do: 'delete', kind: 'supplier', id: 'mill' }]);
      await new Promise((resolve) => setTimeout(resolve, 0));
    });
    expect(
      await screen.findByText(
        /The offer you chose for White shirt.*, S from a supplier that is not here any more/,
      ),
    ).toBeVisible();
    expect(await screen.findByRole('heading', { name: 'From whoever has it' })).toBeVisible();
    // What was chosen stays, should the supplier come back.
    expect(listNow().chosen).toHaveLength(1);
  });

  it('is not offered for a run that is closed, and one made for it says that it was', async () => {
    await enter(<BuyingListsScreen />);
    const [jobId = ''] = clubOrder()?.body.jobIds ?? [];
    const orderId = clubOrder()?.id ?? null;
    const run = runSchema.parse({ name: 'Monday', works: [{ jobId, orderId }] });
    const step = (what: 'begun' | 'closed') =>
      ({
        kind: 'runStep',
        body: {
          ...{ runId: 'monday', standardId: null, day: TEST_DAY },
          step: what === 'closed' ? { what, note: '' } : { what },
        },
      }) as const;
    await act(async () => {
      const list = buyingListSchema.parse({ name: 'For Monday', works: [{ jobId, orderId }] });
      const { actions } = screenStore();
      actions.edit('Run', [{ do: 'add', kind: 'run', id: 'monday', body: run }]);
      actions.edit('List', [
        { do: 'add', kind: 'buyingList', id: 'club-list', body: { ...list, works: [] } },
      ]);
    });
    await userEvent.click(screen.getByRole('button', { name: 'New list' }));
    expect(screen.getByRole('checkbox', { name: 'Monday, a run' })).toBeInTheDocument();
    await act(async () => void screenStore().actions.note('Begin', [step('begun')]));
    expect(screen.queryByRole('checkbox', { name: 'Monday, a run' })).toBeNull();
    await act(async () => void screenStore().actions.note('Close', [step('closed')]));
    expect(screen.queryByRole('checkbox', { name: 'Monday, a run' })).toBeNull();
    expect(screen.queryByRole('checkbox', { name: /not accepted yet/ })).toBeNull();
    cleanup();
    await enter(<BuyingListScreen listId="club-list" />);
    await act(async () => {
      screenStore().actions.edit('Works', [
        {
          do: 'change',
          kind: 'buyingList',
          id: 'club-list',
          to: (now) => ({ ...now, works: [{ jobId, orderId }] }),
        },
      ]);
      await new Promise((resolve) => setTimeout(resolve, 0));
    });
    expect(
      await screen.findByText(/is laid out or pressed already: nothing of it is in this list/),
    ).toBeVisible();
    expect(screen.queryByText(/^Buy \d/)).toBeNull();
  });

  it('names what the rates use up and it does not hold, and holds it once it is set up', async () => {
    await list();
    await userEvent.click(
      await screen.findByText(
        'Not on this list: Tape or sleeve 79; Protective paper 79; Bag and size sticker 37; Carton, tape and note 1',
      ),
    );
    const missing = await screen.findByRole('list', { name: 'Not on this list' });
    // 78.88 presses at 0.03.
    expect(within(missing).getByText('79 lengths, 2.37 USD at your rate; no supplier set')).toBeVisible();
    expect(within(missing).getAllByRole('listitem')).toHaveLength(4);
    await userEvent.click(within(missing).getByRole('button', { name: 'Set up Tape or sleeve' }));
    expect(
      await screen.findByRole('textbox', { name: 'To buy of Tape or sleeve' }, { timeout: 3000 }),
    ).toHaveValue('79');
    expect(screen.getByRole('link', { name: 'What is used up' })).toHaveAttribute(
      'href',
      '/making/suppliers#consumables',
    );
    expect(
      within(screen.getByRole('list', { name: 'Not on this list' })).getAllByRole('listitem'),
    ).toHaveLength(3);
  });

  it('keeps what is to be added on its order through a reload', async () => {
    await list();
    const mill = await screen.findByRole('region', { name: 'Sample Mill' });
    await userEvent.click(within(mill).getByRole('button', { name: 'Order from Sample Mill' }));
    await userEvent.type(await screen.findByRole('textbox', { name: 'To add on the order' }), 'Ring twice');
    await screenStore().flush();
    cleanup();
    leaveScreens();
    await enter(<BuyingListScreen listId="club-list" />);
    expect(
      await screen.findByRole('textbox', { name: 'To add on the order' }, { timeout: 3000 }),
    ).toHaveValue('Ring twice');
  });
});
