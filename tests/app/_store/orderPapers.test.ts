import { describe, expect, it } from 'vitest';
import { memoryBackend } from '@/app/_backend/memoryBackend';
import { createDocumentStore } from '@/app/_store/createDocumentStore';
import type { DocumentStore } from '@/app/_store/documentStore';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { type DocumentBodies, kinds } from '@/lib/kinds/kinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import type { PaperNumber } from '@/shared/schemas/happened';
import { type Order, orderSchema } from '@/shared/schemas/order';
import { clubInvoice, clubQuote } from '@/tests/fixtures/orderPapers';

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
      body: (number) => ({ ...clubQuote, alternatives: [], orderId: ORDER, number }),
      file: async (number) => {
        await made();
        return { name: 'quote.pdf', content: new Uint8Array([number.count]) };
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
      body: (number) => ({ ...clubQuote, alternatives: [], orderId: ORDER, number }),
      file: async () => ({ name: 'quote.pdf', content: new Uint8Array([1]) }),
      notes: () => [{ kind: 'orderEvent', body: { orderId: ORDER } }],
    });
    await expect(outcome).rejects.toThrow('what is noted with a paper');
    expect(here.getState().papers.quote).toEqual([]);
  });

  it('takes back in the same step what the one before noted, and nothing that nobody wrote', async () => {
    const [here] = await twoTabs();
    await issue(here);
    const [first] = here.getState().entries.orderEvent;
    const correct = (entryId: string) =>
      here.actions.issue('Correct', {
        kind: 'quote',
        about: { kind: 'order', id: ORDER },
        series: `quote ${ORDER}`,
        body: (number) => ({ ...clubQuote, alternatives: [], orderId: ORDER, number }),
        file: () => ({ name: 'quote.pdf', content: new Uint8Array([2]) }),
        notes: () => [{ kind: 'takeBack', body: { entryId } }],
      });
    await expect(correct('nobody-9')).rejects.toThrow('what is noted with a paper');
    expect(steps(here)).toHaveLength(1);
    await correct(first?.id ?? '');
    expect(steps(here)).toEqual([]);
    await here.actions.undo();
    expect(steps(here)).toEqual([first?.body.step]);
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

describe('invoices of one year, numbered together', () => {
  const invoiceOf = (orderId: string, written: () => Promise<unknown>, paid = 0) =>
    ({
      kind: 'invoice',
      about: { kind: 'order', id: orderId },
      series: 'invoice 26',
      body: (number: PaperNumber) => ({ ...clubInvoice, orderId, number, paid }),
      file: async (number: PaperNumber) => {
        await written();
        return { name: 'invoice.pdf', content: new TextEncoder().encode(`${orderId} ${number.count}`) };
      },
    }) as const;
  /** Holds the writing of a file until it is let go. */
  const held = () => {
    let letGo = () => {};
    const until = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    return { written: () => until, letGo: () => letGo() };
  };
  const issued = (tab: Tab) =>
    tab.getState().papers.invoice.map(({ about, number }) => [about.id, number.count]);

  it('of two orders go out each for itself where the second is asked for while the first is written', async () => {
    const [here] = await twoTabs();
    const first = held();
    const outcomes = [
      here.actions.issueMade('Issue', invoiceOf(ORDER, first.written)),
      here.actions.issueMade(
        'Issue',
        invoiceOf('order-2', async () => undefined),
      ),
    ];
    first.letGo();
    expect(await Promise.all(outcomes)).toMatchObject([
      { state: 'issued', paper: { about: { id: ORDER }, number: { count: 1 } } },
      { state: 'issued', paper: { about: { id: 'order-2' }, number: { count: 2 } } },
    ]);
    expect(issued(here)).toEqual([
      [ORDER, 1],
      ['order-2', 2],
    ]);
  });

  it('of one order that says two things are two, and pressed twice the same is one', async () => {
    const [here] = await twoTabs();
    const first = held();
    const [one, again, other] = [
      here.actions.issueMade('Issue', invoiceOf(ORDER, first.written)),
      here.actions.issueMade(
        'Issue',
        invoiceOf(ORDER, async () => undefined),
      ),
      here.actions.issueMade(
        'Issue',
        invoiceOf(ORDER, async () => undefined, 38066),
      ),
    ];
    first.letGo();
    expect(await again).toEqual(await one);
    expect(await other).toMatchObject({ paper: { number: { count: 2 }, body: { paid: 38066 } } });
    expect(issued(here)).toEqual([
      [ORDER, 1],
      [ORDER, 2],
    ]);
  });

  it('leave no gap where the file of the first cannot be written', async () => {
    const [here] = await twoTabs();
    const first = here.actions.issueMade(
      'Issue',
      invoiceOf(ORDER, () => Promise.reject(new Error('no font'))),
    );
    const second = here.actions.issueMade(
      'Issue',
      invoiceOf('order-2', async () => undefined),
    );
    await expect(first).rejects.toThrow('no font');
    expect(await second).toMatchObject({ state: 'issued', paper: { number: { count: 1 } } });
    expect(issued(here)).toEqual([['order-2', 1]]);
  });

  it('of two orders at once are two as well where their file needs no writing', async () => {
    const [here] = await twoTabs();
    const ready = (orderId: string) => ({
      ...invoiceOf(orderId, async () => undefined),
      file: () => ({ name: 'invoice.pdf', content: new Uint8Array([1]) }),
    });
    const outcomes = await Promise.all(
      [ORDER, 'order-2'].map((orderId) => here.actions.issue('Issue', ready(orderId))),
    );
    expect(outcomes).toMatchObject([
      { paper: { number: { count: 1 } } },
      { paper: { number: { count: 2 } } },
    ]);
  });
});
