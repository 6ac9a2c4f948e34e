// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { KeepCopy } from '@/app/_keeping/KeepCopy';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { bodyOf, clearScreens, damage, enter, idsOf, leaveScreens, screenStore, undo } from './screens';

const saved = vi.hoisted(() => vi.fn<(name: string, content: unknown) => void>());
vi.mock('@/app/_files/saveFile', () => ({ saveFile: saved }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});

beforeEach(() => saved.mockClear());
afterEach(() => {
  cleanup();
  clearScreens();
});

const room = (
  <WithWorkspace>
    {(workspace) => (
      <>
        <h1>Copies</h1>
        <KeepCopy workspace={workspace} level={2} />
      </>
    )}
  </WithWorkspace>
);

const choose = (text: string) =>
  userEvent.upload(
    screen.getByLabelText('File to bring back'),
    new File([text], 'copy.json', { type: 'application/json' }),
  );

describe('KeepCopy', () => {
  it('saves everything as one file, and brings it back as one step', async () => {
    await enter(room);
    await userEvent.click(screen.getByRole('button', { name: 'Save everything as a file' }));
    const [name, content] = saved.mock.lastCall ?? [];
    expect(name).toBe(`pressminute-${TEST_DAY}.json`);
    screenStore().actions.edit('Remove', [{ do: 'delete', kind: 'job', id: 'fair-mugs' }]);
    await choose(JSON.stringify(content));
    await userEvent.click(await screen.findByRole('button', { name: 'Bring it back' }));
    expect(await screen.findByText(/“copy.json” is back\. Undo brings what was here before\./)).toBeVisible();
    expect(idsOf('job')).toContain('fair-mugs');
    await undo();
    expect(idsOf('job')).not.toContain('fair-mugs');
  });

  it('says of a file that is no copy what it is not, and changes nothing', async () => {
    await enter(room);
    await choose('{"format":"something else"}');
    await userEvent.click(await screen.findByRole('button', { name: 'Bring it back' }));
    expect(await screen.findByText(/This file is no copy saved from here/)).toBeVisible();
    expect(screen.getByText('Nothing here was changed.')).toBeVisible();
    expect(idsOf('job')).toHaveLength(3);
  });

  it('says of a file that is no JSON that it cannot be read', async () => {
    await enter(room);
    await choose('a,b,c');
    expect(await screen.findByText(/no file saved from here: it cannot be read/)).toBeVisible();
  });

  it('names the record of a copy that cannot be read', async () => {
    await enter(room);
    const copy = screenStore().actions.exportAll();
    const documents = copy.documents.map((document) =>
      document.id === 'fair-mugs' ? { ...document, body: { name: '' } } : document,
    );
    await choose(JSON.stringify({ ...copy, documents }));
    await userEvent.click(await screen.findByRole('button', { name: 'Bring it back' }));
    expect(await screen.findByText(/^A job without a name cannot be read\. Something in it/)).toBeVisible();
    expect(bodyOf('job', 'fair-mugs').name).toBe('Spring Fair mugs');
  });
});

/** A button whose code is fetched when it is needed. */
const findLater = (name: string) => screen.findByRole('button', { name }, { timeout: 20_000 });

/** A copy of what is here with its workshop taken out, or left in as a deleted one. */
const withoutWorkshop = (rest: 'gone' | 'deleted'): string => {
  const copy = screenStore().actions.exportAll();
  const documents =
    rest === 'gone'
      ? copy.documents.filter(({ kind }) => kind !== 'workshop')
      : copy.documents.map((one) => (one.kind === 'workshop' ? { ...one, deletedAt: 1 } : one));
  return JSON.stringify({ ...copy, documents });
};

describe('a copy that holds no workshop', () => {
  it.each(['gone', 'deleted'] as const)(
    'is not brought back unasked where it is %s: what is missing is told, and the rest offered beside this workshop',
    async (rest) => {
      await enter(room);
      const file = withoutWorkshop(rest);
      screenStore().actions.edit('Remove', [{ do: 'delete', kind: 'job', id: 'fair-mugs' }]);
      await choose(file);
      await userEvent.click(await screen.findByRole('button', { name: 'Bring it back' }));
      expect(await screen.findByText(/^The file holds no workshop/)).toBeVisible();
      expect(screen.getByText('Nothing here was changed.')).toBeVisible();
      expect(idsOf('job')).not.toContain('fair-mugs');
      await userEvent.click(screen.getByRole('button', { name: 'Bring it back beside this workshop' }));
      expect(await screen.findByText(/“copy.json” is back/)).toBeVisible();
      expect(idsOf('job')).toContain('fair-mugs');
      expect(idsOf('workshop')).toEqual(['workshop']);
      expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Copies');
    },
  );
});

describe('a store without a workshop', () => {
  it('says so and offers a fresh one, beside what a copy without a workshop brings', async () => {
    await screenStore().open();
    const file = withoutWorkshop('gone');
    screenStore().actions.edit('Clear', [
      { do: 'delete', kind: 'workshop', id: 'workshop' },
      { do: 'delete', kind: 'job', id: 'fair-mugs' },
    ]);
    await enter(room);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('There is no workshop here');
    await choose(file);
    await userEvent.click(await screen.findByRole('button', { name: 'Bring it back' }));
    await userEvent.click(await screen.findByRole('button', { name: 'Bring the rest back' }));
    expect(await screen.findByText(/“copy.json” is back/)).toBeVisible();
    expect(idsOf('job')).toContain('fair-mugs');
    await userEvent.click(await findLater('Begin with a fresh workshop'));
    expect(await screen.findByRole('heading', { name: 'Copies' })).toBeVisible();
    expect(idsOf('workshop')).toEqual(['workshop']);
    expect(idsOf('job')).toHaveLength(3);
  });
});

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
    await userEvent.click(screen.getByRole('button', { name: 'Save it as a file' }));
    expect(saved.mock.lastCall?.[0]).toBe('pressminute-record-workshop.json');
    expect(screen.getByRole('button', { name: 'Bring a file back' })).toBeVisible();
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
    expect(screenStore().actions.exportAll().unreadable).toMatchObject([{ body }]);
  });

  it('by a newer version waits for that version: nothing may take its place', async () => {
    await enterWithGarbled({ version: 99, body: {} });
    expect(screen.getByText(/Reload the page to get the version that wrote it/)).toBeVisible();
    expect(screen.queryByRole('button', { name: 'Begin with a fresh workshop' })).toBeNull();
  });
});
