import { describe, expect, it } from 'vitest';
import { calendarOf } from '@/lib/calendar/calendar';
import { fairMugs, fairShirts } from '@/lib/examples/fairJobs';
import { springFair } from '@/lib/examples/springFair';
import { copiedStallDay } from '@/lib/stall/days/newStallDay';
import { makingJobs } from '@/lib/stall/making/makingJobs';
import { makingTimes } from '@/lib/stall/making/makingTimes';
import { pressStanding, type ToPress, toPress } from '@/lib/stall/making/toPress';
import { benchAnswer } from '@/lib/studies/bench/benchAnswer';
import { addDays, weekdayOf } from '@/shared/days';
import type { Job } from '@/shared/schemas/job';
import type { StallDay } from '@/shared/schemas/stallDay';
import { blocksOf } from '@/tests/fixtures/blocksOf';
import { grid } from '@/tests/fixtures/costed';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const shirts = fairShirts(TEST_DAY);
const mugs = fairMugs(TEST_DAY);
const FAIR = addDays(TEST_DAY, 30);
const fair: StallDay = springFair({
  day: TEST_DAY,
  fairDay: FAIR,
  jobs: { 'fair-shirts': shirts.job, 'fair-mugs': mugs.job },
  times: 1,
  isMetric: false,
});

const of = (lineId: string, size: string, mine: number, atHome = 0) => ({
  ...{ jobId: 'fair-shirts', lineId, size, mine, atHome },
});

describe('what is pressed for a stall day', () => {
  it('is what is short beside what lies at home: 2 M and 1 L after a fair', () => {
    const next = [
      of('fern', 'S', 3, 3),
      of('fern', 'M', 6, 4),
      of('fern', 'L', 7, 6),
      of('fern', 'XL', 2, 5),
    ];
    expect(toPress(next).map(({ size, press }) => `${size} ${press}`)).toEqual(['S 0', 'M 2', 'L 1', 'XL 0']);
  });

  it('is all of it where more went out than was ever in: that is to be counted, not pressed', () => {
    expect(toPress([of('fern', 'M', 6, -2)])[0]?.press).toBe(6);
  });
});

describe('what is still to be pressed of a plan', () => {
  const standing = (...rows: readonly (readonly [mine: number, atHome: number, finishedBefore: number])[]) =>
    pressStanding(
      rows.map(([mine, atHome, finishedBefore]) => ({ ...of('fern', 'M', mine, atHome), finishedBefore })),
    );

  it('is all of it before any of it is pressed, whatever lay at home before', () => {
    expect(standing([8, 3, 3], [4, 0, 0])).toEqual({ pieces: 9, isBegun: false });
  });

  it('is what is left once some of it came home, and none once all of it did', () => {
    expect(standing([8, 8, 3], [4, 0, 0])).toEqual({ pieces: 4, isBegun: true });
    expect(standing([8, 8, 3], [4, 4, 0])).toEqual({ pieces: 0, isBegun: true });
  });

  it('is none where all of it lay at home before, and none was pressed for it', () => {
    expect(standing([3, 5, 5])).toEqual({ pieces: 0, isBegun: false });
  });
});

describe('the jobs that press it', () => {
  const advised: readonly ToPress[] = [
    ['fern', [3, 6, 7, 5, 2, 1]],
    ['lighthouse', [3, 5, 6, 4, 2, 1]],
    ['otter', [3, 5, 6, 4, 2, 1]],
    ['star-map', [2, 4, 4, 3, 1, 1]],
  ].flatMap(([lineId, row]) =>
    ['S', 'M', 'L', 'XL', '2XL', '3XL'].map((size, at) => ({
      ...{ jobId: 'fair-shirts', lineId: String(lineId), size, press: Number(row?.[at]) },
    })),
  );

  const made = (changes: {
    readonly job?: Partial<Job>;
    readonly press?: readonly ToPress[];
    readonly ofOrders?: readonly string[];
    readonly ofOtherDays?: readonly string[];
    readonly day?: Partial<StallDay>;
    readonly others?: Readonly<Record<string, Job>>;
  }) =>
    makingJobs({
      stallDay: { ...fair, ...changes.day },
      press: changes.press ?? advised,
      jobs: { 'fair-shirts': { ...shirts.job, ...changes.job }, ...changes.others },
      ofOrders: new Set(changes.ofOrders),
      ofOtherDays: new Set(changes.ofOtherDays),
    });
  const only = (...args: Parameters<typeof made>) => {
    const [one, ...rest] = made(...args);
    if (one === undefined || rest.length > 0) throw new Error('not one job');
    return one;
  };
  const pieces = (job: Job) =>
    job.lines.flatMap(({ quantities }) => quantities).reduce((sum, { quantity }) => sum + quantity, 0);

  it('take the eighty-one of the advice in place of ninety-six, and nothing else of them changes', () => {
    const { job, jobId, why, isSet, rows } = only({});
    expect({ jobId, why, isSet, pieces: pieces(job) }).toEqual({
      jobId: 'fair-shirts',
      why: null,
      isSet: false,
      pieces: 81,
    });
    expect(rows.filter(({ lineId }) => lineId === 'fern').map(({ now, press }) => [now, press])).toEqual([
      [4, 3],
      [8, 6],
      [9, 7],
      [6, 5],
      [2, 2],
      [1, 1],
    ]);
    const unchanged = (one: Job) => ({
      ...one,
      lines: one.lines.map((line) => ({ ...line, quantities: [] })),
    });
    expect(unchanged(job)).toEqual(unchanged(shirts.job));
  });

  it('are left as they are where they say so already', () => {
    const now = shirts.job.lines.flatMap(({ id, quantities }) =>
      quantities.map(({ size, quantity }) => ({
        ...{ jobId: 'fair-shirts', lineId: id, size, press: quantity },
      })),
    );
    expect(only({ press: now })).toMatchObject({ jobId: 'fair-shirts', isSet: true });
    // Whatever else is made from it: nothing is written.
    expect(only({ press: now, ofOtherDays: ['fair-shirts'] })).toMatchObject({ isSet: true, why: null });
    // A job that is made presses nothing any more.
    expect(only({ press: now, job: { state: 'done' } })).toMatchObject({ jobId: null, isSet: false });
  });

  it('are none where all of it lies at home, and none of a job that is gone', () => {
    expect(made({ press: advised.map((one) => ({ ...one, press: 0 })) })).toEqual([]);
    expect(made({ press: advised.map((one) => ({ ...one, jobId: 'gone' })) })).toEqual([]);
  });

  const ordered = shirts.job.lines.map((line) => ({ ...line, orderedQuantity: 30 }));
  const withoutOtter = advised.map((one) => (one.lineId === 'otter' ? { ...one, press: 0 } : one));

  it.each<[string, Parameters<typeof made>[0]]>([
    ['done', { job: { state: 'done' } }],
    ['done', { job: { archivedOn: TEST_DAY } }],
    ['order', { ofOrders: ['fair-shirts'] }],
    ['promised', { job: { state: 'quoted' } }],
    ['promised', { job: { state: 'agreed' } }],
    ['promised', { job: { lines: ordered } }],
    ['otherDay', { ofOtherDays: ['fair-shirts'] }],
    ['idleLine', { press: withoutOtter }],
    ['otherLines', { press: advised.filter(({ lineId }) => lineId !== 'otter') }],
  ])('stay as they are and are copied for the day: %s %#', (why, changes) => {
    const found = only(changes);
    expect(found).toMatchObject({ jobId: null, why, isSet: false });
    expect(found.job).toMatchObject({
      name: 'Spring Fair shirts for Exampleton Spring Fair',
      state: 'draft',
      madeFor: 'stock',
      archivedOn: null,
      wantedOn: FAIR,
    });
    expect(found.job.lines.every(({ orderedQuantity }) => orderedQuantity === null)).toBe(true);
    expect(pieces(found.job)).toBe(why === 'idleLine' || why === 'otherLines' ? 60 : 81);
    expect(found.job.lines.map(({ id }) => id)).toEqual(
      ['fern', 'lighthouse', 'otter', 'star-map'].filter(
        (id) => id !== 'otter' || (why !== 'idleLine' && why !== 'otherLines'),
      ),
    );
  });

  it('are the one made for the day before, which takes the new numbers', () => {
    const first = only({ press: withoutOtter });
    const again = {
      press: advised,
      day: { made: [{ jobId: 'copy', of: 'fair-shirts' }] },
      others: { copy: { ...first.job, name: 'Mine now' } },
      ofOrders: ['fair-shirts'],
    };
    const next = only(again);
    expect(next).toMatchObject({ jobId: 'copy', isSet: false, why: 'order' });
    expect(next.job.name).toBe('Mine now');
    // The line that it never had is there, in its place.
    expect(next.job.lines.map(({ id }) => id)).toEqual(['fern', 'lighthouse', 'otter', 'star-map']);
    expect(only({ ...again, others: { copy: next.job } })).toMatchObject({ jobId: 'copy', isSet: true });
    // One that is made is not pressed again.
    expect(only({ ...again, others: { copy: { ...next.job, state: 'done' } } })).toMatchObject({
      jobId: null,
    });
  });

  it('of a fair planned like another are its own: the one made for the other keeps its numbers', () => {
    const first = only({ ofOrders: ['fair-shirts'] });
    const before = { ...fair, made: [{ jobId: 'for-spring', of: 'fair-shirts' }] };
    const next = copiedStallDay(
      { name: 'Autumn', day: addDays(FAIR, 90), dayId: 'autumn' },
      {
        ...{ id: 'spring', stallDay: before },
      },
    );
    const found = only({
      ...{ day: next, press: withoutOtter, ofOrders: ['fair-shirts'] },
      others: { 'for-spring': first.job },
    });
    expect(found).toMatchObject({ jobId: null, job: { wantedOn: addDays(FAIR, 90) } });
  });
});

describe('the bench of a stall day', () => {
  const answers = [shirts, mugs].map((input) => {
    const answer = benchAnswer(input, grid);
    if (answer === null) throw new Error('the job is stopped');
    return answer;
  });

  it('has the 12.67 hours of the worked fair, in three sessions', () => {
    expect(answers.reduce((sum, { attendedMinutes }) => sum + attendedMinutes, 0) / 60).toBeCloseTo(12.67, 2);
    expect(answers.map(({ work }) => work.press?.sessions)).toEqual([2, 1]);
  });

  it('tells paper and ink as the jobs reckon them', () => {
    const [ofShirts, ofMugs] = answers.map(({ materials }) => materials);
    // 0.60, 0.87, 0.41 and 1.01 mL a good shirt of 30, 26, 24 and 16, each to half a hundredth, and two sessions of 4 mL.
    expect(Math.abs((ofShirts?.inkMl ?? 0) - (18 + 22.62 + 9.84 + 16.16 + 8))).toBeLessThan(96 * 0.005);
    expect(ofShirts?.rollMm).toBeNull();
    // One shirt a sheet, and 3 % of presses and some sheets spoiled: more than 96 and fewer than 110.
    expect(ofShirts?.sheets).toBeGreaterThan(96);
    expect(ofShirts?.sheets).toBeLessThan(110);
    // Three strips a sheet, four sheets a design.
    expect(ofMugs?.sheets).toBeGreaterThanOrEqual(12);
    expect(ofMugs?.sheets).toBeLessThan(16);
  });

  const monday = Array.from({ length: 7 }, (_, days) => addDays(TEST_DAY, days)).find(
    (day) => weekdayOf(day) === 0,
  );
  if (monday === undefined) throw new Error('no Monday');
  const calendar = calendarOf({ blocks: blocksOf([5, 5, 5, 5, 5, 0, 0]), daysOff: [] });
  if (calendar === null) throw new Error('no calendar');
  const jobs = answers.map(({ work }) => ({ work, lead: null }));
  const timesOf = (firstDay: string | null, accepted: Parameters<typeof makingTimes>[1] = []) =>
    makingTimes(calendar, accepted, { id: 'fair', firstDay, jobs }, monday);

  it('is done on the last bench day that leaves a working day before a Saturday', () => {
    const saturday = addDays(monday, 12);
    const { isKept, latest } = timesOf(saturday);
    expect(isKept).toBe(true);
    expect(latest?.kind === 'latest' && latest.dates.plan.lastDay).toBe(addDays(saturday, -2));
  });

  it('cannot be kept where the fair is too near, and the first day that can be is behind it', () => {
    const { isKept, planned } = timesOf(addDays(monday, 2));
    expect(isKept).toBe(false);
    expect(planned.kind === 'planned' && planned.plan.lastDay > addDays(monday, 1)).toBe(true);
  });

  it('stands behind an order that is wanted before it', () => {
    const saturday = addDays(monday, 12);
    const order = { id: 'order', wantedOn: addDays(monday, 8), works: jobs.map(({ work }) => work) };
    const beside = timesOf(saturday, [{ ...order, blanks: null, lead: null }]);
    const alone = timesOf(saturday);
    const firstDay = ({ planned }: typeof alone) => (planned.kind === 'planned' ? planned.plan.firstDay : '');
    expect(firstDay(alone)).toBe(monday);
    expect(firstDay(beside) > firstDay(alone)).toBe(true);
  });

  it('has no last days where no day is set', () => {
    expect(timesOf(null)).toMatchObject({ isKept: true, latest: null });
  });

  it('waits for blanks: pressed no sooner than the day after they came', () => {
    // Ordered on Monday, the later ones in three working days: there on Thursday, pressed on Friday.
    const { planned } = makingTimes(
      calendar,
      [],
      { id: 'fair', firstDay: null, jobs: jobs.map(({ work }, at) => ({ work, lead: at === 0 ? 3 : 1 })) },
      monday,
    );
    expect(planned.kind === 'planned' && planned.plan.sessions[0]?.day).toBe(addDays(monday, 4));
  });
});
