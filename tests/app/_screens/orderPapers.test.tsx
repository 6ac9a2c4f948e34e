// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, fireEvent, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { useBench } from '@/app/_orderBook/useBench';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import { OrderPapers } from '@/app/_orderPapers/OrderPapers';
import type { PaperQuestion, PaperReply } from '@/app/_papers/messages';
import type { StudyRequest } from '@/app/_studies/studies';
import type { PaperTab } from '@/app/_words/orders/papers/paperTabWords';
import { newJob } from '@/lib/drafts/newJob';
import { CLUB_ENQUIRY_ID as ORDER } from '@/lib/examples/clubEnquiry';
import { lettersMissing } from '@/lib/papers/lettersMissing';
import { sha256OfBytes } from '@/lib/stored/sha256';
import { orderSchema } from '@/shared/schemas/order';
import { TEST_DAY, TEST_YEAR } from '@/tests/tools/clock/testDay';
import { shelf } from './orderShelf';
import { bodyOf, clearScreens, enter, screenStore } from './screens';

vi.mock('next/navigation', () => ({ useRouter: () => ({ push: () => undefined }) }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});
/* The sums are the real ones, without a thread of their own. */
vi.mock('@/app/_studies/shareStudyWorker', async () => {
  const { orderStudies, studies } = await import('@/app/_studies/studies');
  const { grid } = await import('@/tests/fixtures/costed');
  const answerTo = (request: StudyRequest): unknown => {
    if (request.of !== 'order' && request.of !== 'job') throw new Error('only orders are asked for here');
    if (request.of === 'job') return request.name === 'bench' ? studies.bench(request.input, grid) : null;
    switch (request.name) {
      case 'quote':
        return orderStudies.quote(request.asked, grid);
      case 'offers':
        return studied.withOffers ? orderStudies.offers(request.asked, grid) : [];
      default:
        return orderStudies[request.name](request.asked, grid, request.question as never);
    }
  };
  return {
    shareStudyWorker: () => ({
      worker: {
        ask: (_key: string, request: StudyRequest, listener: (answered: unknown) => void) => {
          const answer = () =>
            act(() => listener({ kind: 'answered', isLast: true, answer: answerTo(request) }));
          if (request.name === 'bench' && studied.held !== null) studied.held.push(answer);
          else queueMicrotask(answer);
        },
        leave: () => undefined,
        stop: () => undefined,
      },
      giveBack: () => undefined,
    }),
  };
});
/* Offers cost a second each; only where a test asks for them. */
const studied = vi.hoisted(() => ({ withOffers: false, held: null as (() => void)[] | null }));
/* What is asked of the papers' worker, and what it answers. */
const papers = vi.hoisted(() => ({
  asked: [] as PaperQuestion[],
  answer: null as PaperReply | null,
}));
vi.mock('@/app/_papers/writePaper', () => ({
  writePaper: (question: PaperQuestion, onNews: (news: PaperReply) => void) => {
    papers.asked.push(question);
    if (question.kind !== 'paper') throw new Error('no paper of an order');
    const file = new Blob([`%PDF ${JSON.stringify(question.source)}`]);
    const missing = lettersMissing(question.source, question.words);
    queueMicrotask(() =>
      act(() => onNews(papers.answer ?? { kind: 'written', file, pages: 1, lost: [], missing })),
    );
    return () => undefined;
  },
}));
const saved = vi.hoisted(() => vi.fn<(name: string, content: Blob) => void>());
vi.mock('@/app/_files/saveBlob', () => ({ saveBlob: saved, fileName: (name: string) => name }));

beforeEach(() => {
  vi.stubGlobal('Worker', class {});
  papers.asked = [];
  papers.answer = null;
  studied.withOffers = false;
  studied.held = null;
  saved.mockClear();
});
afterEach(() => {
  cleanup();
  clearScreens();
  vi.unstubAllGlobals();
});

const went = vi.fn<(place: string) => void>();
function Papers({ workspace }: { readonly workspace: ReadyWorkspace }) {
  const book = useOrderBook(workspace);
  const [tab, setTab] = useState<PaperTab | null>(null);
  const bench = useBench(workspace, book);
  return (
    <>
      <h1>Order</h1>
      <OrderPapers {...{ workspace, book, bench }} orderId={ORDER} tab={tab} onTab={setTab} onRoom={went} />
    </>
  );
}

const open = async () => {
  await screenStore().open();
  await numbered();
  await enter(<WithWorkspace>{(workspace) => <Papers workspace={workspace} />}</WithWorkspace>);
};
const numbered = async () => {
  const number = { year: TEST_YEAR, count: 1, letter: 'A' };
  screenStore().actions.note('Enquiry', [
    { kind: 'orderEvent', body: { orderId: ORDER, day: TEST_DAY, step: { what: 'enquired', number } } },
  ]);
  await screenStore().flush();
};
const changeOrder = (change: object) =>
  act(async () => {
    screenStore().actions.edit('Edit', [
      {
        do: 'change',
        kind: 'order',
        id: ORDER,
        to: (order) => orderSchema.parse({ ...order, ...change }),
      },
    ]);
    await screenStore().flush();
  });
const press = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }));
/** The file is made by then. */
const issueVersion = async (version: number) => {
  const button = await screen.findByRole('button', { name: `Issue quote, version ${version}` });
  await waitFor(() => expect(button).not.toHaveAttribute('aria-disabled'));
  await userEvent.click(button);
  await screen.findByText(/It is kept with its file/);
};
const quotes = () => screenStore().getState().papers.quote;

describe('the quote of an order', () => {
  it('is wholly there where it was asked for; a phone shows its upper part before', async () => {
    await open();
    const whole = await screen.findByRole('button', { name: 'Show the whole paper' });
    const room = () => screen.getByRole('article', { name: /^Quote/ }).parentElement;
    expect(whole).toHaveAttribute('aria-expanded', 'false');
    expect(room()?.className).toMatch(/upper/);
    await userEvent.click(whole);
    expect(whole).toHaveAttribute('aria-expanded', 'true');
    expect(room()?.className).not.toMatch(/upper/);
  });

  it('says first what it comes to, with deposit and balance', async () => {
    await open();
    // By hand: 711.50 and 7 % tax, half of it now, half a cent up.
    expect(await screen.findByText('761.31 USD')).toBeVisible();
    expect(screen.getByText(/, deposit 380\.66, balance 380\.65/)).toBeVisible();
    const sheet = screen.getByRole('article', { name: /^Quote/ });
    expect(within(sheet).getByText('711.50')).toBeVisible();
    expect(within(sheet).getByText('49.81')).toBeVisible();
  });

  it('cautions where the jobs hold other than was asked for, and may go out all the same', async () => {
    await open();
    await screen.findByText('761.31 USD');
    expect(screen.queryByText(/asked for/)).toBeNull();
    await changeOrder({ askedPieces: 50 });
    expect(await screen.findByText('50 were asked for, 37 are in the job.')).toBeVisible();
    await issueVersion(1);
    expect(quotes()).toHaveLength(1);
  });

  it('cautions where an accepted order is not on the bench, for a day told now may need its hours', async () => {
    await screenStore().open();
    shelf.add('kayak', { name: 'Kayak Club bags', jobIds: ['gone'] });
    shelf.enquired('kayak', 7);
    await shelf.accepted('kayak');
    await open();
    expect(
      await screen.findByText('Accepted, but not all of its work is counted: Kayak Club bags.'),
    ).toBeVisible();
  });

  it('is issued with its file, and the order is quoted by the same step', async () => {
    await open();
    await screen.findByText('761.31 USD');
    await issueVersion(1);
    const [quote] = quotes();
    expect(quote?.number.count).toBe(1);
    const kept = await screenStore().actions.readFile(quote?.file?.sha256 ?? '');
    const bytes = new Uint8Array((await kept?.content.arrayBuffer()) ?? new ArrayBuffer(0));
    expect(sha256OfBytes(bytes)).toBe(quote?.file?.sha256);
    const steps = screenStore()
      .getState()
      .entries.orderEvent.filter(({ body }) => body.orderId === ORDER)
      .map(({ body }) => body.step);
    expect(steps).toContainEqual({ what: 'quoted', paperId: quote?.id });
    await act(() => screenStore().actions.undo());
    expect(quotes()[0]?.withdrawn).toBe(true);
    expect(
      screenStore()
        .getState()
        .entries.orderEvent.map(({ body }) => body.step.what),
    ).not.toContain('quoted');
  });

  it('waits until the work of all orders is known, on which its days rest', async () => {
    studied.held = [];
    await open();
    await screen.findByText('761.31 USD');
    const button = await screen.findByRole('button', { name: 'Issue quote, version 1' });
    expect(button).toHaveAccessibleDescription('A newer one is being made.');
    expect(studied.held.length).toBeGreaterThan(0);
    for (const answer of studied.held) answer();
    await waitFor(() => expect(button).not.toHaveAttribute('aria-disabled'));
  });

  it('never sends its owner’s side to be written', async () => {
    await open();
    await screen.findByText('761.31 USD');
    await issueVersion(1);
    expect(quotes()[0]?.body.owner.fullCost).toBeGreaterThan(0);
    for (const question of papers.asked) expect(JSON.stringify(question)).not.toContain('"owner"');
    expect(screen.getByText('For you alone, never printed')).toBeVisible();
  });

  it('tells a further version that nothing has changed, and whether the last still holds', async () => {
    await open();
    await screen.findByText('761.31 USD');
    await issueVersion(1);
    expect(await screen.findByText(/Version 1 says just this/)).toBeVisible();
    expect(await screen.findByText(/^It holds: margin/)).toBeVisible();
    await changeOrder({ discount: { kind: 'share', share: 0.1, why: 'club' } });
    await waitFor(() => expect(screen.queryByText(/Version 1 says just this/)).toBeNull());
    expect(screen.getByRole('button', { name: 'Issue quote, version 2' })).toBeVisible();
  });

  it('is withdrawn with a reason and keeps its number', async () => {
    await open();
    await screen.findByText('761.31 USD');
    await issueVersion(1);
    await press('Withdraw Quote, version 1');
    await userEvent.selectOptions(screen.getByLabelText('Why Quote, version 1 is withdrawn'), 'otherWish');
    await press('Withdraw it');
    expect(await screen.findByText(/The customer wants something else/)).toBeVisible();
    expect(quotes()[0]?.withdrawn).toBe(true);
    expect(screen.getByRole('button', { name: 'Issue quote, version 2' })).toBeVisible();
  });
});

describe('what stands in the way of a quote', () => {
  it('is told where the order has no number that it could bear', async () => {
    await screenStore().open();
    await enter(<WithWorkspace>{(workspace) => <Papers workspace={workspace} />}</WithWorkspace>);
    expect(await screen.findByText(/A quote bears the number of its order/)).toBeVisible();
    await press(/^Issue quote/);
    expect(quotes()).toEqual([]);
    await act(numbered);
    await waitFor(() => expect(screen.queryByText(/A quote bears the number/)).toBeNull());
    await issueVersion(1);
    expect(quotes()[0]?.body.order?.count).toBe(1);
  });

  it('is told where nobody is named as the customer', async () => {
    await open();
    await changeOrder({ customerId: null });
    expect(await screen.findByText(/Nobody is named as the customer/)).toBeVisible();
    await press('Choose the customer');
    expect(went).toHaveBeenLastCalledWith('order-customer');
    await press(/^Issue quote/);
    expect(quotes()).toEqual([]);
  });

  it('leads to the price of a line whose list is not here', async () => {
    await open();
    await changeOrder({
      lines: [
        { jobId: 'club-order', lineId: 'shirts', price: { from: 'list', paperId: 'gone', itemId: 'x' } },
      ],
    });
    await screen.findByText(/takes its price from is not here/);
    await press('Choose its price');
    const price = await screen.findByLabelText(/^Price of /);
    await waitFor(() => expect(price).toHaveFocus());
    await userEvent.selectOptions(price, 'job');
    expect(await screen.findByText('761.31 USD')).toBeVisible();
  });

  it('is a job of which nobody has chosen anything, until somebody says that it is right so', async () => {
    await open();
    const { workshop } = screenStore().getState().kinds;
    const blank = { id: 'white-shirt', body: bodyOf('blank', 'white-shirt') };
    const { job, artwork } = newJob({
      ...{ name: 'Caps', day: TEST_DAY, artworkId: 'first', blank },
      workshop: Object.values(workshop.bodies)[0] ?? bodyOf('workshop', 'workshop'),
    });
    await act(async () => {
      screenStore().actions.edit('Begin', [
        { do: 'add', kind: 'artwork', id: 'first', body: artwork },
        {
          do: 'add',
          kind: 'job',
          id: 'caps',
          body: { ...job, freightIn: bodyOf('job', 'club-order').freightIn },
        },
      ]);
    });
    await changeOrder({ jobIds: ['club-order', 'caps'] });
    expect(
      await screen.findByText(/^The job “Caps” is as it began: 12 × .*, printed with “First picture”\./),
    ).toBeVisible();
    await press(/^Issue quote/);
    expect(quotes()).toEqual([]);
    expect(screen.getByRole('link', { name: 'Go to the job' })).toHaveAttribute('href', '/jobs/caps');
    await press('It is right so');
    expect(bodyOf('order', ORDER).lines).toContainEqual({
      ...{ jobId: 'caps', lineId: 'line-1', price: { from: 'job' }, names: [], rightAsBegun: true },
    });
    await waitFor(() => expect(screen.queryByText(/is as it began/)).toBeNull());
  });

  it('is told where no piece is ordered', async () => {
    await open();
    await act(async () => {
      screenStore().actions.edit('Edit', [
        {
          do: 'change',
          kind: 'job',
          id: 'club-order',
          to: (job) => ({ ...job, lines: job.lines.map((line) => ({ ...line, quantities: [] })) }),
        },
      ]);
      await screenStore().flush();
    });
    const found = await screen.findAllByRole('listitem');
    expect(found.map((item) => item.textContent).join(' ')).toMatch(/Nothing is ordered/);
    await press('Go to the jobs');
    expect(went).toHaveBeenLastCalledWith('order-jobs');
    await changeOrder({ jobIds: [] });
    await userEvent.click(await screen.findByRole('button', { name: 'Add a job' }));
    expect(went).toHaveBeenLastCalledWith('order-jobs');
  });

  it('leads to the job that has a stop', async () => {
    await open();
    await act(async () => {
      screenStore().actions.edit('Edit', [
        { do: 'change', kind: 'job', id: 'club-order', to: (job) => ({ ...job, printerId: 'gone' }) },
      ]);
      await screenStore().flush();
    });
    expect(await screen.findByText(/has a stop, so it has no price/)).toBeVisible();
    expect(screen.getByRole('link', { name: 'Go to the job' })).toHaveAttribute('href', '/jobs/club-order');
  });

  it('leads into the settings, to the discount that is more than it is taken from', async () => {
    await open();
    await changeOrder({ discount: { kind: 'amount', amount: 5000, why: '' } });
    await screen.findByText(/The discount of 5,000\.00 USD is more than/);
    await press('Go to the discount');
    await waitFor(() => expect(screen.getByLabelText('Discount')).toHaveFocus());
  });
});

describe('the settings of a quote', () => {
  const openSettings = async () => {
    await open();
    await screen.findByText('761.31 USD');
    await userEvent.click(screen.getByText('What the quote says'));
  };

  it('take a deposit of at most the whole, and say so', async () => {
    await openSettings();
    const deposit = screen.getByLabelText('Deposit');
    await userEvent.type(deposit, '150');
    expect(bodyOf('order', ORDER).depositShare ?? 0).toBeLessThanOrEqual(1);
    expect(deposit).toHaveAttribute('aria-invalid', 'true');
    await userEvent.clear(deposit);
    await userEvent.type(deposit, '100');
    expect(await screen.findByText(/deposit 761\.31, balance 0\.00/)).toBeVisible();
  });

  it.each([
    ['Deposit', '150', 'Until then the workshop’s holds: 50 %.'],
    ['Valid for', 'soon', 'Until then the workshop’s holds: 14 days.'],
    ['Rounds of changes included', 'many', 'Until then the workshop’s holds: 2 rounds.'],
    ['Lead time', 'soon', 'Until then it is as the bench is free.'],
  ])('say what holds in place of %s while it is no number', async (label, typed, holds) => {
    await openSettings();
    fireEvent.change(screen.getByLabelText(label), { target: { value: typed } });
    expect(screen.getByLabelText(label)).toHaveAccessibleDescription(new RegExp(`${holds}$`));
  });

  it('ask why it goes out under cost only where it does, and keep the answer in sight', async () => {
    const why = () => screen.queryByLabelText('Why it goes out under cost');
    await openSettings();
    expect(why()).toBeNull();
    // 711.50 asked and 411.79 the full cost, without tax.
    await changeOrder({ discount: { kind: 'amount', amount: 400, why: '' }, alternatives: [] });
    await press('Write down why');
    await waitFor(() => expect(why()).toHaveFocus());
    await userEvent.type(why() ?? document.body, 'A');
    await userEvent.click(await screen.findByText('For you alone, never printed'));
    expect(await screen.findByText('Offered under cost: A')).toBeInTheDocument();
    await changeOrder({ discount: null });
    await waitFor(() => expect(screen.queryByText('Offered under cost: A')).toBeNull());
    expect(why()).toHaveValue('A');
    await userEvent.clear(why() ?? document.body);
    expect(why()).toHaveFocus();
  });

  it('offer what the sums find worth offering, two of them at most', async () => {
    studied.withOffers = true;
    await openSettings();
    expect(screen.getByText('Choose one')).toBeVisible();
    await press(/^Take off .* without /);
    await press(/^Take off 40 of /);
    await waitFor(() => expect(bodyOf('order', ORDER).alternatives).toEqual([]));
    await waitFor(() => expect(screen.queryByText('Choose one')).toBeNull());
    const [offer] = await screen.findAllByRole('button', { name: /^Offer .* without / });
    await userEvent.click(offer ?? document.body);
    await waitFor(() => expect(bodyOf('order', ORDER).alternatives).toHaveLength(1));
    expect(await screen.findByText('Choose one')).toBeVisible();
  });

  it('keep what another tab sets beside', async () => {
    await openSettings();
    await changeOrder({ agreed: 'fetched on Friday' });
    await userEvent.type(screen.getByLabelText('Valid for'), '30');
    await act(() => screenStore().flush());
    expect(bodyOf('order', ORDER)).toMatchObject({ agreed: 'fetched on Friday', validDays: 30 });
  });
});

describe('the file of a paper', () => {
  it('is made before it is asked for, and issued as it was made', async () => {
    await open();
    await screen.findByText('761.31 USD');
    await waitFor(() => expect(papers.asked).toHaveLength(1));
    await issueVersion(1);
    expect(papers.asked).toHaveLength(1);
  });

  it('names letters that no type has before it goes out', async () => {
    await changeNothingYet();
    await changeOrder({ name: 'Shirts for صقر' });
    expect(
      await screen.findByText(/These letters are drawn as a picture of this device’s type/, undefined),
    ).toBeVisible();
  });

  it('is told where it cannot be written, and tried again', async () => {
    papers.answer = { kind: 'failed', why: 'no memory' };
    await open();
    await screen.findByText('761.31 USD');
    expect(await screen.findByText(/could not be written: no memory/)).toBeVisible();
    await press('Issue quote, version 1');
    expect(await screen.findByText(/It is not issued, and no number is used/)).toBeVisible();
    expect(quotes()).toEqual([]);
    papers.answer = null;
    await press('Try again');
    await waitFor(() => expect(screen.queryByText(/could not be written: no memory/)).toBeNull());
    await issueVersion(1);
  });

  it('tells pictures that it cannot show', async () => {
    papers.answer = { kind: 'written', file: new Blob(['%PDF']), pages: 1, lost: ['a', 'b'], missing: [] };
    await open();
    await screen.findByText('761.31 USD');
    expect(await screen.findByText(/2 pictures cannot be shown on it/)).toBeVisible();
  });

  it('is sent in the tap itself where the browser can, and saved where it refuses', async () => {
    const share = vi.fn<(data: { readonly files: readonly File[] }) => Promise<void>>();
    vi.stubGlobal('navigator', Object.assign(navigator, { canShare: () => true, share }));
    await open();
    await screen.findByText('761.31 USD');
    await issueVersion(1);
    const send = await screen.findByRole('button', { name: 'Send Quote, version 1' });
    share.mockImplementation(() => new Promise(() => undefined));
    fireEvent.click(send);
    // In the same turn, while the browser still takes it for an answer to the tap.
    expect(share).toHaveBeenCalledOnce();
    expect(share.mock.calls[0]?.[0].files[0]?.type).toBe('application/pdf');
    share.mockRejectedValue(new DOMException('no', 'NotAllowedError'));
    fireEvent.click(send);
    expect(await screen.findByText(/so it was saved/)).toBeVisible();
    expect(saved).toHaveBeenCalledOnce();
    Reflect.deleteProperty(navigator, 'canShare');
    Reflect.deleteProperty(navigator, 'share');
  });

  it('is saved as it went out', async () => {
    await open();
    await screen.findByText('761.31 USD');
    await issueVersion(1);
    const save = await screen.findByRole('button', { name: 'Save Quote, version 1' });
    await waitFor(() => expect(save).not.toHaveAttribute('aria-disabled'));
    await userEvent.click(save);
    expect(saved).toHaveBeenCalledOnce();
    expect(saved.mock.calls[0]?.[0]).toMatch(/^Quote .*\.pdf$/);
  });
});

const changeNothingYet = async () => {
  await open();
  await screen.findByText('761.31 USD');
};
