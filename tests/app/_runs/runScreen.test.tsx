// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import './runStage';
import { act, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { RunScreen } from '@/app/_runs/run/RunScreen';
import { CLUB_ENQUIRY_ID } from '@/lib/examples/clubEnquiry';
import { FIRST_JOB_ID } from '@/lib/examples/exampleDocuments';
import { addDays } from '@/shared/days';
import { type Run, runSchema } from '@/shared/schemas/making/run';
import { bodyOf, enter, idsOf, screenStore, undo } from '@/tests/app/_screens/screens';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';
import { push } from './runStage';

const RUN = 'club-run';
const tomorrow = addDays(TEST_DAY, 1);
/** The worked example's evening: 18:00 to 23:00. */
const evening = { id: 'evening', day: tomorrow, fromMinute: 18 * 60, minutes: 300 };

const open = async (fields: Partial<Run> = {}) => {
  await enter(<RunScreen runId={RUN} />);
  const works = [{ jobId: FIRST_JOB_ID, orderId: null, stallDayId: null }];
  const body = runSchema.parse({ name: 'Club shirts', works, ownBlocks: [evening], ...fields });
  await act(async () => {
    screenStore().actions.edit('Add', [{ do: 'add', kind: 'run', id: RUN, body }]);
  });
};
const plate = () => screen.getByRole('region', { name: 'The run in short' });
const run = () => bodyOf('run', RUN);

describe('a run', () => {
  it('answers when it is pressed, what comes of it and how often the press is heated up', async () => {
    await open();
    // Worked by hand: 25 min of set-up from 18:00, backs, break, badges, units, packing, clean-down to 22:39.
    await eventually(() =>
      expect(plate()).toHaveTextContent(/6:00\s?PM to 10:39\s?PM: 37 pieces, one heating-up/),
    );
    expect(plate()).toHaveTextContent('Not begun.');
  });

  it('has every part of the clock with its times', async () => {
    await open();
    const table = await screen.findByRole('table', { name: 'The clock' });
    const row = (name: RegExp) => within(table).getByRole('row', { name });
    // The worked run: back from 20:04 after its tests, badges 20:14 to 21:33, units to 22:17, packed 22:29.
    expect(row(/^Chest badge/)).toHaveTextContent(/8:14\s?PM.*9:33\s?PM/);
    expect(row(/Inspect, fold/)).toHaveTextContent(/9:33\s?PM.*10:17\s?PM/);
    expect(row(/^Pack/)).toHaveTextContent(/10:17\s?PM.*10:29\s?PM/);
    expect(row(/Clean down/)).toHaveTextContent(/10:29\s?PM.*10:39\s?PM/);
  });

  it('tells what a second heating-up takes before it is accepted', async () => {
    const short = [0, 1, 2, 3, 4].map((at) => ({
      ...{ ...evening, id: `e${at}`, day: addDays(tomorrow, at), minutes: 160 },
    }));
    await open({ ownBlocks: short });
    const accept = await screen.findByRole('button', { name: /Accept two heatings-up/ });
    // 35 min of set-up and clean-down and 4 mL of ink for the one beyond the price.
    expect(screen.getByText(/beyond what is priced takes 35 min and 4 mL of ink/)).toBeVisible();
    expect(run().heatings).toBeNull();
    await userEvent.click(accept);
    expect(run().heatings).toBe(2);
    await eventually(() => expect(plate()).toHaveTextContent('two heatings-up'));
  });

  it('names the design of each print where there are several, and leaves out what takes no time', async () => {
    await enter(<RunScreen runId={RUN} />);
    await act(async () => {
      const second = { ...bodyOf('job', FIRST_JOB_ID), name: 'Second club' };
      screenStore().actions.edit('Copy', [{ do: 'add', kind: 'job', id: 'second', body: second }]);
      const works = [FIRST_JOB_ID, 'second'].map((jobId) => ({ jobId, orderId: null, stallDayId: null }));
      const long = [{ ...evening, fromMinute: 480, minutes: 900 }];
      const body = runSchema.parse({ name: 'Both', works, ownBlocks: long });
      screenStore().actions.edit('Add', [{ do: 'add', kind: 'run', id: RUN, body }]);
    });
    const table = await screen.findByRole('table', { name: 'The clock' });
    const prints = within(table).getAllByRole('rowheader', { name: /Back picture|Chest badge/ });
    // A print in which a break falls has a row before it and one after.
    expect([...new Set(prints.map(({ textContent }) => textContent))]).toEqual([
      'Test presses: Back picture, Ramblers Club shirts',
      'Back picture, Ramblers Club shirts',
      'Test presses: Back picture, Second club',
      'Back picture, Second club',
      'Chest badge, Ramblers Club shirts',
      'Chest badge, Second club',
    ]);
    expect(within(table).queryByText('0 min')).toBeNull();
  });

  it('says of a job that is done too late by how many days, by the day its order wants it', async () => {
    await enter(<RunScreen runId={RUN} />);
    await act(async () => {
      const { actions } = screenStore();
      const { name } = bodyOf('job', FIRST_JOB_ID);
      expect(name).toBe('Ramblers Club shirts');
      actions.edit('Wanted', [
        { do: 'change', kind: 'order', id: CLUB_ENQUIRY_ID, to: (now) => ({ ...now, wantedOn: TEST_DAY }) },
      ]);
      const works = [{ jobId: FIRST_JOB_ID, orderId: CLUB_ENQUIRY_ID, stallDayId: null }];
      // Pressed and packed on the evening six days after.
      const own = [{ ...evening, day: addDays(TEST_DAY, 6) }];
      const body = runSchema.parse({ name: 'Late', works, ownBlocks: own });
      actions.edit('Add', [{ do: 'add', kind: 'run', id: RUN, body }]);
    });
    expect(
      await screen.findByText(/Ramblers Club shirts is done on .*, 6 days after the day it is wanted/),
    ).toBeVisible();
  });

  it('says that a block ends when it begins, and has no clock until it is mended', async () => {
    await open({ ownBlocks: [{ ...evening, minutes: 1440 }] });
    expect(await screen.findByText(/ends when it begins, at 6:00\s?PM/)).toBeVisible();
    expect(plate()).toHaveTextContent('No clock yet.');
  });

  it('begins with its standard and one step, and moves nothing else', async () => {
    await open();
    const begin = await screen.findByRole('button', { name: 'Begin' });
    await eventually(() => expect(begin).not.toHaveAttribute('aria-disabled'));
    await userEvent.click(begin);
    await eventually(() => expect(screen.getByRole('link', { name: 'To the press' })).toBeVisible());
    const { papers, entries } = screenStore().getState();
    expect(papers.runStandard.map(({ body }) => [body.runId, body.title, body.issuedOn])).toEqual([
      [RUN, 'Club shirts', TEST_DAY],
    ]);
    const [standard] = papers.runStandard;
    expect(entries.runStep.map(({ body }) => body)).toEqual([
      { runId: RUN, standardId: standard?.id, day: TEST_DAY, step: { what: 'begun' } },
    ]);
    // Full cost of the worked example.
    expect(standard?.body.works[0]?.fullCost).toBeCloseTo(411.79, 1);
    expect(entries.stockMove).toEqual([]);
    await undo();
    await eventually(() => expect(plate()).toHaveTextContent('Not begun.'));
  });

  it('says that a job changed since, and keeps the frozen standard', async () => {
    await open();
    const begin = await screen.findByRole('button', { name: 'Begin' });
    await eventually(() => expect(begin).not.toHaveAttribute('aria-disabled'));
    await userEvent.click(begin);
    await screen.findByRole('link', { name: 'To the press' });
    const frozen = JSON.stringify(screenStore().getState().papers.runStandard[0]?.body);
    await act(async () => {
      screenStore().actions.edit('Price', [
        {
          do: 'change',
          kind: 'job',
          id: FIRST_JOB_ID,
          to: (job) => ({ ...job, lines: job.lines.map((line) => ({ ...line, askedPrice: 21 })) }),
        },
      ]);
    });
    expect(await screen.findByText(/changed since the run began/)).toBeVisible();
    expect(JSON.stringify(screenStore().getState().papers.runStandard[0]?.body)).toBe(frozen);
  });

  describe('once it was begun', () => {
    const begun = async (fields: Partial<Run> = {}) => {
      await open(fields);
      const begin = await screen.findByRole('button', { name: 'Begin' });
      await eventually(() => expect(begin).not.toHaveAttribute('aria-disabled'));
      await userEvent.click(begin);
      await screen.findByRole('link', { name: 'To the press' });
      const [standard] = screenStore().getState().papers.runStandard;
      if (standard === undefined) throw new Error('it was not begun');
      return standard;
    };
    /** So many pieces of a print, in the order of its sizes; the first of them lost where told. */
    const press = ({ id, body }: Awaited<ReturnType<typeof begun>>, slot: number, many: number, lost = 0) =>
      act(async () => {
        const [work] = body.works;
        const [line] = work?.lines ?? [];
        const placementId = line?.placements[slot]?.placementId ?? '';
        const sizes = body.sizes.flatMap(({ size }) =>
          Array.from({ length: line?.sizes.find((one) => one.size === size)?.wanted ?? 0 }, () => size),
        );
        const pieces = [...sizes.slice(0, lost), ...sizes.slice(0, many)];
        screenStore().actions.note(
          'Pressed',
          pieces.map((size, at) => ({
            kind: 'pressing',
            body: {
              ...{ runId: RUN, standardId: id, jobId: FIRST_JOB_ID, lineId: line?.lineId ?? '' },
              ...{ placementId, size, result: at < lost ? 'scrap' : 'good' },
              fault: at < lost ? 'ghost' : null,
            },
          })),
        );
      });

    it('shows what was frozen, whatever the plan would be now', async () => {
      await begun();
      await act(async () => {
        screenStore().actions.edit('Other', [
          { do: 'change', kind: 'run', id: RUN, to: (now) => ({ ...now, cover: 'sure', ownBlocks: [] }) },
        ]);
      });
      const table = await screen.findByRole('table', { name: 'Pieces by size as the run began' });
      // 75 of 100: L 11 wanted of 13; the surest cover would lay out 14.
      expect(within(table).getByRole('row', { name: /^L / })).toHaveTextContent('L111302');
      const clock = screen.getByRole('table', { name: 'The clock' });
      expect(within(clock).getByRole('row', { name: /^Chest badge/ })).toHaveTextContent(/8:14\s?PM/);
      expect(plate()).toHaveTextContent(/6:00\s?PM to 10:39\s?PM: 37 pieces, one heating-up/);
      expect(screen.queryByRole('checkbox', { name: /taped at the bench/ })).toBeNull();
      expect(screen.queryByText(/short/)).toBeNull();
      await userEvent.click(screen.getByRole('button', { name: /^The plan as it would be now/ }));
      expect(await screen.findAllByText('How sure every size is to come out whole')).not.toEqual([]);
    });

    it('goes on saying that it is done too late, by the clock that was frozen', async () => {
      await begun({ ownBlocks: [{ ...evening, day: addDays(TEST_DAY, 6) }] });
      expect(screen.queryByRole('list', { name: 'Done too late' })).toBeNull();
      await act(async () => {
        screenStore().actions.edit('Wanted', [
          { do: 'change', kind: 'job', id: FIRST_JOB_ID, to: (now) => ({ ...now, wantedOn: TEST_DAY }) },
          { do: 'change', kind: 'run', id: RUN, to: (now) => ({ ...now, ownBlocks: [evening] }) },
        ]);
      });
      const late = await screen.findByRole('list', { name: 'Done too late' });
      expect(late).toHaveTextContent(/is done on .*, 6 days after the day it is wanted/);
      expect(late).toHaveTextContent('press sooner than it says, or agree on a later day');
    });

    it('says how far it is while it is pressed, and when the print will be done', async () => {
      const standard = await begun();
      await press(standard, 0, 14, 2);
      await eventually(() => expect(plate()).toHaveTextContent('14 of 37 good, Back picture; 2 lost;'));
      expect(plate()).toHaveTextContent(/this print done about \d+:\d\d/);
      await press(standard, 0, 0);
    });

    it('says of spares what the press says, never fewer than none', async () => {
      const standard = await begun();
      // One more is lost of the size pressed first than it had spares.
      const [first] = standard.body.sizes;
      const frozen = standard.body.works[0]?.lines[0]?.sizes.find(({ size }) => size === first?.size);
      const spares = (frozen?.take ?? 0) - (frozen?.wanted ?? 0);
      await press(standard, 0, 0, spares + 1);
      const table = await screen.findByRole('table', { name: 'Pieces by size as the run began' });
      const row = within(table).getByRole('row', { name: new RegExp(`^${first?.size} `) });
      await eventually(() => expect(within(row).getAllByRole('cell').at(-1)).toHaveTextContent(/^1 short$/));
      // All that are wanted came good in spite of it: one more was pressed than was laid out.
      await press(standard, 0, frozen?.wanted ?? 0);
      await press(standard, 1, frozen?.wanted ?? 0);
      await eventually(() => expect(within(row).getAllByRole('cell').at(-1)).toHaveTextContent(/^none$/));
      expect(table).not.toHaveTextContent(/[-−]/);
    });

    it('says that all is pressed, and once it is closed what came of it', async () => {
      const standard = await begun();
      await press(standard, 0, 37);
      await press(standard, 1, 37);
      await eventually(() => expect(plate()).toHaveTextContent('All is pressed: 37 good, 0 lost'));
      await act(async () => {
        screenStore().actions.note('Close', [
          {
            kind: 'runStep',
            body: {
              ...{ runId: RUN, standardId: standard.id, day: TEST_DAY },
              step: { what: 'closed', note: '' },
            },
          },
        ]);
      });
      // The worked example: 288.37 quoted; what nobody noted is taken as planned.
      await eventually(() =>
        expect(plate()).toHaveTextContent(/profit, 288\.37 USD as quoted; 37 good, 0 lost/),
      );
      expect(screen.getByRole('link', { name: 'What came of it' })).toHaveAttribute(
        'href',
        `/making/${RUN}/after`,
      );
    });

    it('offers to note what its order has reached, and notes it by one tap alone', async () => {
      const works = [{ jobId: FIRST_JOB_ID, orderId: CLUB_ENQUIRY_ID, stallDayId: null }];
      const standard = await begun({ works });
      const steps = () =>
        screenStore()
          .getState()
          .entries.orderEvent.filter(({ body }) => body.step.what === 'pressed');
      await press(standard, 0, 37);
      expect(await screen.findByRole('button', { name: /^Note “Printed” of/ })).toBeVisible();
      await press(standard, 1, 37);
      const offer = await screen.findByRole('button', { name: /^Note “Pressed” of/ });
      expect(steps()).toEqual([]);
      await userEvent.click(offer);
      expect(steps()).toMatchObject([{ body: { orderId: CLUB_ENQUIRY_ID, day: TEST_DAY } }]);
      await eventually(() => expect(screen.queryByRole('button', { name: /^Note “/ })).toBeNull());
    });
  });

  it('leads to a buying list made for it', async () => {
    await open();
    await userEvent.click(await screen.findByRole('button', { name: 'Buying list for this run' }));
    const [id] = idsOf('buyingList');
    expect(bodyOf('buyingList', id ?? '').works).toEqual([{ jobId: FIRST_JOB_ID, orderId: null }]);
    expect(push).toHaveBeenCalledWith(`/making/buying/${id}`);
  });

  it('says what is missing where nothing is made, and offers the way there', async () => {
    await open({ works: [] });
    expect(await screen.findByText('Nothing is made yet.')).toBeVisible();
    expect(plate()).toHaveTextContent('No clock yet.');
  });

  it('asks for the mirror of a job that came out reversed in an earlier run, until it was checked', async () => {
    await open();
    const body = {
      ...{ runId: 'earlier', standardId: null, jobId: FIRST_JOB_ID, lineId: 'shirts', placementId: 'back' },
      ...{ size: 'M', result: 'scrap' as const, fault: 'reversed' as const },
    };
    await act(async () => {
      const { actions } = screenStore();
      const earlier = runSchema.parse({ name: 'Earlier', works: [{ jobId: FIRST_JOB_ID }] });
      actions.edit('Add', [{ do: 'add', kind: 'run', id: 'earlier', body: earlier }]);
      actions.note('Pressed', [{ kind: 'pressing', body }]);
    });
    expect(await screen.findByText(/one print came out reversed/)).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: /^The mirror was checked/ }));
    await eventually(() => expect(screen.queryByText(/came out reversed/)).toBeNull());
  });
});
