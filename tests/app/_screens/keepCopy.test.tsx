// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { today } from '@/app/_clock/useToday';
import { KeepCopy } from '@/app/_keeping/KeepCopy';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { bodyOf, clearScreens, damage, enter, idsOf, leaveScreens, screenStore, undo } from './screens';

const saved = vi.hoisted(() => vi.fn<(name: string, content: unknown) => void>());
vi.mock('@/app/_keeping/saveFile', () => ({ saveFile: saved }));
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
    expect(name).toBe(`pressminute-${today()}.json`);
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
    expect(await screen.findByText(/it cannot be read as JSON/)).toBeVisible();
  });

  it('names the record of a copy that cannot be read', async () => {
    await enter(room);
    const copy = screenStore().actions.exportAll();
    const documents = copy.documents.map((document) =>
      document.id === 'fair-mugs' ? { ...document, body: { name: '' } } : document,
    );
    await choose(JSON.stringify({ ...copy, documents }));
    await userEvent.click(await screen.findByRole('button', { name: 'Bring it back' }));
    expect(await screen.findByText(/^The job “fair-mugs” cannot be read\. Something in it/)).toBeVisible();
    expect(bodyOf('job', 'fair-mugs').name).toBe('Spring Fair mugs');
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
});
