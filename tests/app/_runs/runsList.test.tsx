// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import './runStage';
import { act, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { RunsScreen } from '@/app/_runs/RunsScreen';
import { CLUB_ENQUIRY_ID } from '@/lib/examples/clubEnquiry';
import { FIRST_JOB_ID } from '@/lib/examples/exampleDocuments';
import { SPRING_FAIR_ID } from '@/lib/examples/springFair';
import { addDays } from '@/shared/days';
import { type Run, runSchema } from '@/shared/schemas/making/run';
import { bodyOf, enter, idsOf, screenStore } from '@/tests/app/_screens/screens';
import { clubFacts, clubStandard } from '@/tests/fixtures/clubStandard';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';
import { push } from './runStage';

const add = (id: string, fields: Partial<Run>) =>
  act(async () => {
    const body = runSchema.parse({ name: id, ...fields });
    screenStore().actions.edit('Add', [{ do: 'add', kind: 'run', id, body }]);
  });
const club = { jobId: FIRST_JOB_ID, orderId: null, stallDayId: null };
const forOrder = { ...club, orderId: CLUB_ENQUIRY_ID };

describe('the list of runs', () => {
  it('offers what waits to be made first, and makes a run of it with one press', async () => {
    await enter(<RunsScreen />);
    const waiting = screen.getByRole('region', { name: 'Waits to be made' });
    // The enquiry of the example was not accepted: the fair alone waits.
    expect(within(waiting).getAllByRole('listitem')).toHaveLength(1);
    await userEvent.click(within(waiting).getByRole('button', { name: /Make it: Exampleton Spring Fair/ }));
    const [id = ''] = idsOf('run');
    const { name, works } = bodyOf('run', id);
    expect(name).toBe('Exampleton Spring Fair');
    expect(works.every(({ stallDayId }) => stallDayId === SPRING_FAIR_ID)).toBe(true);
    expect(push).toHaveBeenCalledWith(`/making/${id}`);
    expect(screen.queryByRole('region', { name: 'Waits to be made' })).toBeNull();
  });

  it('before the first run plans the job changed last with one press, for the order it stands in', async () => {
    await enter(<RunsScreen />);
    const open = screen.getByRole('region', { name: 'To be made' });
    await userEvent.click(within(open).getByRole('button', { name: 'Plan Ramblers Club shirts' }));
    const [id = ''] = idsOf('run');
    expect(bodyOf('run', id)).toMatchObject({ name: 'Ramblers Club shirts', works: [forOrder] });
    expect(push).toHaveBeenCalledWith(`/making/${id}`);
    await act(async () => {
      screenStore().actions.edit('Put away', [
        { do: 'change', kind: 'run', id, to: (run) => ({ ...run, archivedOn: TEST_DAY }) },
      ]);
    });
    // Whoever has made a run knows how.
    expect(within(open).queryByRole('button', { name: /^Plan / })).toBeNull();
  });

  it('says of a closed run what it came to', async () => {
    await enter(<RunsScreen />);
    const runId = 'club-shirts';
    await add(runId, { works: [club] });
    const { actions } = screenStore();
    await act(() =>
      actions.issue('Begin', {
        kind: 'runStandard',
        about: { kind: 'run', id: runId },
        series: `runStandard ${runId}`,
        body: (number) => ({ ...clubStandard(), runId, number, issuedOn: TEST_DAY }),
      }),
    );
    const { pressings, actuals, hours } = clubFacts({ reprints: 622 });
    const closed = { standardId: null, day: TEST_DAY, step: { what: 'closed' as const, note: '' } };
    const entries = [...pressings, ...actuals, ...hours, { kind: 'runStep', body: closed }].map(
      ({ kind, body }) => ({
        kind,
        body: 'for' in body ? { ...body, for: { kind: 'run', id: runId } } : { ...body, runId },
      }),
    );
    await act(async () => {
      actions.note('Made', entries as Parameters<typeof actions.note>[1]);
    });
    const done = await screen.findByRole('region', { name: 'Done' });
    // As the worked example has them.
    expect(await within(done).findByText('37 of 37 good, profit 254.44 of 288.37 USD')).toBeVisible();
  });

  it('has the next run with its answer', async () => {
    await enter(<RunsScreen />);
    const evening = { id: 'e', day: addDays(TEST_DAY, 1), fromMinute: 18 * 60, minutes: 300 };
    await add('Club shirts', { works: [club], ownBlocks: [evening] });
    const open = screen.getByRole('region', { name: 'To be made' });
    await eventually(() =>
      expect(open).toHaveTextContent(/6:00\s?PM to 10:39\s?PM: 37 pieces, one heating-up/),
    );
  });

  it('has what is under way, done and put away apart', async () => {
    await enter(<RunsScreen />);
    await add('Begun', { works: [club] });
    await add('Over', { works: [club] });
    await add('Away', { archivedOn: TEST_DAY });
    await act(async () => {
      const step = (runId: string, what: 'begun' | 'closed') =>
        ({
          kind: 'runStep',
          body: {
            ...{ runId, standardId: null, day: TEST_DAY },
            step: what === 'closed' ? { what, note: '' } : { what },
          },
        }) as const;
      screenStore().actions.note('Steps', [
        step('Begun', 'begun'),
        step('Over', 'begun'),
        step('Over', 'closed'),
      ]);
    });
    expect(screen.getByRole('region', { name: 'Under way' })).toHaveTextContent('begun today');
    expect(screen.getByRole('region', { name: 'Done' })).toHaveTextContent('closed today');
    expect(screen.getByRole('button', { name: /1 run put away/ })).toBeVisible();
  });

  it('begins with the order that the address asks for, accepted or not', async () => {
    window.location.hash = `#order-${CLUB_ENQUIRY_ID}`;
    await enter(<RunsScreen />);
    await userEvent.click(await screen.findByRole('button', { name: 'Plan it' }));
    window.location.hash = '';
    const [id = ''] = idsOf('run');
    expect(bodyOf('run', id).works).toEqual([
      { jobId: FIRST_JOB_ID, orderId: CLUB_ENQUIRY_ID, stallDayId: null },
    ]);
  });

  it('takes several jobs into a new run, and asks for one at least', async () => {
    await enter(<RunsScreen />);
    await userEvent.click(screen.getByRole('button', { name: 'New run' }));
    const plan = await screen.findByRole('button', { name: 'Plan it' });
    expect(plan).toHaveAttribute('title', expect.stringContaining('Choose at least one'));
    const jobs = screen.getByRole('group', { name: 'Jobs' });
    const [first, second] = within(jobs).getAllByRole('checkbox');
    if (first === undefined || second === undefined) throw new Error('the example has several jobs');
    await userEvent.click(first);
    await userEvent.click(second);
    await userEvent.click(plan);
    const [id = ''] = idsOf('run');
    const { works } = bodyOf('run', id);
    expect(works).toHaveLength(2);
    // The club's shirts are its order's, however they are chosen.
    expect(works.find(({ jobId }) => jobId === FIRST_JOB_ID)?.orderId).toBe(CLUB_ENQUIRY_ID);
  });
});
