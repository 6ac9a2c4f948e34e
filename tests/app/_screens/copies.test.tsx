// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Carry } from '@/app/_copies/Carry';
import { CopiesPart } from '@/app/_copies/CopiesPart';
import { useCopyStanding } from '@/app/_copies/useCopyStanding';
import { useWorkspace } from '@/app/_documents/useWorkspace';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';
import {
  bodyOf,
  clearScreens,
  damage,
  enter,
  idsOf,
  leaveScreens,
  opening,
  screenStore,
  undo,
  visit,
} from './screens';

const saved = vi.hoisted(() => vi.fn<(name: string, content: unknown) => void>());
const handed = vi.hoisted(() => vi.fn<(name: string, content: Blob) => void>());
vi.mock('@/app/_files/saveFile', () => ({ saveFile: saved }));
vi.mock('@/app/_files/saveBlob', () => ({ saveBlob: handed, fileName: (name: string) => name }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});

/** A slow run may pass the minute that it began in. */
const TEST_STAMP = `${TEST_DAY}-\\d{4}`;

beforeEach(() => {
  saved.mockClear();
  handed.mockClear();
});
afterEach(() => {
  cleanup();
  clearScreens();
});

const room = (
  <WithWorkspace>
    {(workspace) => (
      <>
        <h1>Copies</h1>
        <CopiesPart workspace={workspace} level={2} />
        <Carry store={workspace} what={{ kind: 'job', id: 'fair-mugs', name: 'Spring Fair mugs' }} />
      </>
    )}
  </WithWorkspace>
);

const press = async (name: string | RegExp) =>
  userEvent.click(await screen.findByRole('button', { name }, { timeout: 20_000 }));
const bring = (content: Blob, name: string) =>
  userEvent.upload(screen.getByLabelText('Copy or carried file'), new File([content], name));
const lastHanded = (): { readonly name: string; readonly content: Blob } => {
  const [name, content] = handed.mock.lastCall ?? [];
  if (name === undefined || content === undefined) throw new Error('nothing was handed out');
  return { name, content };
};
const removeMugs = () =>
  screenStore().actions.edit('Remove', [{ do: 'delete', kind: 'job', id: 'fair-mugs' }]);

describe('a copy', () => {
  it('is one file that says what is in it, and brings back what was removed since', async () => {
    await enter(room);
    await press('Make a copy');
    expect(await screen.findByText(/^Saved as/)).toHaveTextContent(
      new RegExp(
        `^Saved as pressminute-${TEST_STAMP}\\.zip: 3 jobs, 1 order, 1 customer, 1 list, 1 stall day, 2 blanks, 9 artworks, \\d approvals of pictures, .* kB\\.$`,
      ),
    );
    const { name, content } = lastHanded();
    expect(name).toMatch(new RegExp(`^pressminute-${TEST_STAMP}\\.zip$`));
    removeMugs();
    await bring(content, name);
    expect(
      await screen.findByRole('heading', { name: 'One job would come back, nothing here would go' }),
    ).toBeVisible();
    expect(idsOf('job')).not.toContain('fair-mugs');
    await press('Bring it back');
    expect(await screen.findByText('One job is back.')).toBeVisible();
    expect(idsOf('job')).toContain('fair-mugs');
    await press('Undo');
    await eventually(() => expect(idsOf('job')).not.toContain('fair-mugs'));
  });

  it('takes the place of everything only after its loss was named and a copy of today was saved', async () => {
    await enter(room);
    await press('Make a copy');
    await screen.findByText(/^Saved as/);
    const { content } = lastHanded();
    const { body } = { body: bodyOf('job', 'fair-mugs') };
    screenStore().actions.edit('Add', [
      { do: 'add', kind: 'job', id: 'new-one', body: { ...body, name: 'Bakery aprons' } },
    ]);
    handed.mockClear();
    await bring(content, 'old.zip');
    await press('Put the copy in place of all this');
    expect(screen.getByText(/loses one job: Bakery aprons\. A copy of today is saved first/)).toBeVisible();
    expect(handed).not.toHaveBeenCalled();
    await press('Put the copy in its place');
    expect(await screen.findByText('The copy is in place of what was here.')).toBeVisible();
    expect(handed).toHaveBeenCalledTimes(1);
    expect(lastHanded().name).toMatch(new RegExp(`^pressminute-${TEST_STAMP}-before-replacing\\.zip$`));
    expect(idsOf('job')).not.toContain('new-one');
    await undo();
    expect(idsOf('job')).toContain('new-one');
  });

  it('that is none is told so, and changes nothing', async () => {
    await enter(room);
    await bring(new Blob(['a,b,c']), 'list.zip');
    expect(await screen.findByText(/is no copy made here/)).toHaveTextContent(/Nothing here was changed/);
    expect(idsOf('job')).toHaveLength(3);
  });

  it('cut short is told to be, and what is whole of it can still be taken', async () => {
    await enter(room);
    await press('Make a copy');
    await screen.findByText(/^Saved as/);
    const { content } = lastHanded();
    removeMugs();
    await bring(content.slice(0, Math.floor(content.size * 0.9)), 'cut.zip');
    expect(await screen.findByText(/The file is cut short/)).toBeVisible();
    expect(screen.getByRole('button', { name: 'Leave everything as it is' })).toBeVisible();
  });
});

describe('a browser that keeps nothing', () => {
  it('is told of with the copies, which are all that keeps anything', async () => {
    opening.failure = { state: 'unavailable', why: 'storageForbidden' };
    await enter(room);
    expect(
      await screen.findByText(/The browser forbids keeping anything, as private windows do/),
    ).toHaveTextContent(/A copy is the only way to keep what is here\.$/);
    await press('Make a copy');
    await screen.findByText(/^Saved as/);
    expect(lastHanded().content.size).toBeGreaterThan(1_000);
  });
});

describe('a job that is carried', () => {
  it('leaves as a file that says what is in it, and comes in twice without harm', async () => {
    await enter(room);
    await press('Carry to another device');
    expect(
      await screen.findByText(new RegExp(`^Saved as Spring Fair mugs ${TEST_STAMP}\\.zip\\.`)),
    ).toHaveTextContent(/It holds Spring Fair mugs, with .*1 blank/);
    const { name, content } = lastHanded();
    removeMugs();
    await bring(content, name);
    await screen.findByRole('heading', {
      name: /^Spring Fair mugs, with .*, was removed here and would come back$/,
    });
    await press('Bring it back');
    expect(await screen.findByText('One job is back.')).toBeVisible();
    await bring(content, name);
    await screen.findByRole('heading', { name: /^Spring Fair mugs, with .*, is the same here already$/ });
    expect(screen.queryByRole('button', { name: /^Bring (it|the|them)/ })).toBeNull();
  });
});

describe('a store that the browser cleared', () => {
  /** Makes a copy, loses everything and enters the screen that says so. */
  const wiped = async () => {
    await enter(room);
    await press('Make a copy');
    await screen.findByText(/^Saved as/);
    const { content } = lastHanded();
    cleanup();
    clearScreens();
    visit.last = { at: new Date(2026, 10, 24, 12).getTime(), holdsOwn: true };
    await enter(room);
    expect(screen.getByRole('heading', { name: 'What was kept here is gone' })).toBeVisible();
    return content;
  };

  it('says after a copy was brought back what came in, with the focus and the way back', async () => {
    await bring(await wiped(), 'mine.zip');
    await press(/^Bring .* in$/);
    const told = await screen.findByText(/^19 things came in, eight approvals of pictures came in\.$/);
    expect(screen.getByRole('heading', { name: 'Copies' })).toBeVisible();
    await eventually(() => expect(told.closest('[role="status"]')).toHaveFocus());
    // What is here is what the copy holds.
    expect(screen.getByText(/The last one was made today, and nothing was changed since\./)).toBeVisible();
    removeMugs();
    expect(await screen.findByText(/something was changed since\./)).toBeVisible();
    expect(told).not.toBeInTheDocument();
  });

  it('is empty again after undo, says so, and offers to bring a copy or begin again', async () => {
    const content = await wiped();
    await bring(content, 'mine.zip');
    await press(/^Bring .* in$/);
    await press('Undo');
    const heading = await screen.findByRole('heading', { name: 'Nothing is kept here' });
    await eventually(() => expect(heading).toHaveFocus());
    expect(screen.queryByText(/stay kept|Make a copy first/)).toBeNull();
    expect(await findLater('Begin with a fresh workshop')).toBeVisible();
    expect(screen.queryByText(/stay as they are/)).toBeNull();
    await bring(content, 'mine.zip');
    await press(/^Bring the .* (in|back)$|^Take the .* over$/);
    await eventually(() => expect(idsOf('job')).toHaveLength(3));
  });

  it('says after undo in the header no more what came in, and nothing asks for a copy of nothing', async () => {
    await bring(await wiped(), 'mine.zip');
    await press(/^Bring .* in$/);
    await screen.findByText(/^19 things came in/);
    await undo();
    expect(await screen.findByRole('heading', { name: 'Nothing is kept here' })).toBeVisible();
    expect(screen.queryByText(/came in/)).toBeNull();
    render(<Standing />);
    expect(screen.getByText('{"state":"copied","daysOld":0,"hasNew":false,"isDue":false}')).toBeVisible();
  });
});

/** How what is here stands to its copies, as the header is told. */
const Standing = () => <p>{JSON.stringify(useCopyStanding(useWorkspace()))}</p>;

describe('a store without a workshop', () => {
  it('says so, takes a copy with one, and goes on', async () => {
    await enter(room);
    await press('Make a copy');
    await screen.findByText(/^Saved as/);
    const { content } = lastHanded();
    screenStore().actions.edit('Clear', [
      { do: 'delete', kind: 'workshop', id: 'workshop' },
      { do: 'delete', kind: 'job', id: 'fair-mugs' },
    ]);
    expect(await screen.findByRole('heading', { name: 'There is no workshop here' })).toBeVisible();
    await bring(content, 'copy.zip');
    await press('Bring the two back');
    expect(await screen.findByRole('heading', { name: 'Copies' })).toBeVisible();
    expect(idsOf('workshop')).toEqual(['workshop']);
    expect(idsOf('job')).toHaveLength(3);
  });
});

/** A button whose code is fetched when it is needed. */
const findLater = (name: string) => screen.findByRole('button', { name }, { timeout: 20_000 });

describe('a workshop whose record cannot be read', () => {
  it('is kept, can be saved as it is, and leaves room for a copy', async () => {
    await screenStore().open();
    const { revision } = screenStore()
      .getState()
      .documents.find(({ id }) => id === 'workshop') ?? { revision: 1 };
    await damage({
      id: 'workshop',
      kind: 'workshop',
      version: 1,
      revision: revision + 1,
      updatedAt: 1,
      body: {},
    });
    leaveScreens();
    await enter(room);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Your workshop cannot be read');
    await userEvent.click(await findLater('Save it as a file'));
    expect(saved.mock.lastCall?.[0]).toBe('pressminute-record-workshop.json');
    expect(await findLater('Choose a file')).toBeVisible();
  });

  const garbled = { id: 'workshop', kind: 'workshop', version: 3, updatedAt: 1 };
  const enterWithGarbled = async (change: Readonly<Record<string, unknown>>) => {
    await screenStore().open();
    await damage({ ...garbled, revision: 9, ...change });
    leaveScreens();
    await enter(room);
  };

  it('gives way to a fresh one in its own money: the record stays kept and shown, and so does all else', async () => {
    const units = { length: 'mm', temperature: 'C', pressure: 'bar', volume: 'mL', distance: 'km' };
    const body = { name: 'Ink Yard', currency: 'SEK', locale: 'sv-SE', units, rates: 'torn' };
    await enterWithGarbled({ body });
    const jobs = idsOf('job');
    await userEvent.click(await findLater('Begin with a fresh workshop'));
    expect(await screen.findByRole('heading', { name: 'Copies' })).toBeVisible();
    expect(bodyOf('workshop', 'workshop')).toMatchObject({ currency: 'SEK', locale: 'sv-SE', units });
    expect(idsOf('job')).toEqual(jobs);
    expect(screenStore().getState().unreadable).toMatchObject([{ id: 'workshop', raw: { body } }]);
    leaveScreens();
    await screenStore().open();
    expect(bodyOf('workshop', 'workshop').currency).toBe('SEK');
    const { file } = await screenStore().actions.makeCopy('everything');
    expect(await screenStore().actions.lookAtCopy(file)).toMatchObject({
      plan: { copy: { unreadable: [{ raw: { body } }] } },
    });
  });

  it('by a newer version waits for that version: nothing may take its place', async () => {
    await enterWithGarbled({ version: 99, body: {} });
    expect(screen.getByText(/Reload the page to get the version that wrote it/)).toBeVisible();
    expect(screen.queryByRole('button', { name: 'Begin with a fresh workshop' })).toBeNull();
  });
});
