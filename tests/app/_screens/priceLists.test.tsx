// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { type ReactElement, useMemo } from 'react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { PriceListScreen } from '@/app/_priceLists/PriceListScreen';
import { PriceListsScreen } from '@/app/_priceLists/PriceListsScreen';
import { studies } from '@/app/_studies/studies';
import type { StudyAsk } from '@/app/_studies/useStudies';
import { kinds } from '@/lib/kinds/kinds';
import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';
import type { PriceList } from '@/shared/schemas/priceList';
import { bringBack } from '@/tests/app/_store/tabs';
import { grid } from '@/tests/fixtures/costed';
import { eventually } from '@/tests/tools/eventually';
import { bodyOf, clearScreens, damage, disk, enter, idsOf, leaveScreens, screenStore, undo } from './screens';

const push = vi.hoisted(() => vi.fn<(href: string) => void>());
vi.mock('next/navigation', () => ({ useRouter: () => ({ push }) }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});
/* Studies answer at once here, by the same functions that the worker runs. */
vi.mock('@/app/_studies/useStudies', () => ({
  useStudies: (name: 'freezeItem' | 'compareItem', asks: readonly StudyAsk<'freezeItem'>[]) =>
    useMemo(() => {
      const study = studies[name] as (...asked: readonly unknown[]) => unknown;
      return new Map(
        asks.map((ask) => [ask.key, { ask, answer: study(ask.input, grid, ask.question), failure: null }]),
      );
    }, [name, asks]),
}));

beforeEach(() => push.mockClear());
afterEach(() => {
  cleanup();
  clearScreens();
});

const LIST = 'club-prices';
const list = (id = LIST): PriceList => bodyOf('priceList', id);
const papers = () => screenStore().getState().papers.priceListVersion;
const inForce = () => papers().filter(({ withdrawn }) => !withdrawn);
/** The device has drawn its letter once it has issued something. */
const letter = () => screenStore().getState().device?.letter ?? '';
const part = (name: RegExp | string) => within(screen.getByRole('region', { name }));

/** The example's list as it is suggested, issued once. */
async function issued(): Promise<void> {
  await enter(<PriceListScreen listId={LIST} />);
  await issue();
}

async function issue(): Promise<void> {
  const before = papers().length;
  await userEvent.click(screen.getByRole('button', { name: /^Issue version/ }));
  await eventually(() => expect(papers()).toHaveLength(before + 1));
  await screen.findByRole('article', { name: /^Price list, version/ });
}

/** The club's shirts sold by breaks as they stand, under which more pieces cost less. */
const asListed = (job: Job): Job => ({
  ...job,
  lines: job.lines.map((line) => ({ ...line, selling: 'asListed', breaks: [1, 6, 12, 24, 48] })),
});

/** Leaves the page and comes again. */
async function reload(room: ReactElement): Promise<void> {
  await screenStore().flush();
  cleanup();
  leaveScreens();
  await enter(room);
}

const changeJob = (id: string, to: (job: Job) => Job) =>
  act(() => screenStore().actions.edit('Edit', [{ do: 'change', kind: 'job', id, to }]));

/** Sets what the shirt costs in L, as on the screen of blanks. */
async function shirtInL(value: number): Promise<void> {
  const to = (blank: Blank): Blank => ({
    ...blank,
    sizes: blank.sizes.map((size) =>
      size.name === 'L' && size.price !== null ? { ...size, price: { ...size.price, value } } : size,
    ),
  });
  await act(async () => {
    screenStore().actions.edit('Shirt', [{ do: 'change', kind: 'blank', id: 'white-shirt', to }]);
  });
}

describe('the room of price lists', () => {
  it('has one list of the example on a first visit, not issued yet', async () => {
    await enter(<PriceListsScreen />);
    expect(idsOf('priceList')).toEqual([LIST]);
    expect(screen.getByRole('listitem')).toHaveTextContent('not issued yet');
  });

  it('begins an empty list and opens it; removing it can be taken back', async () => {
    await enter(<PriceListsScreen />);
    await userEvent.click(screen.getByRole('button', { name: 'New price list' }));
    const id = push.mock.lastCall?.[0].replace('/price-lists/', '') ?? '';
    expect(list(id)).toMatchObject({ items: [], paper: 'letter' });
    await userEvent.click(screen.getByRole('button', { name: `Remove ${list(id).name}` }));
    expect(idsOf('priceList')).not.toContain(id);
    await userEvent.click(screen.getByRole('button', { name: 'Bring it back' }));
    expect(idsOf('priceList')).toContain(id);
  });

  it('shows a list that cannot be read with its reason, and keeps it', async () => {
    await screenStore().open();
    const { version } = kinds.priceList;
    const body = { name: 'Old list', versions: 'lost' };
    await damage({ id: 'broken', kind: 'priceList', version, revision: 1, updatedAt: 1, body });
    leaveScreens();
    await enter(<PriceListsScreen />);
    expect(await screen.findByText(/A price list “Old list” cannot be read\. It stays kept/)).toBeVisible();
    cleanup();
    await enter(<PriceListScreen listId="broken" />);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('This price list cannot be read');
    const { file } = await screenStore().actions.makeCopy('everything');
    expect(await screenStore().actions.lookAtCopy(file)).toMatchObject({
      plan: { copy: { unreadable: [{ raw: { id: 'broken', body } }] } },
    });
  });

  it('says calmly that a list is not here', async () => {
    await enter(<PriceListScreen listId="gone" />);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('This price list is not here');
  });
});

describe('a list that is drafted', () => {
  it('can be issued as it is suggested, and says so', async () => {
    await enter(<PriceListScreen listId={LIST} />);
    expect(screen.getByText('Nothing stands in the way.')).toBeVisible();
    await issue();
    expect(inForce()).toMatchObject([{ number: { count: 1, letter: letter() } }]);
  });

  it('is refused while more pieces cost less; one tap cures it and is one step to undo', async () => {
    await screenStore().open();
    changeJob('club-order', asListed);
    await enter(<PriceListScreen listId={LIST} />);
    expect(screen.getByText(/pieces would cost less than/)).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: /^Issue version 1[A-Z]?$/ }));
    expect(papers()).toEqual([]);
    expect(screen.getByText('It is not issued: see what stands in the way.')).toBeVisible();
    expect(screen.getByRole('heading', { name: '1 thing stands in the way' })).toHaveFocus();
    expect(screen.getByRole('link', { name: 'Its prices in Ramblers Club shirts' })).toHaveAttribute(
      'href',
      '/jobs/club-order#prices',
    );
    await userEvent.click(screen.getByRole('button', { name: 'Sell it under a cap' }));
    expect(bodyOf('job', 'club-order').lines[0]?.selling).toBe('capped');
    expect(screen.queryByText(/would cost less than/)).not.toBeInTheDocument();
    await undo();
    expect(bodyOf('job', 'club-order').lines[0]?.selling).toBe('asListed');
  });

  it('tells at once all that stands in the way, each with its way out', async () => {
    await screenStore().open();
    changeJob('club-order', (job) => ({ ...asListed(job), printerId: 'gone' }));
    const [shirts] = list().items;
    const mugs = bodyOf('job', 'fair-mugs').lines.map(({ id }) => id);
    if (shirts === undefined) throw new Error('the example has an item');
    changeJob('fair-shirts', (job) => ({ ...job, channelId: 'own-orders' }));
    const line = bodyOf('job', 'fair-shirts').lines[0]?.id ?? '';
    act(() =>
      screenStore().actions.edit('Items', [
        {
          do: 'change',
          kind: 'priceList',
          id: LIST,
          to: (body) => ({
            ...body,
            items: [
              shirts,
              { ...shirts, id: 'lost', lineId: 'lost', jobId: 'fair-mugs' },
              { ...shirts, id: 'mug', jobId: 'fair-mugs', lineId: mugs[0] ?? '' },
              { ...shirts, id: 'fair', jobId: 'fair-shirts', lineId: line },
            ],
          }),
        },
      ]),
    );
    await enter(<PriceListScreen listId={LIST} />);
    expect(screen.getByRole('heading', { name: '3 things stand in the way' })).toBeVisible();
    expect(screen.getByText('The job of Club shirt is stopped.')).toBeVisible();
    expect(screen.getByRole('link', { name: 'Mend it in Ramblers Club shirts' })).toHaveAttribute(
      'href',
      '/jobs/club-order#job-printerId',
    );
    expect(screen.getByText(/an item is no longer a line of its job/i)).toBeVisible();
    expect(
      screen.getByText(/stand to tax in different ways: Fern mug with tax inside; Fern shirt with tax added/),
    ).toBeVisible();
    expect(screen.getByRole('link', { name: 'How Fern mug is sold' })).toHaveAttribute(
      'href',
      '/jobs/fair-mugs#job-channelId',
    );
    await userEvent.click(screen.getByRole('button', { name: 'Take an item off the list' }));
    expect(screen.getByRole('heading', { name: '2 things stand in the way' })).toBeVisible();
  });

  it('cannot be issued without an item', async () => {
    await enter(<PriceListScreen listId={LIST} />);
    await userEvent.click(screen.getByRole('button', { name: /^Take off/ }));
    expect(list().items).toEqual([]);
    await userEvent.click(screen.getByRole('button', { name: /^Issue version 1[A-Z]?$/ }));
    expect(screen.getByText(/There is nothing on the list/)).toBeVisible();
    expect(screen.getByRole('link', { name: 'Choose a line of a job' })).toHaveAttribute('href', '#add-item');
    expect(papers()).toEqual([]);
  });

  it('takes up lines of other jobs, and says of one that was removed that it is gone', async () => {
    await enter(<PriceListScreen listId={LIST} />);
    await userEvent.selectOptions(
      screen.getByLabelText('A line of a job'),
      screen.getByRole('option', { name: /^Fern mug/ }),
    );
    await userEvent.click(screen.getByRole('button', { name: 'Add it' }));
    expect(list().items.map(({ jobId }) => jobId)).toEqual(['club-order', 'fair-mugs']);
    await act(async () => {
      screenStore().actions.edit('Remove', [{ do: 'delete', kind: 'job', id: 'fair-mugs' }]);
    });
    expect(screen.getByText(/is no longer here/)).toBeVisible();
  });

  it('takes an own amount of a charge, typed as one step, and the suggestion again where it is emptied', async () => {
    await enter(<PriceListScreen listId={LIST} />);
    await userEvent.click(screen.getByText('Named beside it'));
    const field = screen.getByRole('textbox', { name: 'A name' });
    // Every key has its prices made on this thread; a maker's keys do not wait for them.
    vi.useFakeTimers({ toFake: ['Date'] });
    await userEvent.type(field, '120');
    vi.useRealTimers();
    expect(list().items[0]?.ownAmounts).toEqual([{ kind: 'name', amount: 120 }]);
    await undo();
    expect(list().items[0]?.ownAmounts).toEqual([]);
  });

  it('undoes words on the paper as they were typed: as one step', async () => {
    await enter(<PriceListScreen listId={LIST} />);
    await userEvent.type(screen.getByRole('textbox', { name: 'Your shop and how to reach it' }), 'Alex');
    expect(list().from).toBe('Alex');
    await undo();
    expect(list().from).toBe('');
  });

  it('keeps a name that is too long as it was typed, says so, and holds the last good one', async () => {
    await enter(<PriceListScreen listId={LIST} />);
    const before = list().name;
    await userEvent.click(screen.getByRole('button', { name: before }));
    const field = screen.getByRole('textbox', { name: 'Name of the price list' });
    await userEvent.clear(field);
    await userEvent.click(field);
    await userEvent.paste('n'.repeat(200));
    expect(field).toHaveValue('n'.repeat(200));
    expect(field).toHaveAttribute('aria-invalid', 'true');
    expect(list().name).toBe(before);
  });
});

describe('a list that went out', () => {
  it('stays as it was while the draft goes on, and is read again after a reload', async () => {
    await issued();
    const [version] = papers();
    expect(version?.body).toMatchObject({
      number: { count: 1, letter: letter() },
      currency: 'USD',
      taxMode: 'added',
    });
    await shirtInL(9);
    expect(papers()).toEqual([version]);
    await reload(<PriceListScreen listId={LIST} />);
    expect(papers()).toEqual([version]);
    expect(screen.getByRole('article', { name: `Price list, version 1${letter()}` })).toBeVisible();
  });

  it('is numbered on after undo took its version out of force: the number stays used, the paper kept', async () => {
    await issued();
    await undo();
    expect(screen.getByText('Nothing of it is in force.')).toBeVisible();
    expect(screen.getByRole('article', { name: 'Draft of the price list' })).toBeVisible();
    expect(papers()).toMatchObject([{ withdrawn: true }]);
    await issue();
    expect(papers().map(({ number, withdrawn }) => [number.count, withdrawn])).toEqual([
      [1, true],
      [2, false],
    ]);
  });

  it('has a version withdrawn by a button, shown as such on its face, and in force again by another', async () => {
    await issued();
    const name = `1${letter()}`;
    await userEvent.click(screen.getByRole('button', { name: `Withdraw version ${name}` }));
    expect(inForce()).toEqual([]);
    // The button is gone; the focus must not be.
    const heading = screen.getByRole('heading', { name: 'The paper' });
    await eventually(() => expect(heading).toHaveFocus());
    expect(screenStore().getState().undoLabel).toBe(`Withdraw version ${name}`);
    await userEvent.click(screen.getByText('Withdrawn'));
    await userEvent.click(screen.getByRole('button', { name: `Show version ${name}` }));
    const paper = screen.getByRole('article', { name: `Price list, version ${name}` });
    expect(paper).toHaveTextContent('Withdrawn: it is not in force any more.');
    await userEvent.click(screen.getByRole('button', { name: `Put in force again version ${name}` }));
    expect(inForce()).toHaveLength(1);
    expect(paper).not.toHaveTextContent('Withdrawn');
    await eventually(() => expect(heading).toHaveFocus());
  });

  it('is not called unissued in the overview once all its versions are withdrawn', async () => {
    await issued();
    await userEvent.click(screen.getByRole('button', { name: `Withdraw version 1${letter()}` }));
    await reload(<PriceListsScreen />);
    expect(screen.getByRole('listitem')).toHaveTextContent(/nothing of it is in force, \d items?/);
    expect(screen.getByRole('listitem')).not.toHaveTextContent('not issued yet');
  });

  it('says on its face when its paper is not what was issued', async () => {
    await issued();
    await screenStore().flush();
    const [paper] = papers();
    if (paper === undefined) throw new Error('a version is issued');
    const { withdrawn: _, ...row } = paper;
    await damage({ ...row, body: { ...row.body, leadTime: 'Tomorrow' } }, 'papers');
    await reload(<PriceListScreen listId={LIST} />);
    const name = `1${letter()}`;
    expect(
      screen.getByText(`Version ${name} was changed since it was issued: do not rely on it.`),
    ).toBeVisible();
    await userEvent.selectOptions(screen.getByLabelText('Shown'), row.id);
    expect(screen.getByRole('article', { name: `Price list, version ${name}` })).toHaveTextContent(
      'Changed since it was issued: do not rely on it.',
    );
    // Its number is not given again.
    expect(screen.getByRole('button', { name: /^Issue version 2/ })).toBeVisible();
  });

  it('is not issued on a full disk: says so, with nothing half kept, and goes out once there is room', async () => {
    await enter(<PriceListScreen listId={LIST} />);
    disk.isFull = true;
    await userEvent.click(screen.getByRole('button', { name: /^Issue version 1[A-Z]?$/ }));
    expect(await screen.findByText(/^It is not issued\. The device has no room left\./)).toBeVisible();
    expect(papers()).toEqual([]);
    disk.isFull = false;
    await issue();
    expect(inForce()).toMatchObject([{ number: { count: 1 } }]);
  });

  it('is shown as it went out after its jobs were removed', async () => {
    await issued();
    const before = screen.getByRole('article').textContent;
    await act(async () => {
      screenStore().actions.edit('Remove', [{ do: 'delete', kind: 'job', id: 'club-order' }]);
    });
    expect(screen.getByRole('article', { name: /^Price list, version/ }).textContent).toBe(before);
  });

  it('can be looked at after the list was removed', async () => {
    await issued();
    await reload(<PriceListsScreen />);
    await userEvent.click(screen.getByRole('button', { name: `Remove ${list().name}` }));
    await userEvent.click(screen.getByText('Papers of removed lists'));
    const link = screen.getByRole('link', { name: papers()[0]?.body.title ?? '' });
    expect(link).toHaveAttribute('href', `/price-lists/${LIST}`);
    cleanup();
    await enter(<PriceListScreen listId={LIST} />);
    expect(screen.getByRole('article', { name: /^Price list, version 1/ })).toHaveTextContent('Club shirt');
    expect(screen.getByText(/What went out of it is kept/)).toBeVisible();
  });

  it('says that all holds, then which prices do not once a shirt costs more, and nothing again after undo', async () => {
    await issued();
    expect(part(/Does version 1[A-Z] still hold/).getByText(/Every price leaves/)).toBeVisible();
    await shirtInL(9);
    const holds = part(/Does version 1[A-Z] still hold/);
    expect(holds.getAllByText(/pieces: .* now leaves .*was/).length).toBeGreaterThan(0);
    expect(holds.getAllByText(/ L 4\.60 USD a piece → 9\.00 USD/).length).toBeGreaterThan(0);
    await undo();
    expect(part(/Does version 1[A-Z] still hold/).getByText(/Every price leaves/)).toBeVisible();
  });

  it('is counted in the room of lists where its prices no longer hold', async () => {
    await issued();
    await shirtInL(9);
    cleanup();
    await enter(<PriceListsScreen />);
    expect(screen.getByRole('listitem')).toHaveTextContent(/prices no longer hold/);
  });

  it('has no cost, margin or pay on its paper, and says what small orders pay together', async () => {
    await issued();
    const paper = screen.getByRole('article', { name: /^Price list, version 1/ });
    expect(paper).toHaveTextContent('Club shirt');
    expect(paper).toHaveTextContent(/Sizes S to XL; 2XL \+ 2\.50; 3XL \+ 4\.00/);
    const rows = [...paper.querySelectorAll('dt')].map((row) => [
      row.textContent,
      row.nextElementSibling?.textContent?.replaceAll(/\s+/g, ' ').trim(),
    ]);
    expect(rows.slice(0, 3)).toEqual([
      ['1', '144.50'],
      ['2 to 3', '182.00 together'],
      ['from 4', '45.50 each'],
    ]);
    expect(paper).toHaveTextContent(/at most\s+232\.00/);
    expect(paper).not.toHaveTextContent('Least order');
    expect(paper.textContent).not.toMatch(/margin|cost you|leaves|your pay/i);
  });

  it('goes into a copy of everything and comes back from it', async () => {
    await issued();
    const before = list();
    const { file } = await screenStore().actions.makeCopy('everything');
    await act(async () => {
      screenStore().actions.edit('Remove', [{ do: 'delete', kind: 'priceList', id: LIST }]);
    });
    const outcome = await act(() => bringBack(screenStore(), file));
    expect(outcome).toEqual({ state: 'replaced' });
    expect(list()).toEqual(before);
  });
});
