// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { FrontScreen } from '@/app/_jobs/FrontScreen';
import { JobScreen } from '@/app/_jobs/JobScreen';
import { JobsScreen } from '@/app/_jobs/JobsScreen';
import { bodyOf, clearScreens, damage, enter, idsOf, leaveScreens, opening, screenStore } from './screens';

const push = vi.hoisted(() => vi.fn<(href: string) => void>());
vi.mock('next/navigation', () => ({ useRouter: () => ({ push }) }));
vi.mock('@/app/_docket/screen/DocketSections', async () => {
  const { useJob } = await import('@/app/_docket/common/useJob');
  return { DocketSections: () => <h1>Docket of {useJob().jobId}</h1> };
});
// No sums are made here.
vi.mock('@/app/_pricing/priceService', () => ({
  startPriceService: () => ({ ask: () => undefined, leave: () => undefined, stop: () => undefined }),
}));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});

beforeEach(() => push.mockClear());
afterEach(() => {
  cleanup();
  clearScreens();
});

/** The id a pushed address names. */
const pushed = (): string => push.mock.lastCall?.[0].replace('/jobs/', '') ?? '';

describe('FrontScreen', () => {
  it('shows the finished example at once on a first visit, and says that it is one', async () => {
    await enter(<FrontScreen sent={null} band={null} />);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Docket of club-order');
    expect(screen.getByText(/This is an invented example/)).toBeVisible();
    expect(screen.getByRole('link', { name: 'start your own workshop' })).toHaveAttribute('href', '/start');
  });

  it('shows the job last looked at after that', async () => {
    await enter(<JobScreen jobId="fair-mugs" />);
    cleanup();
    await enter(<FrontScreen sent={null} band={null} />);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Docket of fair-mugs');
  });

  it('falls back to the example where the job last looked at is gone', async () => {
    localStorage.setItem('pressminute-last-job', 'gone');
    await enter(<FrontScreen sent={null} band={null} />);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Docket of club-order');
  });
});

describe('JobScreen', () => {
  it('says calmly that a job is not here, and leads to those that are', async () => {
    await enter(<JobScreen jobId="gone" />);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('This job is not here');
    expect(screen.getByRole('link', { name: 'To the jobs' })).toHaveAttribute('href', '/jobs');
  });

  it('remembers no job that is not here', async () => {
    await enter(<JobScreen jobId="fair-mugs" />);
    cleanup();
    await enter(<JobScreen jobId="gone" />);
    cleanup();
    await enter(<FrontScreen sent={null} band={null} />);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Docket of fair-mugs');
  });

  it('calls no job an example once it is removed', async () => {
    await enter(<JobScreen jobId="fair-mugs" />);
    expect(screen.getByText(/This is an invented example/)).toBeVisible();
    act(() => screenStore().actions.edit('Removed', [{ do: 'delete', kind: 'job', id: 'fair-mugs' }]));
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('This job is not here');
    expect(screen.queryByText(/This is an invented example/)).not.toBeInTheDocument();
  });
});

describe('JobsScreen', () => {
  it('begins a job on what was printed last, with twelve pieces in a typical mix, and opens it', async () => {
    await enter(<JobsScreen />);
    await userEvent.click(screen.getByRole('button', { name: 'New job' }));
    const job = bodyOf('job', pushed());
    expect(job).toMatchObject({ name: 'New job', printerId: 'desk-printer', sheetId: 'letter' });
    expect(job.lines[0]?.blankId).toBe('white-shirt');
    expect(job.lines[0]?.quantities.map(({ quantity }) => quantity)).toEqual([1, 3, 4, 2, 1, 1]);
    expect(bodyOf('artwork', job.lines[0]?.placements[0]?.artworkId ?? '').name).toBe('First picture');
  });

  it('copies a job under a name of its own without its day, opens the copy and says what was left out', async () => {
    await screenStore().open();
    act(() =>
      screenStore().actions.edit('Later', [
        {
          do: 'change',
          kind: 'job',
          id: 'club-order',
          to: (job) => ({
            ...job,
            state: 'done',
            archivedOn: '2026-11-01',
            waivers: [{ finding: 'SUB-01', lineId: null, placementId: null, reason: 'they saw a sample' }],
          }),
        },
      ]),
    );
    await enter(<JobsScreen />);
    await userEvent.click(screen.getByRole('button', { name: /^Put away too/ }));
    await userEvent.click(screen.getByRole('button', { name: 'More for Ramblers Club shirts' }));
    await userEvent.click(screen.getByRole('button', { name: 'Duplicate Ramblers Club shirts' }));
    expect(bodyOf('job', pushed())).toEqual({
      ...bodyOf('job', 'club-order'),
      name: 'Copy of Ramblers Club shirts',
      state: 'draft',
      archivedOn: null,
      wantedOn: null,
      waivers: [],
    });
    cleanup();
    await enter(<JobScreen jobId={pushed()} />);
    const note = screen.getByText(/^This is a copy of/);
    expect(note).toHaveTextContent(
      'This is a copy of Ramblers Club shirts. Left out: the day it was wanted,',
    );
    expect(note).toHaveTextContent('1 stop passed with a reason, because a reason holds for one order.');
    // The copy of an example is the maker's own.
    expect(screen.queryByText(/invented example/)).not.toBeInTheDocument();
  });

  it('of a maker with a workshop of their own offers nobody to start one', async () => {
    await screenStore().open();
    act(() =>
      screenStore().actions.edit('Own', [
        {
          do: 'change',
          kind: 'workshop',
          id: 'workshop',
          to: (workshop) => ({
            ...workshop,
            printers: workshop.printers.map((printer) => ({ ...printer, id: 'printer' })),
          }),
        },
      ]),
    );
    await enter(<JobsScreen />);
    expect(screen.getByText(/^The jobs of the example are invented/)).toBeVisible();
    expect(screen.queryByRole('link', { name: /your own workshop/ })).not.toBeInTheDocument();
    cleanup();
    await enter(<JobScreen jobId="club-order" />);
    expect(screen.getByText(/^This is an invented example/)).toBeVisible();
    expect(screen.queryByRole('link', { name: /your own workshop/ })).not.toBeInTheDocument();
    expect(screen.getByRole('link', { name: 'Start a job of your own' })).toHaveAttribute('href', '/start');
  });

  it('names the tab after the job that is open', async () => {
    await enter(<JobScreen jobId="club-order" />);
    expect(document.title).toBe('Ramblers Club shirts · Pressminute');
    leaveScreens();
    await enter(<JobScreen jobId="fair-mugs" />);
    expect(document.title).toBe('Spring Fair mugs · Pressminute');
  });

  it('removes a job and brings it back by the button that takes the focus', async () => {
    await enter(<JobsScreen />);
    await userEvent.click(screen.getByRole('button', { name: 'More for Spring Fair mugs' }));
    await userEvent.click(screen.getByRole('button', { name: 'Remove Spring Fair mugs' }));
    expect(idsOf('job')).not.toContain('fair-mugs');
    expect(screen.getByText('“Spring Fair mugs” is removed.').parentElement).toHaveFocus();
    await userEvent.click(screen.getByRole('button', { name: 'Bring it back' }));
    expect(await screen.findByRole('link', { name: 'Spring Fair mugs' })).toBeVisible();
    expect(screen.queryByRole('button', { name: 'Bring it back' })).not.toBeInTheDocument();
  });

  it('shows a record that cannot be read, with its reason, and keeps it', async () => {
    await screenStore().open();
    await damage({ id: 'broken' });
    leaveScreens();
    await enter(<JobsScreen />);
    expect(screen.getByRole('heading', { name: 'Kept, but not readable' })).toBeVisible();
    expect(await screen.findByText(/^A record cannot be read\. It stays kept as it is\./)).toBeVisible();
    expect(screen.getByRole('button', { name: 'Save it as a file' })).toBeVisible();
  });

  it('says why nothing can be opened, and tries again', async () => {
    opening.failure = { state: 'failed', why: 'cannotOpen' };
    await enter(<JobsScreen />);
    expect(screen.getByRole('alert')).toHaveTextContent('Nothing is lost: close other tabs of this page');
    opening.failure = null;
    await userEvent.click(screen.getByRole('button', { name: 'Try again' }));
    expect(await screen.findByRole('heading', { name: 'Jobs' })).toBeVisible();
  });
});
