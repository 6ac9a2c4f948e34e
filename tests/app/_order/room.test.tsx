// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { OrderScreen } from '@/app/_order/OrderScreen';
import { kinds } from '@/lib/kinds/kinds';
import {
  bodyOf,
  clearScreens,
  damage,
  enter,
  idsOf,
  leaveScreens,
  screenStore,
  undo,
} from '@/tests/app/_screens/screens';
import { clubQuote } from '@/tests/fixtures/orderPapers';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import {
  accepted,
  approve,
  change,
  dayIn,
  enterOrder,
  ORDER,
  order,
  pay,
  quote,
  said,
  section,
  tell,
} from './inOrder';

const went = vi.hoisted(() => vi.fn<(address: string) => void>());
vi.mock('next/navigation', () => ({
  usePathname: () => '/orders/club-enquiry',
  useRouter: () => ({ push: went }),
}));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('@/tests/app/_screens/screens');
  return { appDocuments };
});
vi.mock('@/app/_studies/useStudies', () => ({ useStudies: () => new Map() }));

afterEach(() => {
  cleanup();
  clearScreens();
});

/** Unfolds a part that is not needed at first. */
async function openPart(name: string) {
  await userEvent.click(section(name).getByRole('button', { name: new RegExp(`^${name}`) }));
  return section(name);
}

const track = () =>
  within(screen.getByRole('list', { name: 'How far it is' }))
    .getAllByRole('listitem')
    .map((stage) => ({
      name: stage.textContent ?? '',
      isPresent: stage.getAttribute('aria-current') === 'step',
    }));

describe('the head of an order', () => {
  it('says what it is called, how many for when, and whom it is for', async () => {
    await enterOrder();
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Ramblers Club shirts');
    expect(screen.getByText(/^order without a number, 37 shirts, wanted /)).toBeVisible();
    expect(screen.getByRole('link', { name: 'Exampleton Ramblers Club' })).toHaveAttribute(
      'href',
      '/customers/ramblers-club',
    );
  });

  it('tells the beginning of what was asked, up to a whole word', async () => {
    await enterOrder();
    expect(
      screen.getByText('37 shirts with our path on the back and the crest on the chest, for the day of…'),
    ).toBeVisible();
  });

  it('is renamed where it stands', async () => {
    await enterOrder();
    await userEvent.click(screen.getByRole('button', { name: 'Ramblers Club shirts' }));
    await userEvent.keyboard('Walkers{Enter}');
    expect(order().name).toBe('Walkers');
  });

  it('shows how far it is, with the present stage marked', async () => {
    await enterOrder();
    expect(track().filter(({ isPresent }) => isPresent)).toHaveLength(1);
    expect(track()[0]).toMatchObject({ name: expect.stringContaining('Enquiry'), isPresent: true });
    approve(false);
    await accepted();
    expect(track()[2]?.isPresent).toBe(true);
    // The quote asks for both five days from now.
    expect(track()[2]?.name).toContain(`by ${said(dayIn(5))}, in 5 days`);
  });
});

describe('what was asked', () => {
  const open = async () => {
    await enterOrder();
    await userEvent.click(screen.getByText('What was asked'));
  };

  it('takes another day, and says so where it is past', async () => {
    await open();
    const day = screen.getByLabelText('Wanted on');
    await userEvent.clear(day);
    await userEvent.type(day, dayIn(-24));
    expect(order().wantedOn).toBe(dayIn(-24));
    expect(screen.getByText('This day is past: nothing can be promised for it.')).toBeVisible();
  });

  it('keeps what they said as they said it, and tells what is too long', async () => {
    await open();
    const asked = screen.getByLabelText('What they asked for');
    await userEvent.clear(asked);
    await userEvent.paste('y'.repeat(2100));
    expect(screen.getByText('100 letters too long: 2000 fit here.')).toBeVisible();
    expect(asked).toHaveValue('y'.repeat(2100));
  });

  it('adds a new customer by name in one step', async () => {
    await open();
    await userEvent.selectOptions(screen.getByLabelText('Customer'), 'A new customer');
    const form = within(screen.getByRole('form', { name: 'A new customer' }));
    await userEvent.click(form.getByRole('button', { name: 'Add the customer' }));
    expect(idsOf('customer')).toHaveLength(1);
    await userEvent.type(form.getByLabelText('Name of the new customer'), 'Hill Runners{Enter}');
    expect(bodyOf('customer', order().customerId ?? '').name).toBe('Hill Runners');
    await undo();
    expect(order().customerId).toBe('ramblers-club');
    expect(idsOf('customer')).toHaveLength(1);
  });

  it('says how the goods get there', async () => {
    await open();
    await userEvent.selectOptions(screen.getByLabelText('How it gets to them'), 'It is sent');
    expect(order().delivery).toMatchObject({ way: 'sent' });
    expect(screen.getByLabelText('Where to')).toHaveDisplayValue('Club hut, 3 Sample Lane, Exampleton');
  });
});

describe('jobs of an order', () => {
  const jobs = () => section('Jobs');

  it('are told with their pieces and prices, and lead to their screens', async () => {
    await enterOrder();
    const links = jobs().getAllByRole('link');
    expect(links.map((link) => link.getAttribute('href'))).toEqual([
      '/jobs/club-order',
      '/making#order-club-enquiry',
    ]);
    expect(jobs().getByText(/^37 pieces, 19\.00 USD to 21\.50 USD each$/)).toBeVisible();
  });

  it('are told at the prices that were agreed on, where their own are made of two', async () => {
    await enterOrder();
    const [more] = clubQuote.alternatives;
    if (more === undefined) throw new Error('the quote offers nothing beside');
    const goods = clubQuote.goods.map((one) => ({ ...one, jobId: 'club-order' }));
    const lines = goods.map(({ jobId, lineId, sizes, start }) => ({
      ...{ jobId, lineId, start, without: [] },
      sizes: [...sizes, { size: 'L', quantity: 3, each: 1250, total: 3750 }],
    }));
    const priced = { lines, charges: clubQuote.charges, discount: null };
    const paperId = await quote({ goods, alternatives: [{ ...more, id: 'more', priced }] });
    tell({ what: 'accepted', paperId, alternativeId: 'more', by: 'Alex', how: 'message', proof: null });
    expect(jobs().getByText('37 pieces, agreed at 12.50 USD to 21.50 USD each')).toBeVisible();
  });

  it('begin anew with the customer and the day of the order, as one step', async () => {
    await enterOrder();
    await userEvent.click(jobs().getByRole('button', { name: 'Add a new job' }));
    const added = order().jobIds.at(-1) ?? '';
    // Nobody has chosen its blank, sizes or print yet, so it opens.
    expect(went).toHaveBeenLastCalledWith(`/jobs/${added}`);
    expect(bodyOf('job', added)).toMatchObject({
      customer: 'Exampleton Ramblers Club',
      wantedOn: order().wantedOn,
    });
    await undo();
    expect(order().jobIds).toEqual(['club-order']);
    expect(idsOf('job')).not.toContain(added);
  });

  const piecesOf = (jobId: string) =>
    bodyOf('job', jobId)
      .lines.flatMap(({ quantities }) => quantities)
      .reduce((sum, { quantity }) => sum + quantity, 0);

  it('begin with the pieces asked for, or with what other jobs leave of them', async () => {
    await enterOrder();
    change({ jobIds: [] });
    await userEvent.click(jobs().getByRole('button', { name: 'Add a new job' }));
    expect(piecesOf(order().jobIds[0] ?? '')).toBe(37);
    expect(jobs().queryByText(/asked for/)).toBeNull();
    change({ askedPieces: 57 });
    await userEvent.click(jobs().getByRole('button', { name: 'Add a new job' }));
    expect(piecesOf(order().jobIds[1] ?? '')).toBe(20);
  });

  it('that hold other than was asked for say so, and one job is made so by a button', async () => {
    await enterOrder();
    change({ askedPieces: 50 });
    expect(jobs().getByText('50 were asked for, 37 are in the job.')).toBeVisible();
    await userEvent.click(jobs().getByRole('button', { name: 'Make it 50 pieces' }));
    expect(piecesOf('club-order')).toBe(50);
    expect(jobs().queryByText(/asked for/)).toBeNull();
    await undo();
    expect(piecesOf('club-order')).toBe(37);
    change({ askedPieces: 60, jobIds: ['club-order', 'fair-mugs'] });
    expect(jobs().getByText(/^60 were asked for, \d+ are in the jobs\.$/)).toBeVisible();
    expect(jobs().queryByRole('button', { name: /^Make it/ })).toBeNull();
  });

  it('are not held against what was asked once a quote is out', async () => {
    await enterOrder();
    change({ askedPieces: 50 });
    await quote();
    expect(jobs().queryByText(/asked for/)).toBeNull();
  });

  it('may be one that is there and belongs to no order, and may be taken out again', async () => {
    await enterOrder();
    await userEvent.click(jobs().getByText('Add a job that is there'));
    const choice = jobs().getByLabelText('Job');
    expect(within(choice).queryByText(bodyOf('job', 'club-order').name)).toBeNull();
    await userEvent.selectOptions(choice, bodyOf('job', 'fair-mugs').name);
    await userEvent.click(jobs().getByRole('button', { name: 'Add it' }));
    expect(order().jobIds).toEqual(['club-order', 'fair-mugs']);
    await userEvent.click(
      jobs().getByRole('button', { name: `Take out ${bodyOf('job', 'fair-mugs').name}` }),
    );
    expect(order().jobIds).toEqual(['club-order']);
  });

  it('that are gone are told with what to do', async () => {
    await enterOrder();
    change({ jobIds: ['club-order', 'nobody'] });
    expect(jobs().getByText('A job that is not here')).toBeVisible();
    await userEvent.click(jobs().getByRole('button', { name: 'Take out A job that is not here' }));
    expect(order().jobIds).toEqual(['club-order']);
  });
});

describe('open items', () => {
  const items = () => section('Open items');

  it('are added with of whom and by when, ticked and removed', async () => {
    await enterOrder();
    await openPart('Open items');
    await userEvent.type(items().getByLabelText('What is missing'), 'Size list');
    await userEvent.selectOptions(items().getByLabelText('Of whom'), 'The supplier');
    await userEvent.type(items().getByLabelText('Done by'), dayIn(5));
    await userEvent.click(items().getByRole('button', { name: 'Add it' }));
    expect(order().openItems.at(-1)).toMatchObject({
      ...{ what: 'Size list', ofWhom: 'supplier', doneBy: dayIn(5), doneOn: null },
    });
    expect(items().getByText(`of the supplier, by ${said(dayIn(5))}, in 5 days`)).toBeVisible();
    await userEvent.click(items().getByLabelText('Size list'));
    expect(order().openItems.at(-1)?.doneOn).toBe(TEST_DAY);
    await userEvent.click(items().getByRole('button', { name: 'Remove Size list' }));
    expect(order().openItems).toHaveLength(1);
  });
});

describe('files of an order', () => {
  it('are kept with it, and one that is too large is told before it is read', async () => {
    await enterOrder();
    const files = await openPart('Files');
    const large = new File(['x'], 'film.mp4');
    Object.defineProperty(large, 'size', { value: 300_000_000 });
    await userEvent.upload(files.getByLabelText('File to keep'), [new File(['yes'], 'letter.pdf'), large]);
    expect(await files.findByText('letter.pdf')).toBeVisible();
    expect(await files.findByText(/“film\.mp4” has 300 MB; a file here may have 100 MB\./)).toBeVisible();
    expect(order().attachments).toMatchObject([{ fileName: 'letter.pdf', purpose: 'permission' }]);
  });

  it('come with a note on what of persons lies here', async () => {
    await enterOrder();
    await openPart('Files');
    expect(section('Files').getByText('This device keeps 1 address of the order.')).toBeVisible();
  });
});

describe('what happened', () => {
  const open = () => openPart('What happened');

  it('is told with its day, the device, and when it was noted later', async () => {
    await enterOrder();
    await accepted();
    pay(38066);
    tell({ what: 'held', note: 'printer away' }, dayIn(-2));
    const timeline = await open();
    const told = timeline.getAllByRole('listitem').map(({ textContent }) => textContent ?? '');
    expect(told[0]).toMatch(
      new RegExp(`^${said(dayIn(-2))}Put on hold printer awaynoted ${said(TEST_DAY)}, on device [A-Z]`),
    );
    expect(told[1]).toMatch(new RegExp(`^${said(TEST_DAY)}Money came 380\\.66 USD, transfer`));
    expect(told.some((one) => /Quote version 1[A-Z]? went out/.test(one))).toBe(true);
  });

  it('shows what passed a gate, and keeps what was taken back', async () => {
    await enterOrder();
    tell({ what: 'override', gate: 'deposit', reason: 'known club' });
    const timeline = await open();
    expect(timeline.getByText('Gone on without the deposit')).toBeVisible();
    await userEvent.click(timeline.getByRole('button', { name: /^Take back Gone on without the deposit/ }));
    expect(screenStore().getState().entries.orderEvent).toEqual([]);
    expect(timeline.getByText(/^taken back/)).toBeVisible();
  });
});

describe('an order that is not here', () => {
  it('is told, with the way back to the others', async () => {
    await enter(<OrderScreen orderId="nobody" />);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('This order is not here');
    expect(screen.getByRole('link', { name: 'To the orders' })).toHaveAttribute('href', '/orders');
  });

  it('comes back by undo where it was just removed', async () => {
    await enterOrder();
    screenStore().actions.edit('Remove', [{ do: 'delete', kind: 'order', id: ORDER }]);
    expect(await screen.findByText('This order is not here')).toBeVisible();
    await undo();
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Ramblers Club shirts');
  });

  it('is kept as it is where its record cannot be read', async () => {
    await enterOrder();
    const body = { name: 'Old order', jobIds: 'not a list' };
    const { version } = kinds.order;
    await damage({ id: 'broken', kind: 'order', version, revision: 1, updatedAt: 1, body });
    leaveScreens();
    cleanup();
    await enter(<OrderScreen orderId="broken" />);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('This order cannot be read');
    expect(await screen.findByRole('button', { name: 'Save it as a file' })).toBeVisible();
  });
});

it('names that were being taken in stand open after a reload', async () => {
  await enterOrder();
  const part = await openPart('Sizes and names');
  await userEvent.click(part.getByRole('button', { name: 'Paste or read names' }));
  await userEvent.type(part.getByLabelText('Names, as you got them'), 'Ana M');
  cleanup();
  leaveScreens();
  await enterOrder();
  expect(section('Sizes and names').getByLabelText('Names, as you got them')).toHaveValue('Ana M');
});
