import { describe, expect, it } from 'vitest';
import { memoryBackend } from '@/app/_backend/memoryBackend';
import { createDocumentStore } from '@/app/_store/createDocumentStore';
import type { DocumentStore } from '@/app/_store/documentStore';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { type DocumentBodies, kinds } from '@/lib/kinds/kinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import { type Order, orderSchema } from '@/shared/schemas/order';
import { clubQuote } from '@/tests/fixtures/orderPapers';

const ORDER = 'order-1';

/** A tab of the app that hears nothing of the others until it writes. */
async function tabOn(backend: ReturnType<typeof memoryBackend>, tab: string) {
  const store = createDocumentStore<DocumentBodies>({
    ...{ registry: kinds, paperKinds, entryKinds, tab, now: () => 1_000_000 },
    openBackend: async () => ({ state: 'open', backend }),
    openMessages: () => ({ tell: () => undefined, close: () => undefined }),
    watchPage: () => () => undefined,
  });
  await store.open();
  return store;
}
type Tab = DocumentStore<DocumentBodies>;
const change = (tab: Tab, to: (order: Order) => Order) =>
  tab.actions.edit('Edit', [{ do: 'change', kind: 'order', id: ORDER, to }]);
const orderIn = (tab: Tab) => tab.getState().kinds.order.bodies[ORDER];

async function twoTabs(): Promise<readonly [Tab, Tab]> {
  const backend = memoryBackend();
  const here = await tabOn(backend, 'here');
  here.actions.edit('Add', [
    { do: 'add', kind: 'order', id: ORDER, body: orderSchema.parse({ name: 'Club shirts' }) },
  ]);
  await here.flush();
  return [here, await tabOn(backend, 'there')];
}

const issue = (tab: Tab, onOvertaken?: () => void, made: () => Promise<void> = async () => undefined) =>
  tab.actions.issueMade(
    'Issue the quote',
    {
      kind: 'quote',
      about: { kind: 'order', id: ORDER },
      series: `quote ${ORDER}`,
      make: async (number) => {
        await made();
        const body = { ...clubQuote, alternatives: [], orderId: ORDER, number };
        return { body, file: { name: 'quote.pdf', content: new Uint8Array([number.count]) } };
      },
      notes: (paperId) => [
        {
          kind: 'orderEvent',
          body: { orderId: ORDER, day: '2026-11-27', step: { what: 'quoted', paperId } },
        },
      ],
    },
    onOvertaken,
  );
const steps = (tab: Tab) => tab.getState().entries.orderEvent.map(({ body }) => body.step);

describe('a quote edited in two tabs', () => {
  const charge = (id: string) => ({ id, kind: 'own' as const, what: id, amount: 5 });

  it('loses neither a charge of the one nor a term of the other', async () => {
    const [here, there] = await twoTabs();
    change(here, (order) => ({ ...order, charges: [charge('design')], depositShare: 0.3 }));
    change(there, (order) => ({ ...order, charges: [charge('delivery')], validDays: 30 }));
    await here.flush();
    await there.flush();
    const merged = orderIn(there);
    expect(merged?.charges.map(({ id }) => id).toSorted()).toEqual(['delivery', 'design']);
    expect(merged).toMatchObject({ depositShare: 0.3, validDays: 30 });
    expect(there.getState().overwritten).toEqual([]);
  });

  it('tells a field that both set, and undo brings the other back', async () => {
    const [here, there] = await twoTabs();
    change(here, (order) => ({ ...order, agreed: 'fetched on Friday' }));
    change(there, (order) => ({ ...order, agreed: 'brought on Monday' }));
    await here.flush();
    await there.flush();
    expect(there.getState().overwritten).toEqual([{ id: ORDER, kind: 'order', path: ['agreed'] }]);
    await there.actions.undo();
    expect(orderIn(there)?.agreed).toBe('fetched on Friday');
  });

  it('goes out under two numbers, the second made again for its own', async () => {
    const [here, there] = await twoTabs();
    let told = 0;
    // The other tab issues while this one still writes its file.
    const late = issue(
      there,
      () => {
        told += 1;
      },
      async () => {
        if (told === 0) await issue(here);
      },
    );
    const outcome = await late;
    expect(told).toBe(1);
    expect(outcome).toMatchObject({ state: 'issued', paper: { number: { count: 2 } } });
  });
});

describe('a quote that goes out', () => {
  it('is noted at its order in the same step, and undo takes both back', async () => {
    const [here] = await twoTabs();
    const outcome = await issue(here);
    const paperId = outcome.state === 'issued' ? outcome.paper.id : '';
    expect(steps(here)).toEqual([{ what: 'quoted', paperId }]);
    await here.actions.undo();
    expect(steps(here)).toEqual([]);
    expect(here.getState().papers.quote[0]?.withdrawn).toBe(true);
    await here.actions.redo();
    expect(steps(here)).toEqual([{ what: 'quoted', paperId }]);
  });

  it('does not go out where what is noted with it cannot be read', async () => {
    const [here] = await twoTabs();
    const outcome = here.actions.issueMade('Issue', {
      kind: 'quote',
      about: { kind: 'order', id: ORDER },
      series: `quote ${ORDER}`,
      make: async (number) => ({
        body: { ...clubQuote, alternatives: [], orderId: ORDER, number },
        file: { name: 'quote.pdf', content: new Uint8Array([1]) },
      }),
      notes: () => [{ kind: 'orderEvent', body: { orderId: ORDER } }],
    });
    await expect(outcome).rejects.toThrow('what is noted with a paper');
    expect(here.getState().papers.quote).toEqual([]);
  });

  it('says why it was withdrawn, in the entry that takes it back', async () => {
    const [here] = await twoTabs();
    const outcome = await issue(here);
    const paperId = outcome.state === 'issued' ? outcome.paper.id : '';
    here.actions.withdraw('Withdraw', paperId, 'otherWish');
    await here.flush();
    const back = here.actions.allEntries().find(({ kind }) => kind === 'takeBack');
    expect(back?.body).toMatchObject({ why: 'otherWish' });
  });
});
