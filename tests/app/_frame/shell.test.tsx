// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { Button } from '@/app/_controls/Button';
import { SaveStatus } from '@/app/_frame/SaveStatus';
import { Shell } from '@/app/_frame/Shell';
import { UndoRedo } from '@/app/_frame/UndoRedo';

/* The folders of the page that is shown, as the router tells them: the address may be any job's. */
const place = vi.hoisted((): { folders: readonly string[] } => ({ folders: [] }));
vi.mock('next/navigation', () => ({ useSelectedLayoutSegments: () => place.folders }));

afterEach(cleanup);

describe('Shell', () => {
  it.each([
    ['/', [], 'Jobs', 'true'],
    ['/jobs', ['jobs'], 'Jobs', 'page'],
    ['/jobs/ramblers', ['jobs', 'one'], 'Jobs', 'true'],
    ['/blanks', ['blanks'], 'Blanks', 'page'],
    ['/workshop', ['workshop'], 'Workshop', 'page'],
  ])('marks the room of %s as the current one', (_, folders, name, current) => {
    place.folders = folders;
    render(<Shell>x</Shell>);
    const marked = screen.getAllByRole('link').filter((link) => link.hasAttribute('aria-current'));
    expect(marked).toEqual([screen.getByRole('link', { name })]);
    expect(marked[0]).toHaveAttribute('aria-current', current);
  });

  it('keeps the rarer rooms behind one word on a phone, which marks that we stand in one and folds when we go on', async () => {
    place.folders = ['blanks'];
    const { rerender } = render(<Shell>x</Shell>);
    const more = screen.getByRole('button', { name: 'More' });
    expect(more).toHaveAttribute('data-marked');
    expect(more).toHaveAttribute('aria-expanded', 'false');
    await userEvent.click(more);
    expect(more).toHaveAttribute('aria-expanded', 'true');
    place.folders = ['jobs'];
    rerender(<Shell>y</Shell>);
    expect(more).toHaveAttribute('aria-expanded', 'false');
    expect(more).not.toHaveAttribute('data-marked');
  });

  it('starts with a link past the header, to the content', async () => {
    render(<Shell>the docket</Shell>);
    await userEvent.tab();
    expect(screen.getByRole('link', { name: 'Skip to the content' })).toHaveFocus();
    expect(document.getElementById('content')).toBe(screen.getByRole('main'));
  });

  it('gives the end of the header to whoever tells what is kept', () => {
    const place: { end: HTMLElement | null } = { end: null };
    const take = (end: HTMLElement | null) => {
      place.end = end;
    };
    render(<Shell status={take}>the docket</Shell>);
    expect(screen.getByRole('banner')).toContainElement(place.end);
  });
});

describe('SaveStatus', () => {
  it('says quietly when all was kept', () => {
    render(<SaveStatus kept={{ kind: 'kept', at: '14:02' }} />);
    expect(screen.getByText(/Kept/)).toHaveTextContent('Kept on this device · 14:02');
    expect(screen.queryByRole('alert')).not.toBeInTheDocument();
  });

  it('leads to the copies where there is something that a copy would save', () => {
    render(<SaveStatus kept={{ kind: 'kept', at: '14:02' }} leadsToCopies />);
    const link = screen.getByRole('link', { name: 'Kept on this device: make a copy' });
    expect(link).toHaveAttribute('href', '/workshop#copies');
  });

  it('says aloud when it was not, why, and lets it be tried again', async () => {
    const onRetry = vi.fn();
    render(<SaveStatus kept={{ kind: 'notKept', why: 'The disk is full.' }} onRetry={onRetry} />);
    expect(screen.getByRole('alert')).toHaveTextContent('Not kept. The disk is full.');
    await userEvent.click(screen.getByRole('button', { name: 'Try again' }));
    expect(onRetry).toHaveBeenCalledTimes(1);
  });
});

describe('UndoRedo', () => {
  it('names what it takes back, and keeps a button that has nothing to do reachable', async () => {
    const onUndo = vi.fn();
    const onRedo = vi.fn();
    render(<UndoRedo undo="L from 10 to 11" redo={null} onUndo={onUndo} onRedo={onRedo} />);
    await userEvent.click(screen.getByRole('button', { name: 'Undo: L from 10 to 11' }));
    const redo = screen.getByRole('button', { name: 'Redo' });
    await userEvent.click(redo);
    expect(onUndo).toHaveBeenCalledTimes(1);
    expect(onRedo).not.toHaveBeenCalled();
    expect(redo).toHaveAttribute('aria-disabled', 'true');
    expect(redo).toHaveFocus();
  });
});

describe('Button', () => {
  it('does nothing while blocked, and says why', async () => {
    const onPress = vi.fn();
    render(
      <Button onPress={onPress} blockedBy="Nothing to keep yet">
        Keep
      </Button>,
    );
    await userEvent.click(screen.getByRole('button', { name: 'Keep' }));
    expect(onPress).not.toHaveBeenCalled();
    expect(screen.getByRole('button')).toHaveAccessibleDescription('Nothing to keep yet');
  });
});
