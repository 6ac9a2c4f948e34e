// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { PriceListScreen } from '@/app/_priceLists/PriceListScreen';
import { bodyOf, clearScreens, enter, screenStore } from './screens';

const asked = vi.hoisted(() => vi.fn<(key: string) => void>());
vi.mock('next/navigation', () => ({ useRouter: () => ({ push: () => undefined }) }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});
/* The worker is left out: what is asked of it counts, and the answer is that it gave none. */
vi.mock('@/app/_studies/shareStudyWorker', () => ({
  shareStudyWorker: () => ({
    worker: {
      ask: (key: string, _question: unknown, listener: (answered: unknown) => void) => {
        asked(key);
        queueMicrotask(() => act(() => listener({ kind: 'answered', isLast: true, answer: null })));
      },
      leave: () => undefined,
      stop: () => undefined,
    },
    giveBack: () => undefined,
  }),
}));

beforeEach(() => {
  vi.stubGlobal('Worker', class {});
  asked.mockClear();
});
afterEach(() => {
  cleanup();
  clearScreens();
  vi.unstubAllGlobals();
});

const edit = (...edits: Parameters<ReturnType<typeof screenStore>['actions']['edit']>[1]) =>
  act(async () => {
    screenStore().actions.edit('Edit', edits);
    await screenStore().flush();
  });

/** The room of a list with an item of the club’s shirts and one of the mugs. */
async function listOfTwo(): Promise<void> {
  await screenStore().open();
  const [item] = bodyOf('priceList', 'club-prices').items;
  if (item === undefined) throw new Error('the example has an item');
  const lineId = bodyOf('job', 'fair-mugs').lines[0]?.id ?? '';
  const mugs = { ...item, id: 'mugs', jobId: 'fair-mugs', lineId };
  await edit({
    do: 'change',
    kind: 'priceList',
    id: 'club-prices',
    to: (body) => ({ ...body, items: [item, mugs] }),
  });
  await enter(<PriceListScreen listId="club-prices" />);
  await screen.findAllByText(/it gave no answer/i);
  expect(asked).toHaveBeenCalledTimes(2);
  asked.mockClear();
}

describe('the items of a price list', () => {
  it('are not asked for again when the list is renamed', async () => {
    await listOfTwo();
    await edit({
      do: 'change',
      kind: 'priceList',
      id: 'club-prices',
      to: (body) => ({ ...body, name: 'Spring' }),
    });
    expect(bodyOf('priceList', 'club-prices').name).toBe('Spring');
    expect(asked).not.toHaveBeenCalled();
  });

  it('are asked for again one by one when their own job changes', async () => {
    await listOfTwo();
    await edit({ do: 'change', kind: 'job', id: 'fair-mugs', to: (body) => ({ ...body, name: 'Mugs' }) });
    expect(asked).toHaveBeenCalledTimes(1);
    expect(asked.mock.lastCall?.[0]).toMatch(/ mugs$/);
  });

  it('are all asked for again when the workshop changes', async () => {
    await listOfTwo();
    await edit({
      do: 'change',
      kind: 'workshop',
      id: 'workshop',
      to: (body) => ({ ...body, name: 'Ink Yard' }),
    });
    expect(asked).toHaveBeenCalledTimes(2);
  });
});
