// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { type Bench, useBench } from '@/app/_orderBook/useBench';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import { BenchWeeks } from '@/app/_orders/BenchWeeks';
import type { StudyRequest } from '@/app/_studies/studies';
import { usualBlocks } from '@/lib/calendar/usualBlocks';
import { CLUB_ENQUIRY_ID } from '@/lib/examples/clubEnquiry';
import { benchAnswer } from '@/lib/studies/bench/benchAnswer';
import { addDays } from '@/shared/days';
import { shelf } from '@/tests/app/_screens/orderShelf';
import { bodyOf, clearScreens, enter, idsOf, screenStore } from '@/tests/app/_screens/screens';
import { grid } from '@/tests/fixtures/costed';
import { clubQuote } from '@/tests/fixtures/orderPapers';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

vi.mock('next/navigation', () => ({ useRouter: () => ({ push: () => undefined }) }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('@/tests/app/_screens/screens');
  return { appDocuments };
});
/* A worker that answers one question each time it is told to. */
const held = vi.hoisted(() => ({ questions: [] as (() => void)[], plans: 0 }));
vi.mock('@/app/_studies/shareStudyWorker', () => ({
  shareStudyWorker: () => ({
    worker: {
      ask: (_: string, request: StudyRequest, listener: (answered: unknown) => void) => {
        if (request.of !== 'job') return;
        const { input } = request;
        held.questions.push(() =>
          listener({ kind: 'answered', isLast: true, answer: benchAnswer(input, grid) }),
        );
      },
      leave: () => undefined,
      stop: () => undefined,
    },
    giveBack: () => undefined,
  }),
}));
vi.mock('@/lib/calendar/weeksAhead', async (real) => {
  const { weeksAhead } = await real<typeof import('@/lib/calendar/weeksAhead')>();
  const counted: typeof weeksAhead = (...asked) => {
    held.plans += 1;
    return weeksAhead(...asked);
  };
  return { weeksAhead: counted };
});

let bench: Bench | null = null;
function Probe({ workspace }: { readonly workspace: ReadyWorkspace }) {
  bench = useBench(workspace, useOrderBook(workspace));
  return <h1>Bench</h1>;
}

const Weeks = ({ workspace }: { readonly workspace: ReadyWorkspace }) => (
  <BenchWeeks {...{ workspace }} book={useOrderBook(workspace)} />
);

type Edit = Parameters<ReturnType<typeof screenStore>['actions']['edit']>[1][number];
const edit = (change: Edit) => act(() => screenStore().actions.edit('Edit', [change]));
const answer = () => act(() => held.questions.shift()?.());
const planned = () => bench?.open.map(({ load }) => load.id).toSorted();

beforeEach(() => {
  vi.stubGlobal('Worker', class {});
  held.questions = [];
});
afterEach(() => {
  cleanup();
  clearScreens();
  vi.unstubAllGlobals();
});

it('plans once all answers are here, and keeps that plan until all are here again', async () => {
  await screenStore().open();
  const [clubJob] = bodyOf('order', CLUB_ENQUIRY_ID)?.jobIds ?? [];
  const other = idsOf('job').find((id) => id !== clubJob);
  if (clubJob === undefined || other === undefined) throw new Error('the examples have no two jobs');
  edit({
    do: 'change',
    kind: 'workshop',
    id: 'workshop',
    to: (body) => ({ ...body, blocks: [...usualBlocks] }),
  });
  shelf.add('kayak', { name: 'Kayak Club bags', jobIds: [other] });
  await enter(<WithWorkspace>{(workspace) => <Probe workspace={workspace} />}</WithWorkspace>);
  expect(held.questions).toHaveLength(2);
  const before = held.plans;
  answer();
  expect(planned()).toEqual([]);
  answer();
  expect(planned()).toEqual([CLUB_ENQUIRY_ID, 'kayak']);
  expect(held.plans).toBe(before + 1);
  const weeks = bench?.weeks;
  edit({ do: 'change', kind: 'job', id: other, to: (body) => ({ ...body, name: 'Other bags' }) });
  expect([bench?.isWaiting, bench?.isKnown]).toEqual([true, true]);
  expect(bench?.weeks).toBe(weeks);
  expect(planned()).toEqual([CLUB_ENQUIRY_ID, 'kayak']);
  answer();
  expect(bench?.isWaiting).toBe(false);
  expect(held.plans).toBe(before + 2);
});

it('goes by the day of its jobs where an order has none of its own', async () => {
  await screenStore().open();
  const order = bodyOf('order', CLUB_ENQUIRY_ID);
  const [clubJob = ''] = order.jobIds;
  const job = bodyOf('job', clubJob);
  edit({ do: 'change', kind: 'order', id: CLUB_ENQUIRY_ID, to: () => ({ ...order, wantedOn: null }) });
  const wantedOn = addDays(TEST_DAY, 23);
  edit({ do: 'change', kind: 'job', id: clubJob, to: () => ({ ...job, wantedOn }) });
  await enter(<WithWorkspace>{(workspace) => <Probe workspace={workspace} />}</WithWorkspace>);
  while (held.questions.length > 0) answer();
  expect(bench?.benchOf(CLUB_ENQUIRY_ID)?.load.wantedOn).toBe(wantedOn);
});

const shirtsOf = (minutes: number) => ({
  ...{ jobId: 'shirts', alternativeId: null, lead: null },
  work: { before: [{ what: 'print' as const, minutes }], press: null, after: [] },
});
const says = 'Accepted, but not all of its work is counted: Kayak Club bags.';

it('keeps an accepted order whose job cannot be reckoned as it was quoted, and names those of which nothing is known', async () => {
  await screenStore().open();
  edit({
    do: 'change',
    kind: 'workshop',
    id: 'workshop',
    to: (body) => ({ ...body, blocks: [...usualBlocks] }),
  });
  const { owner } = clubQuote;
  shelf.add('stopped', { name: 'Choir shirts', jobIds: ['shirts'] });
  shelf.enquired('stopped', 2);
  await shelf.accepted('stopped', { owner: { ...owner, work: [shirtsOf(600)] } });
  shelf.add('kayak', { name: 'Kayak Club bags', jobIds: ['gone'] });
  shelf.enquired('kayak', 3);
  await shelf.accepted('kayak');
  await enter(
    <WithWorkspace>
      {(workspace) => (
        <>
          <Probe workspace={workspace} />
          <Weeks workspace={workspace} />
        </>
      )}
    </WithWorkspace>,
  );
  // While something is worked out nobody is called unknown.
  expect([bench?.isWaiting, bench?.isKnown, bench?.sure, bench?.leftOut]).toEqual([true, false, [], []]);
  expect(screen.queryByText(says)).toBeNull();
  while (held.questions.length > 0) answer();
  expect(bench?.sure.map(({ load }) => load.id)).toEqual(['stopped']);
  expect(bench?.benchOf('stopped')?.quoted).toEqual(['shirts']);
  // Ten hours in all of the weeks.
  expect(bench?.weeks.reduce((sum, { accepted }) => sum + accepted, 0)).toBeCloseTo(600, 6);
  expect(bench?.leftOut).toEqual(['kayak']);
  expect(screen.getByText(says)).toBeVisible();
});
