// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { AppFrame } from '@/app/_frame/AppFrame';
import { clearScreens, screenStore } from '@/tests/app/_screens/screens';

const place = vi.hoisted(() => ({ path: '/jobs' }));
vi.mock('next/navigation', () => ({ usePathname: () => place.path }));
vi.mock('next/offline', () => ({ useOffline: () => false }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('@/tests/app/_screens/screens');
  return { appDocuments };
});

beforeEach(async () => {
  place.path = '/jobs';
  await screenStore().open();
  render(<AppFrame>x</AppFrame>);
});
afterEach(() => {
  cleanup();
  clearScreens();
});

const setPrice = (askedPrice: number) =>
  act(() =>
    screenStore().actions.edit('Price of a shirt', [
      {
        do: 'change',
        kind: 'job',
        id: 'club-order',
        to: (job) => ({ ...job, lines: job.lines.map((line) => ({ ...line, askedPrice })) }),
      },
    ]),
  );
const setName = (name: string) =>
  act(() =>
    screenStore().actions.edit('Name', [
      { do: 'change', kind: 'job', id: 'club-order', to: (job) => ({ ...job, name }) },
    ]),
  );
const press = (name: RegExp) => userEvent.click(screen.getByRole('button', { name }));

it('undo says what it undid and where, and leads to the field', async () => {
  setPrice(17);
  await press(/^Undo/);
  expect(await screen.findByText('Undone: Price of a shirt, in Ramblers Club shirts')).toBeVisible();
  expect(screen.getByRole('link', { name: 'Go there' })).toHaveAttribute(
    'href',
    '/jobs/club-order#job-lines-0-askedPrice',
  );
});

it('on the page of the job itself it shows the field', async () => {
  cleanup();
  place.path = '/jobs/club-order';
  render(<AppFrame>x</AppFrame>);
  setPrice(17);
  await press(/^Undo/);
  expect(await screen.findByRole('link', { name: 'Show it' })).toHaveAttribute(
    'href',
    '#job-lines-0-askedPrice',
  );
});

it('redo says so too; the note goes with the next edit, or when it is closed', async () => {
  setPrice(17);
  await press(/^Undo/);
  await press(/^Redo/);
  expect(await screen.findByText('Done again: Price of a shirt, in Ramblers Club shirts')).toBeVisible();
  setPrice(18);
  setName('Ours');
  expect(screen.queryByText(/^Done again/)).not.toBeInTheDocument();
  await press(/^Undo/);
  await press(/^Close this note/);
  expect(screen.queryByText(/^Undone/)).not.toBeInTheDocument();
});

it('a job that undo took away is named, and nothing leads to it', async () => {
  const club = screenStore().getState().kinds.job.bodies['club-order'];
  if (club === undefined) throw new Error('the example has the club order');
  act(() =>
    screenStore().actions.edit('New job', [
      { do: 'add', kind: 'job', id: 'mine', body: { ...club, name: 'Mine' } },
    ]),
  );
  await press(/^Undo/);
  expect(await screen.findByText(/^Undone: New job/)).toBeVisible();
  expect(screen.queryByRole('link', { name: /Go there|Show it/ })).not.toBeInTheDocument();
});

it('undo of a refill says that it is taken back, and leads to the record of ink', async () => {
  act(() =>
    screenStore().actions.note('Refill of 3 Nov 2026', [
      { kind: 'inkRefill', body: { day: '2026-11-03', mL: 70 } },
    ]),
  );
  await press(/^Undo/);
  expect(await screen.findByText('Taken back: Refill of 3 Nov 2026')).toBeVisible();
  expect(screen.getByRole('link', { name: 'Go there' })).toHaveAttribute('href', '/workshop#ink-record');
});
