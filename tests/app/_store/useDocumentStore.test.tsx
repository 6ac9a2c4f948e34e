// @vitest-environment jsdom
import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { StrictMode } from 'react';
import { renderToString } from 'react-dom/server';
import { afterEach, describe, expect, it } from 'vitest';
import { useDocumentStore } from '@/app/_store/useDocumentStore';
import { watchPage } from '@/app/_tab/watchPage';
import { aJobBody } from '@/tests/lib/stored/smallRegistry';
import { aDevice, openTab, rowsOf, type SmallStore } from './tabs';

afterEach(cleanup);

const JobScreen = ({ store }: { readonly store: SmallStore }) => {
  const { status, documents, kept, edit, undo, undoLabel, canUndo } = useDocumentStore(store);
  const job = documents.find((document) => document.kind === 'job');
  if (status !== 'ready' || job === undefined) return <p>{status}</p>;
  const rename = (name: string) =>
    edit('Name of the job', [{ do: 'change', kind: 'job', id: job.id, to: (body) => ({ ...body, name }) }]);
  return (
    <>
      <input aria-label="Name" value={job.body.name} onChange={({ target }) => rename(target.value)} />
      <p role="status">{kept.state}</p>
      <button type="button" disabled={!canUndo} onClick={() => void undo()}>
        Undo {undoLabel}
      </button>
    </>
  );
};

const examples = {
  label: 'Examples',
  load: async () => [{ id: 'job-1', kind: 'job' as const, body: aJobBody() }],
};

describe('useDocumentStore', () => {
  it('opens the store, shows an edit in the same moment, tells when it is kept, and undoes it', async () => {
    const device = aDevice();
    const store = device.tab('here', { examples });
    render(
      <StrictMode>
        <JobScreen store={store} />
      </StrictMode>,
    );
    expect(screen.getByText('opening')).toBeDefined();
    const field = await screen.findByLabelText<HTMLInputElement>('Name');
    fireEvent.change(field, { target: { value: 'Team' } });
    expect(field.value).toBe('Team');
    expect(screen.getByRole('status').textContent).toBe('keeping');
    await act(() => store.flush());
    expect(screen.getByRole('status').textContent).toBe('kept');
    const undo = screen.getByRole<HTMLButtonElement>('button', { name: 'Undo Name of the job' });
    fireEvent.click(undo);
    await screen.findByDisplayValue('Club order');
    expect(undo.disabled).toBe(true);
    expect(await rowsOf(device.factory, 'documents')).toMatchObject([{ body: { name: 'Club order' } }]);
  });

  it('is the opening state on the server, where nothing is opened', () => {
    const touched = () => {
      throw new Error('The store was touched.');
    };
    const store = aDevice().tab('here', { openBackend: touched, openMessages: touched, watchPage: touched });
    expect(renderToString(<JobScreen store={store} />)).toBe('<p>opening</p>');
  });
});

describe('a page that is left', () => {
  it.each([
    ['closed', () => window.dispatchEvent(new Event('pagehide'))],
    ['put into the background', () => hidePage()],
  ])('tries once more to keep what is not kept when it is %s', async (_how, leave) => {
    const device = aDevice();
    const store = await openTab(device, 'here', { examples, watchPage });
    const { fillTheDisk } = await import('./fullDisk');
    const { makeRoom } = fillTheDisk();
    store.actions.edit('Change', [
      { do: 'change', kind: 'job', id: 'job-1', to: (body) => ({ ...body, name: 'Team' }) },
    ]);
    await store.flush();
    makeRoom();
    leave();
    await expect.poll(() => rowsOf(device.factory, 'documents')).toMatchObject([{ body: { name: 'Team' } }]);
  });
});

const hidePage = (): void => {
  Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true });
  document.dispatchEvent(new Event('visibilitychange'));
  Reflect.deleteProperty(document, 'visibilityState');
};
