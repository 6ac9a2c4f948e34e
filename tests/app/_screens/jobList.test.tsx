// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { JobsScreen } from '@/app/_jobs/JobsScreen';
import type { StudyRequest } from '@/app/_studies/studies';
import type { Job } from '@/shared/schemas/job';
import { eventually } from '@/tests/tools/eventually';
import { bodyOf, clearScreens, enter, screenStore, undo } from './screens';

type JobStudyRequest = Extract<StudyRequest, { readonly of: 'job' }>;

const asked = vi.hoisted(() => vi.fn<(request: JobStudyRequest) => void>());
const answers = vi.hoisted(() => ({ areMade: true }));
vi.mock('next/navigation', () => ({ useRouter: () => ({ push: () => undefined }) }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});
/* The sums are the real ones, made on this thread. */
vi.mock('@/app/_studies/shareStudyWorker', async () => {
  const { act: inAct } = await import('@testing-library/react');
  const { jobFigures } = await import('@/lib/costing/jobFigures');
  const { Grid } = await import('@/lib/grid/evaluateGrid');
  const grid = new Grid();
  return {
    shareStudyWorker: () => ({
      worker: {
        ask: (_: string, request: JobStudyRequest, listener: (answered: unknown) => void) => {
          asked(request);
          if (answers.areMade)
            queueMicrotask(() =>
              inAct(() =>
                listener({ kind: 'answered', isLast: true, answer: jobFigures(request.input, grid) }),
              ),
            );
        },
        leave: () => undefined,
        stop: () => undefined,
      },
      giveBack: () => undefined,
    }),
  };
});

beforeEach(() => {
  vi.stubGlobal('Worker', class {});
  answers.areMade = true;
  asked.mockClear();
});
afterEach(() => {
  cleanup();
  clearScreens();
  vi.unstubAllGlobals();
});

const change = (id: string, to: (job: Job) => Job) =>
  act(() => screenStore().actions.edit('Edit', [{ do: 'change', kind: 'job', id, to }]));

const names = () =>
  screen.queryAllByRole('rowheader').map((header) => within(header).getByRole('link').textContent);
const row = (name: string) => screen.getByRole('row', { name: new RegExp(name) });
const search = (text: string) => userEvent.type(screen.getByRole('searchbox'), text);
const sortBy = (name: string) => userEvent.click(screen.getByRole('button', { name }));

describe('the list of jobs', () => {
  it('shows each job with its customer, pieces, price, margin and pay, under headings', async () => {
    await enter(<JobsScreen />);
    const headings = screen.getAllByRole('columnheader').map(({ textContent }) => textContent);
    expect(headings).toEqual([
      'job',
      'customer',
      'state',
      'wanted',
      'pieces',
      'price',
      'margin',
      'pays an hour',
      'what to do with it',
    ]);
    // Margin and pay are the worked example's: 40.5 % and 56.26.
    const club = row('Ramblers Club shirts');
    expect(await within(club).findByText('40.5 %')).toBeVisible();
    expect(club).toHaveTextContent('Exampleton Ramblers Club, Alex Placeholder');
    expect(club).toHaveTextContent('37 shirts');
    expect(club).toHaveTextContent('19.00 to 21.50');
    expect(within(club).getByText('56.26')).toBeVisible();
    expect(within(club).getByRole('link')).toHaveAttribute('href', '/jobs/club-order');
  });

  it('says that a figure is being worked out until it is known', async () => {
    answers.areMade = false;
    await enter(<JobsScreen />);
    expect(within(row('Ramblers Club shirts')).getAllByText('being worked out')).toHaveLength(2);
    expect(screen.getByText('0 of 3 worked out…')).toBeVisible();
  });

  it('says of a stopped job that it has no price, and the stop', async () => {
    await screenStore().open();
    change('fair-mugs', (job) => ({ ...job, printerId: 'gone' }));
    await enter(<JobsScreen />);
    const mugs = row('Spring Fair mugs');
    expect(await within(mugs).findByText('no price')).toBeVisible();
    expect(await within(mugs).findByText(/^Stop: The job names a printer that was removed/)).toBeVisible();
  });

  it('says first how many jobs pay what the maker wants an hour', async () => {
    await screenStore().open();
    // At these prices the mugs make a loss; the club's shirts and the fair's leave more than 18 an hour.
    change('fair-mugs', (job) => ({ ...job, printerId: 'gone' }));
    await enter(<JobsScreen />);
    expect(await screen.findByText('Two jobs pay your 18.00 USD an hour')).toBeVisible();
    expect(screen.getByText(/; one has no price$/)).toBeVisible();
  });

  it('asks once for what was worked out before, as long as nothing of it changes', async () => {
    await enter(<JobsScreen />);
    await within(row('Ramblers Club shirts')).findByText('40.5 %');
    const { length } = asked.mock.calls;
    cleanup();
    await enter(<JobsScreen />);
    expect(within(row('Ramblers Club shirts')).getByText('40.5 %')).toBeVisible();
    expect(asked.mock.calls).toHaveLength(length);
    change('club-order', (job) => ({ ...job, deliveryKm: 500 }));
    expect(asked.mock.calls).toHaveLength(length + 1);
  });

  it('sends the worker the documents a job names, and no others', async () => {
    await enter(<JobsScreen />);
    await within(row('Ramblers Club shirts')).findByText('40.5 %');
    const club = asked.mock.calls.find(([{ input }]) => input.job.name === 'Ramblers Club shirts')?.[0].input;
    expect(Object.keys(club?.blanks ?? {})).toEqual(['white-shirt']);
  });
});

describe('searching the list', () => {
  it.each([
    ['a name', 'ramblers', ['Ramblers Club shirts']],
    ['a customer, accents and case aside', 'ALEX plàceholder', ['Ramblers Club shirts']],
    ['a blank', '11 oz', ['Spring Fair mugs']],
    ['an artwork', 'hill path', ['Ramblers Club shirts']],
    ['nothing there is', 'tumbler', []],
  ])('finds a job by %s', async (_, text, expected) => {
    await enter(<JobsScreen />);
    await search(text);
    expect(names()).toEqual(expected);
  });

  it('tells those who listen how many were found', async () => {
    await enter(<JobsScreen />);
    await search('spring fair');
    expect(screen.getByText('2 jobs found')).toHaveAttribute('role', 'status');
    await search(' nowhere');
    expect(screen.getByText('No job found')).toHaveAttribute('role', 'status');
  });

  it('tells of jobs put away that would be found, and shows them when asked', async () => {
    await screenStore().open();
    change('fair-mugs', (job) => ({ ...job, archivedOn: '2026-11-01' }));
    await enter(<JobsScreen />);
    expect(names()).not.toContain('Spring Fair mugs');
    await search('spring fair');
    expect(screen.getByText('1 job found, 1 more among those put away')).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Show it too' }));
    expect(names()).toContain('Spring Fair mugs');
    expect(row('Spring Fair mugs')).toHaveTextContent('put away on');
  });
});

describe('the order of the list', () => {
  it('follows the heading that is pressed, and turns round when it is pressed again', async () => {
    await enter(<JobsScreen />);
    await sortBy('job');
    expect(names()).toEqual(['Ramblers Club shirts', 'Spring Fair mugs', 'Spring Fair shirts']);
    expect(screen.getByRole('columnheader', { name: 'job' })).toHaveAttribute('aria-sort', 'ascending');
    await sortBy('job');
    expect(names()).toEqual(['Spring Fair shirts', 'Spring Fair mugs', 'Ramblers Club shirts']);
    expect(screen.getByRole('columnheader', { name: 'job' })).toHaveAttribute('aria-sort', 'descending');
  });

  it.each([
    ['job', 'customer', 'state', 'wanted'],
    ['pieces', 'price', 'margin', 'pays an hour'],
  ])(
    'shows its arrow after words and before the heading of figures, which ends with them: %s',
    async (...of) => {
      await enter(<JobsScreen />);
      for (const name of of) {
        const heading = screen.getByRole('button', { name });
        await userEvent.click(heading);
        const arrow = heading.querySelector('svg');
        expect(arrow?.querySelector('path')).not.toBeNull();
        expect(heading.lastChild === arrow).toBe(of.includes('job'));
      }
    },
  );

  it('begins with the best pay, and leaves jobs without a price at the end either way', async () => {
    await screenStore().open();
    change('fair-mugs', (job) => ({ ...job, printerId: 'gone' }));
    await enter(<JobsScreen />);
    await within(row('Spring Fair mugs')).findByText('no price');
    await within(row('Spring Fair shirts')).findByText(/%$/);
    const pays = () =>
      screen
        .getAllByRole('row')
        .slice(1)
        .map((one) => within(one).queryAllByRole('cell')[6]?.querySelector('strong')?.textContent);
    await sortBy('pays an hour');
    const [most, least, none] = pays();
    expect(Number(most)).toBeGreaterThan(Number(least));
    expect(none).toBeUndefined();
    await sortBy('pays an hour');
    expect(pays()).toEqual([least, most, undefined]);
  });
});

describe('a job of the list', () => {
  it('is given a state, by which the list can be narrowed; undo takes it back', async () => {
    await enter(<JobsScreen />);
    await userEvent.selectOptions(screen.getByLabelText('State of Ramblers Club shirts'), 'Quoted');
    expect(bodyOf('job', 'club-order').state).toBe('quoted');
    await userEvent.click(screen.getByRole('button', { name: 'Quoted 1' }));
    expect(names()).toEqual(['Ramblers Club shirts']);
    await undo();
    expect(bodyOf('job', 'club-order').state).toBe('draft');
  });

  it('is put away out of the list and brought back into it', async () => {
    await enter(<JobsScreen />);
    await userEvent.click(screen.getByRole('button', { name: 'More for Spring Fair mugs' }));
    await userEvent.click(screen.getByRole('button', { name: 'Put away Spring Fair mugs' }));
    expect(names()).not.toContain('Spring Fair mugs');
    expect(bodyOf('job', 'fair-mugs').archivedOn).toMatch(/^\d{4}-\d\d-\d\d$/);
    await userEvent.click(screen.getByRole('button', { name: 'Put away too, 1' }));
    await userEvent.click(screen.getByRole('button', { name: 'More for Spring Fair mugs' }));
    await userEvent.click(screen.getByRole('button', { name: 'Bring back Spring Fair mugs' }));
    expect(bodyOf('job', 'fair-mugs').archivedOn).toBeNull();
  });

  it('put away, leaves the focus to the note that brings it back', async () => {
    await enter(<JobsScreen />);
    await userEvent.click(screen.getByRole('button', { name: 'More for Spring Fair mugs' }));
    await userEvent.click(screen.getByRole('button', { name: 'Put away Spring Fair mugs' }));
    const note = screen.getByText('“Spring Fair mugs” is put away.').closest('div');
    expect(note).toHaveFocus();
    await userEvent.click(screen.getByRole('button', { name: 'Bring it back' }));
    await eventually(() => expect(names()).toContain('Spring Fair mugs'));
    expect(note).toHaveFocus();
  });

  it('that a new state takes out of the list leaves the focus to the state that is listed', async () => {
    await enter(<JobsScreen />);
    await userEvent.click(screen.getByRole('button', { name: /^Being priced / }));
    const state = screen.getByLabelText('State of Ramblers Club shirts');
    state.focus();
    await userEvent.selectOptions(state, 'Quoted');
    expect(names()).not.toContain('Ramblers Club shirts');
    expect(screen.getByRole('button', { name: /^Being priced / })).toHaveFocus();
  });
});

describe('a long list', () => {
  it('shows the first forty jobs, and the others when asked', async () => {
    answers.areMade = false;
    await screenStore().open();
    const club = bodyOf('job', 'club-order');
    act(() =>
      screenStore().actions.edit(
        'Many',
        Array.from({ length: 197 }, (_, index) => ({
          do: 'add' as const,
          kind: 'job' as const,
          id: `job-${index}`,
          body: { ...club, name: `Job ${index}` },
        })),
      ),
    );
    await enter(<JobsScreen />);
    expect(names()).toHaveLength(40);
    await userEvent.click(screen.getByRole('button', { name: 'Show 40 more jobs' }));
    expect(names()).toHaveLength(80);
  });
});
