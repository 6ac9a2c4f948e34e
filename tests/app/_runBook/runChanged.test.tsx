// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import '@/tests/app/_runs/runStage';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import type { ReactElement } from 'react';
import { afterEach, describe, expect, it } from 'vitest';
import { AfterRunScreen } from '@/app/_afterRun/AfterRunScreen';
import { PressScreen } from '@/app/_press/PressScreen';
import { PressLogScreen } from '@/app/_pressLog/PressLogScreen';
import { RunsScreen } from '@/app/_runs/RunsScreen';
import { RunScreen } from '@/app/_runs/run/RunScreen';
import { FIRST_JOB_ID } from '@/lib/examples/exampleDocuments';
import { runSchema } from '@/shared/schemas/making/run';
import { damage, enter, leaveScreens, screenStore } from '@/tests/app/_screens/screens';
import { clubPressings, clubStandard } from '@/tests/fixtures/clubStandard';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const RUN = 'run';

afterEach(() => {
  cleanup();
  leaveScreens();
});

const places: readonly (readonly [string, ReactElement])[] = [
  ['the list of runs', <RunsScreen key="list" />],
  ['the run', <RunScreen key="run" runId={RUN} />],
  ['the press', <PressScreen key="press" runId={RUN} />],
  ['after the run', <AfterRunScreen key="after" runId={RUN} />],
];

/** A run of the example's job, begun before that job was what it is. */
async function beginRun(): Promise<void> {
  await act(() => screenStore().open());
  const { actions } = screenStore();
  const body = runSchema.parse({ name: 'Evening', works: [{ jobId: FIRST_JOB_ID }] });
  await act(() => actions.edit('Run', [{ do: 'add', kind: 'run', id: RUN, body }]));
  const { works, ...rest } = clubStandard();
  await act(() =>
    actions.issue('Begin', {
      kind: 'runStandard',
      about: { kind: 'run', id: RUN },
      series: `run ${RUN}`,
      body: (number) => ({
        ...{ ...rest, runId: RUN, number, issuedOn: TEST_DAY },
        works: works.map((work) => ({ ...work, jobId: FIRST_JOB_ID })),
      }),
    }),
  );
}
const edit = (edits: Parameters<ReturnType<typeof screenStore>['actions']['edit']>[1]) =>
  act(async () => void screenStore().actions.edit('Change', edits));
const noPieces = () =>
  edit([
    {
      do: 'change',
      kind: 'job',
      id: FIRST_JOB_ID,
      to: (job) => ({
        ...job,
        lines: job.lines.map((line) => ({
          ...line,
          quantities: line.quantities.map((one) => ({ ...one, quantity: 0 })),
        })),
      }),
    },
  ]);
const noJob = () => edit([{ do: 'delete', kind: 'job', id: FIRST_JOB_ID }]);
const close = () =>
  act(
    async () =>
      void screenStore().actions.note('Close', [
        {
          kind: 'runStep',
          body: { runId: RUN, standardId: null, day: TEST_DAY, step: { what: 'closed', note: '' } },
        },
      ]),
  );

describe.each(places)('a run that began, on %s', (_, place) => {
  it('says that the frozen figures stay once its job has no pieces left', async () => {
    await beginRun();
    await noPieces();
    await enter(place);
    expect(
      await screen.findByText(
        /Ramblers Club shirts changed since the run began: .*pieces.* frozen then stays/,
      ),
    ).toBeVisible();
  });

  it('names a job that was removed as it was called then', async () => {
    await beginRun();
    await noJob();
    await enter(place);
    expect(
      await screen.findByText(/^Ramblers Club shirts is no longer here, .* frozen then stays/),
    ).toBeVisible();
    expect(document.body).not.toHaveTextContent(/0 pieces/);
  });
});

describe('a closed run whose job was removed', () => {
  it('is named in the list by its frozen standard', async () => {
    await beginRun();
    await noJob();
    await close();
    await enter(<RunsScreen />);
    const done = screen.getByRole('region', { name: 'Done' });
    expect(done).toHaveTextContent('Ramblers Club shirts (no longer here)');
    expect(done).not.toHaveTextContent('nothing in it yet');
  });

  it('keeps its pieces and names its job where the plan of now is looked at', async () => {
    await beginRun();
    await noJob();
    await close();
    await enter(<RunScreen runId={RUN} />);
    expect(await screen.findAllByText('37 pieces')).not.toEqual([]);
    // Nobody noted a piece: that is not the same as none.
    expect(screen.getByRole('region', { name: 'The run in short' })).toHaveTextContent('no piece is noted');
    await userEvent.click(screen.getByRole('button', { name: /^The plan as it would be now/ }));
    expect(await screen.findByText(/^No figures now: its jobs are not here/)).toBeVisible();
    await userEvent.click(await screen.findByRole('button', { name: /^Jobs of this run/ }));
    expect(
      await screen.findByRole('button', { name: 'Take out Ramblers Club shirts (no longer here)' }),
    ).toBeVisible();
    expect(document.body).not.toHaveTextContent(/0 pieces/);
  });
});

describe('a cause that nobody named', () => {
  const lost = clubPressings()
    .filter(({ body }) => body.fault === 'ghost')
    .slice(0, 1);
  const noteLost = () =>
    act(
      async () =>
        void screenStore().actions.note(
          'Pressed',
          lost.map(({ kind, body }) => ({ kind, body: { ...body, jobId: FIRST_JOB_ID, fault: null } })),
        ),
    );

  it.each(places.filter(([name]) => name === 'the run' || name === 'after the run'))(
    'is named later on %s',
    async (_, place) => {
      await beginRun();
      await noteLost();
      await enter(place);
      await userEvent.click(await screen.findByRole('button', { name: 'Say why' }));
      await userEvent.click(await screen.findByRole('button', { name: 'Pale' }));
      expect(await screen.findByText('Every one has its cause.')).toBeVisible();
      const { pressing } = screenStore().getState().entries;
      expect(pressing.map(({ body }) => [body.result, body.fault, typeof body.pressedAt])).toEqual([
        ['scrap', 'pale', 'number'],
      ]);
    },
  );
});

describe('a record that cannot be read', () => {
  const wrong = (kind: string, count: number) => ({
    ...{ id: `phone000-${count}`, kind, version: 1, device: 'phone000', count, at: 1_000 },
    body: { wrong: 1 },
  });
  const broken = async () => {
    await beginRun();
    leaveScreens();
    await damage(wrong('pressing', 1), 'entries');
    await damage(wrong('washCheck', 2), 'entries');
  };

  it.each(places)('is told on %s', async (_, place) => {
    await broken();
    await enter(place);
    expect(await screen.findByText('A piece pressed cannot be read. It stays kept as it is.')).toBeVisible();
    expect(screen.queryByText(/wash check cannot be read/)).toBeNull();
  });

  it('is told in the press log, wash checks too', async () => {
    await broken();
    await enter(<PressLogScreen />);
    expect(await screen.findByText('A piece pressed cannot be read. It stays kept as it is.')).toBeVisible();
    expect(screen.getByText('A wash check cannot be read. It stays kept as it is.')).toBeVisible();
  });
});

describe('a blank that was removed from the catalogue', () => {
  it('has one name in the press log and after the run', async () => {
    await beginRun();
    const pieces = clubPressings().map(({ kind, body }) => ({
      kind,
      body: { ...body, jobId: FIRST_JOB_ID },
    }));
    const [paper] = screenStore().getState().papers.runStandard;
    await act(
      async () =>
        void screenStore().actions.note(
          'Pressed',
          pieces.map(({ kind, body }) => ({ kind, body: { ...body, standardId: paper?.id ?? null } })),
        ),
    );
    await edit([{ do: 'delete', kind: 'blank', id: 'white-shirt' }]);
    await enter(<PressLogScreen />);
    expect(
      (await screen.findAllByRole('heading', { name: /^White shirt \(no longer here\), / }))[0],
    ).toBeVisible();
    cleanup();
    await enter(<AfterRunScreen runId={RUN} />);
    await userEvent.click(await screen.findByRole('button', { name: /^What it moves in stock/ }));
    const moved = await screen.findAllByText(/^White shirt \(no longer here\), M: /);
    expect(within(document.body).queryByText(/a blank no longer here/i)).toBeNull();
    expect(moved.length).toBeGreaterThan(0);
  });
});
