// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, fireEvent, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { NamesPart } from '@/app/_names/NamesPart';
import type { writePaper } from '@/app/_papers/writePaper';
import { CLUB_CUSTOMER_ID, CLUB_ENQUIRY_ID } from '@/lib/examples/clubEnquiry';
import type { NameRow } from '@/shared/schemas/order';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';
import { bodyOf, clearScreens, enter, leaveScreens, screenStore, undo } from './screens';

const saved = vi.hoisted(() => vi.fn<(name: string, bytes: Uint8Array) => void>());
vi.mock('@/app/_files/saveBytes', () => ({ saveBytes: saved }));
const savedBlob = vi.hoisted(() => vi.fn<(name: string, file: Blob) => void>());
vi.mock('@/app/_files/saveBlob', () => ({ saveBlob: savedBlob }));
/* The paper's worker, told by hand. */
const papers = vi.hoisted(() => vi.fn<typeof writePaper>());
vi.mock('@/app/_papers/writePaper', () => ({ writePaper: papers }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});

afterEach(() => {
  cleanup();
  clearScreens();
  saved.mockClear();
  savedBlob.mockClear();
  papers.mockReset();
});

/* The worked order: 4 S, 9 M, 11 L, 8 XL, 4 2XL, 1 3XL. */
const JOB = 'club-order';
const ordered = [
  { size: 'S', quantity: 4 },
  { size: 'M', quantity: 9 },
  { size: 'L', quantity: 11 },
  { size: 'XL', quantity: 8 },
  { size: '2XL', quantity: 4 },
  { size: '3XL', quantity: 1 },
];

const Room = () => (
  <WithWorkspace>
    {(workspace) => (
      <>
        <h1>Order</h1>
        <NamesPart workspace={workspace} orderId={CLUB_ENQUIRY_ID} />
      </>
    )}
  </WithWorkspace>
);

const line = () => bodyOf('job', JOB).lines[0];
const rows = (): readonly NameRow[] => bodyOf('order', CLUB_ENQUIRY_ID).lines[0]?.names ?? [];
const people = () => rows().map(({ name, size, number }) => [name, size, number].join('|'));

/** As many people as are ordered, in the sizes that are ordered. */
const club = ordered
  .flatMap(({ size, quantity }) => Array.from({ length: quantity }, () => size))
  .map((size, at) => `Member ${at + 1}\t${size}`);

async function open(): Promise<void> {
  await enter(<Room />);
  await userEvent.click(screen.getByRole('button', { name: 'Paste or read names' }));
}

async function look(text: string): Promise<void> {
  fireEvent.change(screen.getByLabelText('Names, as you got them'), { target: { value: text } });
  await userEvent.click(screen.getByRole('button', { name: 'Look at them' }));
}

async function takeIn(names: string): Promise<void> {
  await userEvent.click(screen.getByRole('button', { name: `Take ${names} in` }));
}

const faults = () => within(screen.getByRole('list', { name: 'Rows to look at' }));

describe('names held against what is ordered', () => {
  it('says that there are none yet, and then that all sizes are as ordered', async () => {
    await open();
    expect(screen.getByText(', 37 pieces ordered')).toBeVisible();
    await look(club.join('\n'));
    await takeIn('37 names');
    expect(screen.getByText(', all sizes as ordered')).toBeVisible();
    expect(screen.queryByRole('button', { name: 'Keep what is ordered' })).toBeNull();
  });

  it('tells what differs in one sentence and orders what the names say, which undoes as one step', async () => {
    await open();
    // A member more in L, two fewer in M.
    await look([...club.filter((_, at) => at !== 4 && at !== 5), 'Late Comer\tL'].join('\n'));
    await takeIn('36 names');
    expect(screen.getByText(', 2 sizes otherwise than ordered')).toBeVisible();
    expect(
      screen.getByText('37 pieces ordered, 36 names: 9 M ordered, 7 named; 11 L ordered, 12 named.'),
    ).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Order what the names say: 36 pieces' }));
    expect(line()?.quantities).toEqual(
      ordered.map((one) =>
        one.size === 'M' ? { size: 'M', quantity: 7 } : one.size === 'L' ? { size: 'L', quantity: 12 } : one,
      ),
    );
    expect(screen.getByText(', all sizes as ordered')).toBeVisible();
    await undo();
    expect(line()?.quantities).toEqual(ordered);
  });

  it('lets a difference stand where the maker keeps what is ordered, and tells the next one', async () => {
    await open();
    await look(`${club.join('\n')}\nLate Comer\tL`);
    await takeIn('38 names');
    await userEvent.click(screen.getByRole('button', { name: 'Keep what is ordered' }));
    expect(screen.queryByText(/11 L ordered, 12 named/)).toBeNull();
    expect(screen.getByText(', 1 size otherwise than ordered')).toBeVisible();
    expect(line()?.quantities).toEqual(ordered);
    await userEvent.click(screen.getByRole('button', { name: 'Names' }));
    await userEvent.selectOptions(screen.getByLabelText('Size of Member 1'), 'M');
    expect(screen.getByText(/4 S ordered, 3 named; 9 M ordered, 10 named/)).toBeVisible();
  });
});

describe('names that are pasted', () => {
  it('shows three faults of five hundred first, and takes all in as one step', async () => {
    await open();
    const lines = Array.from({ length: 500 }, (_, at) => `Runner ${at + 1},${at % 2 === 0 ? 'M' : 'L'}`);
    lines[99] = 'Runner 100,6XL';
    lines[199] = ',M';
    lines[299] = 'Runner 300,';
    await look(`Name,Size\n${lines.join('\n')}`);
    expect(screen.getByText('500 rows read').parentElement).toHaveTextContent('500 rows read, 3 to look at');
    expect(screen.getByText('500 rows read').parentElement).toHaveFocus();
    expect(
      faults()
        .getAllByRole('listitem', { name: /^Line/ })
        .map((item) => item.getAttribute('aria-label')),
    ).toEqual(['Line 101', 'Line 201', 'Line 301']);
    expect(faults().getByText('The blank has no size “6XL”.')).toBeVisible();
    expect(faults().getByText('No name.')).toBeVisible();
    expect(faults().getByText('No size.')).toBeVisible();
    // The head, and as many rows as tell what the columns hold.
    expect(screen.getAllByRole('row')).toHaveLength(6);
    await userEvent.click(screen.getByRole('button', { name: 'Show 100 of 495 more' }));
    expect(screen.getAllByRole('row')).toHaveLength(106);
    await takeIn('500 names');
    expect(rows()).toHaveLength(500);
    expect(rows()[99]).toMatchObject({ name: 'Runner 100', size: '6XL' });
    expect(screen.getByText('500 names are in.')).toHaveFocus();
    await undo();
    expect(rows()).toEqual([]);
  });

  it('offers both readings of “2 XL”, for all rows that are written so, and guesses neither', async () => {
    await open();
    await look('Name\tSize\nAna\t2 XL\nBo\tM\nCem\t2 XL');
    expect(faults().getAllByText('“2 XL” can be 2XL or 2 of XL.')).toHaveLength(2);
    const first = within(faults().getByRole('listitem', { name: 'Line 2' }));
    expect(first.getByRole('button', { name: '2XL, in all 2 rows' })).toBeVisible();
    await userEvent.click(first.getByRole('button', { name: '2 of XL, in all 2 rows' }));
    expect(faults().getByRole('listitem', { name: 'Line 2' })).toHaveFocus();
    expect(faults().getAllByText('Nothing wrong any more.')).toHaveLength(2);
    await takeIn('5 names');
    expect(people()).toEqual(['Ana|XL|', 'Ana|XL|', 'Bo|M|', 'Cem|XL|', 'Cem|XL|']);
  });

  it('lets a size that is not made be typed over, or made the nearest', async () => {
    await open();
    await look('Name\tSize\nAna\t6XL\nBo\tMidi\nCem\tL');
    const ana = within(faults().getByRole('listitem', { name: 'Line 2' }));
    await userEvent.click(ana.getByRole('button', { name: '3XL' }));
    const bo = within(faults().getByRole('listitem', { name: 'Line 3' }));
    await userEvent.clear(bo.getByLabelText('Size'));
    await userEvent.type(bo.getByLabelText('Size'), 'm');
    await takeIn('3 names');
    expect(people()).toEqual(['Ana|3XL|', 'Bo|M|', 'Cem|L|']);
  });

  it('leaves out only what the maker leaves out, and passes over empty lines', async () => {
    await open();
    await look('Ana\tM\n\n\t\nAna\tL\n\nBo\tS\n');
    expect(faults().getAllByText('The same name stands twice.')).toHaveLength(2);
    await userEvent.click(screen.getByRole('button', { name: 'Leave it out, line 4' }));
    await userEvent.click(screen.getByRole('button', { name: 'Leave it out, line 1' }));
    await userEvent.click(screen.getByRole('button', { name: 'Take it after all, line 1' }));
    await takeIn('2 names');
    expect(people()).toEqual(['Ana|M|', 'Bo|S|']);
  });

  it('keeps what cannot be kept yet where it is, after the others are in', async () => {
    await open();
    await look(`Name\tSize\n${'x'.repeat(161)}\tM\nBo\tS`);
    expect(faults().getByText('The name has 161 letters; 160 can be kept.')).toBeVisible();
    await takeIn('1 name');
    expect(screen.getByText('1 name is in. 1 row cannot be kept yet and waits below.')).toBeVisible();
    const long = within(faults().getByRole('listitem', { name: 'Line 2' }));
    fireEvent.change(long.getByLabelText('Name'), { target: { value: 'Xaver' } });
    await takeIn('1 name');
    expect(people()).toEqual(['Bo|S|', 'Xaver|M|']);
  });

  it.each([
    ['tabs', 'Name\tSize\tNo.\nO’Neil, Ana\tM\t7'],
    ['semicolons', 'Name;Size;No.\nO’Neil, Ana;M;7'],
    ['quotes', 'Name,Size,No.\n"O’Neil, Ana",M,7'],
  ])('reads cells parted by %s', async (_, text) => {
    await open();
    await look(text);
    await takeIn('1 name');
    expect(people()).toEqual(['O’Neil, Ana|M|7']);
  });

  it('takes another column where the maker says so, and names those of which nothing is taken', async () => {
    await open();
    await look('Team,Rider,Top\nReds,Ana,M\nReds,Bo,L');
    await userEvent.click(screen.getByLabelText('The first row names the columns'));
    await userEvent.selectOptions(screen.getByLabelText('Team'), 'not taken');
    await userEvent.selectOptions(screen.getByLabelText('Rider'), 'Name');
    expect(screen.getByText(/^Nothing is taken of the column/)).toHaveTextContent('Team');
    await takeIn('2 names');
    expect(people()).toEqual(['Ana|M|', 'Bo|L|']);
  });

  it('adds to the names here or takes their place, as the maker says', async () => {
    await open();
    await look('Ana\tM');
    await takeIn('1 name');
    await look('Bo\tL');
    await userEvent.selectOptions(screen.getByLabelText('With the names here'), 'In place of the 1 here');
    await takeIn('1 name');
    expect(people()).toEqual(['Bo|L|']);
  });

  it('orders and prints what the names say in the same step where that is wanted', async () => {
    await open();
    await look('Ana\tM\t7\nBo\tM\t8\nCem\tL\t9');
    await userEvent.click(screen.getByLabelText('Order as many of each size as the names say'));
    await userEvent.click(screen.getByLabelText('Print the names and numbers on the pieces'));
    await takeIn('3 names');
    expect(line()?.quantities.filter(({ quantity }) => quantity > 0)).toEqual([
      { size: 'M', quantity: 2 },
      { size: 'L', quantity: 1 },
    ]);
    expect(line()?.nameList).toBe('Ana 7\nBo 8\nCem 9');
    await undo();
    expect(rows()).toEqual([]);
    expect(line()).toMatchObject({ quantities: ordered, nameList: '' });
  });

  it('lets names keep their own direction', async () => {
    await open();
    await look('דנה\tM');
    expect(screen.getByRole('cell', { name: 'דנה' })).toHaveAttribute('dir', 'auto');
    await takeIn('1 name');
    await userEvent.click(screen.getByRole('button', { name: 'Names' }));
    expect(screen.getByLabelText('Name in row 1')).toHaveAttribute('dir', 'auto');
  });

  it('says once that names are personal data', async () => {
    await open();
    expect(screen.getByText(/Keep them only as long as they are needed/)).toBeVisible();
  });
});

describe('a file of names', () => {
  const choose = (content: BlobPart, name = 'team.csv') =>
    userEvent.upload(screen.getByLabelText('File of names'), new File([content], name));

  it('is read like what is pasted', async () => {
    await open();
    await choose('Name;Size\nJosé;L\n');
    expect(await screen.findByText('1 row read')).toBeVisible();
    await takeIn('1 name');
    expect(people()).toEqual(['José|L|']);
  });

  it('is not guessed at where it is in another encoding: how to save it is told', async () => {
    await open();
    // “José” as Windows-1252 writes it.
    await choose(new Uint8Array([0x4a, 0x6f, 0x73, 0xe9, 0x3b, 0x4c]));
    expect(
      await screen.findByText(/does not tell how its letters are written.*Save it as CSV UTF-8/),
    ).toBeVisible();
  });

  it('of 5 MB is refused by its size, before anything of it is read', async () => {
    await open();
    const file = new File([new Uint8Array(5_000_000)], 'all.csv');
    const read = vi.spyOn(file, 'arrayBuffer');
    await userEvent.upload(screen.getByLabelText('File of names'), file);
    expect(await screen.findByText(/“all.csv” is too large for a list of names/)).toBeVisible();
    expect(read).not.toHaveBeenCalled();
  });

  it('that cannot be read any more is told, and what was typed stays', async () => {
    await open();
    fireEvent.change(screen.getByLabelText('Names, as you got them'), { target: { value: 'Ana M' } });
    const file = new File(['Ana;M'], 'gone.csv');
    vi.spyOn(file, 'arrayBuffer').mockRejectedValue(new DOMException('gone', 'NotReadableError'));
    await userEvent.upload(screen.getByLabelText('File of names'), file);
    expect(await screen.findByText(/“gone.csv” cannot be read/)).toBeVisible();
    expect(screen.getByLabelText('Names, as you got them')).toHaveValue('Ana M');
  });
});

it('several lines that are pasted are looked at at once, with what stood in the field, and can be gone back to', async () => {
  await open();
  const area = screen.getByLabelText('Names, as you got them');
  await userEvent.click(area);
  await userEvent.keyboard('Ana M{Enter}');
  await userEvent.paste('Bo L\nCem S');
  expect(screen.getByText('3 rows read')).toBeVisible();
  await userEvent.click(screen.getByRole('button', { name: 'Back to the text' }));
  expect(screen.getByLabelText('Names, as you got them')).toHaveValue('Ana M\nBo L\nCem S');
  expect(screen.getByLabelText('Names, as you got them')).toHaveFocus();
});

it('a pasted text as long as no list of names is refused before it comes into the field', async () => {
  await open();
  const area = screen.getByLabelText('Names, as you got them');
  await userEvent.click(area);
  await userEvent.paste('Ana,M\n'.repeat(3001));
  expect(screen.getByText(/The pasted text is too large for a list of names/)).toBeVisible();
  expect(area).toHaveValue('');
});

describe('what is being taken in', () => {
  /** The page loaded anew: the fold stands open as it was left. */
  async function reload(): Promise<void> {
    cleanup();
    leaveScreens();
    await enter(<Room />);
  }

  it('is there after a reload with what was mended and chosen, and forgotten once it is in', async () => {
    await open();
    await look('Name\tSize\nAna\t6XL\nBo\tM\nCem\tL');
    const ana = within(faults().getByRole('listitem', { name: 'Line 2' }));
    fireEvent.change(ana.getByLabelText('Name'), { target: { value: 'Anna' } });
    await userEvent.click(ana.getByRole('button', { name: 'Leave it out, line 2' }));
    await userEvent.click(screen.getByLabelText('Print the names and numbers on the pieces'));
    await reload();
    expect(await screen.findByText('3 rows read')).toBeVisible();
    expect(screen.getByRole('cell', { name: 'Anna' })).toBeVisible();
    expect(screen.getByRole('cell', { name: 'left out' })).toBeVisible();
    expect(screen.getByLabelText('Print the names and numbers on the pieces')).toBeChecked();
    await takeIn('2 names');
    expect(people()).toEqual(['Bo|M|', 'Cem|L|']);
    await reload();
    expect(await screen.findByLabelText('Names, as you got them')).toHaveValue('');
    expect(JSON.stringify({ ...sessionStorage })).not.toContain('Cem');
  });

  it('goes where the customer is erased meanwhile, and what comes after is not kept in the tab', async () => {
    await open();
    await look('Name\tSize\nAna\t6XL\nBo\tM');
    expect(screen.getByText('2 rows read')).toBeVisible();
    const erased = await act(() => screenStore().actions.erase(CLUB_CUSTOMER_ID, TEST_DAY));
    expect(erased.state).toBe('erased');
    const field = await screen.findByLabelText('Names, as you got them');
    expect(field).toHaveValue('');
    expect(JSON.stringify({ ...sessionStorage })).not.toContain('Ana');
    fireEvent.change(field, { target: { value: 'Cem L' } });
    expect(
      screen.getByText(/^The customer was erased: a reload would lose what stands here\./),
    ).toBeVisible();
    expect(JSON.stringify({ ...sessionStorage })).not.toContain('Cem');
  });

  it('from before the customer was erased is forgotten when the order is opened', async () => {
    await open();
    fireEvent.change(screen.getByLabelText('Names, as you got them'), { target: { value: 'Ana M' } });
    cleanup();
    // As another tab does it.
    await act(() => screenStore().actions.erase(CLUB_CUSTOMER_ID, TEST_DAY));
    expect(JSON.stringify({ ...sessionStorage })).toContain('Ana');
    await reload();
    expect(await screen.findByLabelText('Names, as you got them')).toHaveValue('');
    expect(JSON.stringify({ ...sessionStorage })).not.toContain('Ana');
  });

  it('is there after a reload while it is text only, until the field is emptied', async () => {
    await open();
    fireEvent.change(screen.getByLabelText('Names, as you got them'), { target: { value: 'Ana M' } });
    await reload();
    expect(await screen.findByLabelText('Names, as you got them')).toHaveValue('Ana M');
    await userEvent.click(screen.getByRole('button', { name: 'Empty the field' }));
    expect(screen.getByLabelText('Names, as you got them')).toHaveFocus();
    await reload();
    expect(await screen.findByLabelText('Names, as you got them')).toHaveValue('');
  });

  it('is told not to be kept where the tab’s memory is full, and can be taken in all the same', async () => {
    await open();
    const full = vi.spyOn(Storage.prototype, 'setItem').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    await look('Ana\tM');
    expect(screen.getByText(/a reload would lose what stands here/)).toBeVisible();
    await takeIn('1 name');
    expect(people()).toEqual(['Ana|M|']);
    expect(screen.queryByText(/a reload would lose what stands here/)).toBeNull();
    full.mockRestore();
  });
});

describe('the rows one by one', () => {
  async function taken(text: string): Promise<void> {
    await open();
    await look(text);
    await userEvent.click(screen.getByRole('button', { name: /^Take \d+ names? in$/ }));
    await userEvent.click(screen.getByRole('button', { name: 'Names' }));
  }
  const shown = () =>
    screen.getAllByLabelText(/^Name in row/).map((field) => (field as HTMLInputElement).value);

  it('are mended, added and removed, and a removed one comes back', async () => {
    await taken('Ana\tM\nBo\tL');
    fireEvent.change(screen.getByLabelText('Name in row 1'), { target: { value: 'Anna' } });
    await userEvent.selectOptions(screen.getByLabelText('Size of Anna'), 'S');
    fireEvent.change(screen.getByLabelText('Number of Anna'), { target: { value: '07' } });
    await userEvent.click(screen.getByRole('button', { name: 'Add a name' }));
    // Above the others, beside the button, however many there are.
    expect(screen.getByLabelText('Name in row 1')).toHaveFocus();
    await userEvent.keyboard('Cem');
    expect(people()).toEqual(['Anna|S|07', 'Bo|L|', 'Cem||']);
    await userEvent.click(screen.getByRole('button', { name: 'Remove Bo' }));
    expect(people()).toEqual(['Anna|S|07', 'Cem||']);
    await userEvent.click(screen.getByRole('button', { name: 'Bring it back' }));
    expect(people()).toEqual(['Anna|S|07', 'Bo|L|', 'Cem||']);
  });

  it('are sorted for packing, and stay in their places while a name is typed', async () => {
    await taken('Zoe\tS\nAna\t2XL\nBo\tS');
    await userEvent.selectOptions(screen.getByLabelText('Sorted'), 'by size');
    expect(shown()).toEqual(['Bo', 'Zoe', 'Ana']);
    await userEvent.selectOptions(screen.getByLabelText('Sorted'), 'by person');
    expect(shown()).toEqual(['Ana', 'Bo', 'Zoe']);
    fireEvent.change(screen.getByLabelText('Name in row 1'), { target: { value: 'Zara' } });
    expect(shown()).toEqual(['Zara', 'Bo', 'Zoe']);
    expect(people()).toEqual(['Zoe|S|', 'Zara|2XL|', 'Bo|S|']);
  });

  it('tell a name that stands twice and a size that is not made', async () => {
    await taken('Ana\tM\nana\tL\nBo\t6XL');
    expect(screen.getByLabelText('Name in row 2')).toHaveAccessibleDescription(/Two people may share it/);
    expect(screen.getByLabelText('Size of Bo')).toHaveAccessibleDescription('The blank has no size “6XL”.');
    expect(screen.getByLabelText('Size of Bo')).toHaveValue('6XL');
  });

  it('take what the job prints along as they are mended', async () => {
    await open();
    await look('Ana\tM\nBo\tL');
    await userEvent.click(screen.getByLabelText('Print the names and numbers on the pieces'));
    await takeIn('2 names');
    await userEvent.click(screen.getByRole('button', { name: 'Names' }));
    fireEvent.change(screen.getByLabelText('Name in row 1'), { target: { value: 'Anna' } });
    expect(line()?.nameList).toBe('Anna\nBo');
  });
});

describe('a list that the job prints already', () => {
  const print = (nameList: string) =>
    act(() => {
      screenStore().actions.edit('Names', [
        {
          do: 'change',
          kind: 'job',
          id: JOB,
          to: (job) => ({ ...job, lines: job.lines.map((one) => ({ ...one, nameList })) }),
        },
      ]);
    });

  it('is taken into the order, where each name can have its size', async () => {
    await open();
    print('Ana 7\nBo');
    await userEvent.click(screen.getByRole('button', { name: 'Take the job’s names here' }));
    expect(people()).toEqual(['Ana||7', 'Bo||']);
  });

  it('is told where it is another, and never changed by mending a row', async () => {
    await open();
    await look('Ana\tM\nBo\tL');
    await takeIn('2 names');
    print('Ana\nBob');
    expect(screen.getByText(/^The job prints other names/)).toHaveTextContent('Bob');
    await userEvent.click(screen.getByRole('button', { name: 'Names' }));
    fireEvent.change(screen.getByLabelText('Name in row 1'), { target: { value: 'Anna' } });
    expect(line()?.nameList).toBe('Ana\nBob');
    await userEvent.click(screen.getByRole('button', { name: 'Print the names here' }));
    expect(line()?.nameList).toBe('Anna\nBo');
  });
});

it('names of what is made no more stay until they are removed', async () => {
  await open();
  await look('Ana\tM');
  await takeIn('1 name');
  act(() => {
    screenStore().actions.edit('Take the job out', [
      { do: 'change', kind: 'order', id: CLUB_ENQUIRY_ID, to: (order) => ({ ...order, jobIds: [] }) },
    ]);
  });
  expect(screen.getByText(/^1 name of something this order makes no more/)).toBeVisible();
  expect(people()).toEqual(['Ana|M|']);
  await userEvent.click(screen.getByRole('button', { name: 'Remove them' }));
  expect(rows()).toEqual([]);
});

describe('the form to fill', () => {
  const text = () => new TextDecoder().decode(saved.mock.calls[0]?.[1]);

  it('is a table with the sizes of the blank, a row for each piece, and no formula in it', async () => {
    await open();
    await look('=Ana\tM');
    await takeIn('1 name');
    await userEvent.click(screen.getByRole('button', { name: 'Form to fill' }));
    await userEvent.click(screen.getByRole('button', { name: 'Table to send' }));
    expect(saved.mock.calls[0]?.[0]).toBe('Ramblers Club shirts, Club shirt.csv');
    const lines = text().split('\r\n');
    // The decoder takes the mark away that says UTF-8.
    expect(lines[0]).toBe('Name,"Size (S, M, L, XL, 2XL, 3XL)"');
    expect(lines[1]).toBe("'=Ana,M");
    // 37 ordered, one known, the end of the last line.
    expect(lines).toHaveLength(1 + 37 + 1);
    expect([...(saved.mock.calls[0]?.[1] ?? [])].slice(0, 3)).toEqual([0xef, 0xbb, 0xbf]);
  });

  it('is printed under the workshop’s head, saved as a file, and told where it cannot be written', async () => {
    papers.mockReturnValue(() => undefined);
    await open();
    await look('Ana\tM\t7');
    await takeIn('1 name');
    await userEvent.click(screen.getByRole('button', { name: 'Form to fill' }));
    await userEvent.click(screen.getByRole('button', { name: 'Form to print' }));
    await eventually(() => expect(papers).toHaveBeenCalledOnce());
    const [question, tell] = papers.mock.calls[0] ?? [];
    if (question?.kind !== 'paper' || question.source.kind !== 'sizeForm') throw new Error('no size form');
    expect(question.source.body).toMatchObject({
      title: 'Ramblers Club shirts, Club shirt',
      page: 'letter',
      language: 'en',
      sizes: ['S', 'M', 'L', 'XL', '2XL', '3XL'],
      hasNumbers: true,
      seller: { name: bodyOf('workshop', 'workshop').name },
    });
    expect(question.source.body.rows).toHaveLength(37);
    expect(question.source.body.rows[0]).toMatchObject({ name: 'Ana', size: 'M', number: '7' });
    act(() => tell?.({ kind: 'failed', why: 'no memory' }));
    expect(screen.getByText(/The form could not be written: no memory/)).toBeVisible();
    act(() =>
      tell?.({
        kind: 'written',
        file: new Blob(['%PDF']),
        pages: 1,
        lost: [],
        missing: [{ letter: 'ش', codePoints: 'U+0634', fate: 'picture' }],
      }),
    );
    expect(savedBlob.mock.calls[0]?.[0]).toBe('Ramblers Club shirts, Club shirt.pdf');
    expect(
      screen.getByText(/^The form is saved. These letters are drawn as a picture of this device’s type: .*ش/),
    ).toBeVisible();
  });

  it('is a message, too', async () => {
    await open();
    await userEvent.click(screen.getByRole('button', { name: 'Form to fill' }));
    await userEvent.click(screen.getByText('As a message'));
    expect(screen.getByText(/Size: S, M, L, XL, 2XL, 3XL/)).toBeVisible();
  });

  it('comes back filled as it went out', async () => {
    await open();
    await userEvent.click(screen.getByRole('button', { name: 'Form to fill' }));
    await userEvent.click(screen.getByRole('button', { name: 'Table to send' }));
    const filled = text().replace('\r\n,\r\n', '\r\nAna,XX-Large\r\n');
    await look(filled);
    expect(screen.queryByRole('list', { name: 'Rows to look at' })).toBeNull();
    await takeIn('1 name');
    expect(people()).toEqual(['Ana|2XL|']);
  });
});
