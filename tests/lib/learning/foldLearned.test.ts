import { describe, expect, it } from 'vitest';
import { foldLearned } from '@/lib/learning/foldLearned';
import { learnedShare } from '@/lib/learning/learnedShare';
import { shrunk } from '@/lib/learning/shrunk';
import { takeBack, takeOver, withEdits } from '@/lib/learning/takeOver';
import { topmostTaken } from '@/lib/learning/topmostTaken';
import { rateTakenSchema } from '@/shared/schemas/making/learnedEvents';
import { club } from '@/tests/fixtures/clubJob';
import { clubFacts, hour, noteOf } from '@/tests/fixtures/clubStandard';
import { learnedFrom, learnedRun } from '@/tests/fixtures/learnedRun';

const lessons = foldLearned(learnedFrom());
const scrapOf = (position: string) =>
  lessons.find(({ subject }) => subject.of === 'scrap' && subject.position === position);

// Worked by hand: (50 · 0.035 + 2) ÷ (50 + 41) and (50 · 0.02 + 2) ÷ (50 + 39); upper limits of the Beta 6.9 and 5.9 %.
describe('scrap of the worked run', () => {
  it.each([
    { position: 'back', measured: 3.75 / 91, upper: 0.069, presses: 41 },
    { position: 'leftChest', measured: 3 / 89, upper: 0.059, presses: 39 },
  ])('$position comes to $measured', ({ position, measured, upper, presses }) => {
    const lesson = scrapOf(position);
    expect(lesson?.measured).toBeCloseTo(measured, 12);
    expect(lesson?.upper).toBeCloseTo(upper, 3);
    expect(lesson?.observations).toBe(presses);
    expect(lesson?.runIds).toEqual(['run']);
  });

  it('is parted by what the pieces were lost to, which adds up to it', () => {
    const [ghost, half] = [3.75 / 91, 1.5 / 89];
    expect(scrapOf('back')?.faults).toEqual([{ fault: 'ghost', pieces: 2, share: ghost }]);
    expect(scrapOf('leftChest')?.faults).toEqual([
      { fault: 'reversed', pieces: 1, share: expect.closeTo(half, 12) },
      { fault: 'specks', pieces: 1, share: expect.closeTo(half, 12) },
    ]);
  });

  it('goes to the placements of open jobs with that blank, press and place', () => {
    expect(scrapOf('back')?.places).toMatchObject([
      { kind: 'job', id: 'club', path: ['lines', 'shirts', 'placements', 'back', 'scrap'] },
    ]);
  });

  it('leaves jobs that are done as they were priced', () => {
    const from = learnedFrom();
    const done = { id: 'club', body: { ...club().job, state: 'done' as const } };
    const found = foldLearned({ ...from, documents: { ...from.documents, jobs: [done] } });
    expect(found.filter(({ subject }) => subject.of === 'scrap').map(({ places }) => places)).toEqual([
      [],
      [],
    ]);
  });

  it('adds the presses of all runs to the first standard', () => {
    const twice = foldLearned(
      learnedFrom({ runs: [learnedRun(), learnedRun(clubFacts({ reprints: 0 }), 'later')] }),
    );
    const back = twice.find(({ subject }) => subject.of === 'scrap' && subject.position === 'back');
    expect(back?.measured).toBeCloseTo((1.75 + 4) / (50 + 82), 12);
    expect(back?.runIds).toEqual(['run', 'later']);
  });
});

describe('learnedShare', () => {
  it('never takes none in thirty for none at all', () => {
    const { measured, upper } = learnedShare(0.03, 50, 0, 30);
    expect(measured).toBeCloseTo(1.5 / 80, 12);
    expect(upper).toBeGreaterThan(measured);
  });

  it('is the standard where nothing was seen', () => {
    expect(learnedShare(0.035, 50, 0, 0).measured).toBeCloseTo(0.035, 12);
  });

  it('reads more seen than there were as all of them', () => {
    expect(learnedShare(0, 50, 60, 50).measured).toBe(0.5);
  });
});

describe('shrunk', () => {
  it('weighs the standard like five runs', () => {
    // (5 · 2.4 + 3 + 3.6) ÷ 7; the sample deviates by 0.6 ÷ √2.
    const { measured, spread } = shrunk(2.4, [3, 3.6]);
    expect(measured).toBeCloseTo(18.6 / 7, 12);
    expect(spread).toBeCloseTo(0.6 / Math.SQRT2, 12);
  });

  it('has no spread of one', () => {
    expect(shrunk(2.4, [3]).spread).toBeNull();
  });
});

describe('prices paid', () => {
  it('are taken over whole: each size so much dearer as the mean was', () => {
    // 4.95 for 4.8297: 0.12 more, so 4.60 becomes 4.72 and 6.10 becomes 6.22.
    const prices = lessons.filter(({ subject }) => subject.of === 'blankPrice');
    expect(new Set(prices.map(({ measured }) => measured))).toEqual(new Set([4.72, 6.22, 7.22]));
    expect(prices[0]?.places[0]?.after).toMatchObject({ value: 4.72, origin: 'yours' });
  });

  it('of a delivery come before what was typed', () => {
    const item = { kind: 'blank' as const, blankId: 'white-shirt', size: 'M' };
    const found = foldLearned(learnedFrom({ prices: [{ item, each: 5.1, day: '2026-12-01' }] }));
    const ofM = found.find(({ subject }) => subject.of === 'blankPrice' && subject.size === 'M');
    expect(ofM?.measured).toBe(5.1);
  });

  it('of a roll is that of a metre, though a run counts it in sheets', () => {
    const { standard, ...run } = learnedRun();
    const works = standard.works.map((work) => ({ ...work, sheets: { ...work.sheets, metresEach: 0.1 } }));
    const found = foldLearned(learnedFrom({ runs: [{ ...run, standard: { ...standard, works } }] }));
    // 8.70 for 58 sheets of 0.1 m are 1.50 a metre.
    expect(found.find(({ subject }) => subject.of === 'sheetPrice')?.measured).toBeCloseTo(1.5, 9);
  });

  it('of a sheet is that of the bill', () => {
    const sheet = lessons.find(({ subject }) => subject.of === 'sheetPrice');
    expect(sheet?.measured).toBeCloseTo(0.15, 12);
  });
});

describe('minutes', () => {
  it('of work done once shrink towards the standard and go to the rate of the workshop', () => {
    const facts = { ...clubFacts({ reprints: null }), hours: [hour(37, 'setUp')] };
    const found = foldLearned(learnedFrom({ runs: [learnedRun(facts)] }));
    const setUp = found.find(({ subject }) => subject.of === 'minutes' && subject.element === 'setUp');
    // (5 · 25 + 37) ÷ 6
    expect(setUp?.measured).toBeCloseTo(27, 12);
    expect(setUp?.places[0]?.after).toMatchObject({ value: 27, origin: 'measured', count: 1 });
  });

  it('of a press follow the clock of that print', () => {
    const timed = hour(123, 'presses');
    const facts = {
      ...clubFacts({ reprints: null }),
      hours: [{ ...timed, body: { ...timed.body, placementId: 'back' } }],
    };
    const found = foldLearned(learnedFrom({ runs: [learnedRun(facts)] }));
    const press = found.find(({ subject }) => subject.of === 'minutes' && subject.element === 'presses');
    // 123 min for 41 presses are 3.0 each: (5 · 2.4 + 3) ÷ 6
    expect(press?.measured).toBeCloseTo(2.5, 12);
  });
});

describe('minutes of a press', () => {
  const timed = (minutes: number) => {
    const entry = hour(minutes, 'presses');
    return { ...entry, body: { ...entry.body, placementId: 'back' } };
  };
  const pressLesson = (from: ReturnType<typeof learnedFrom>) =>
    foldLearned(from).filter(({ subject }) => subject.of === 'minutes' && subject.element === 'presses');

  it('go to the job without the allowance for rest, which its sums put on top', () => {
    const from = learnedFrom({
      runs: [learnedRun({ ...clubFacts({ reprints: null }), hours: [timed(123)] })],
    });
    const { workshop } = from.documents;
    if (workshop === null) throw new Error('a workshop');
    const restAllowance = {
      value: 0.25,
      unit: 'share' as const,
      date: '2026-01-31',
      origin: 'yours' as const,
    };
    const rates = { ...workshop.body.rates, restAllowance };
    const rested = { ...workshop, body: { ...workshop.body, rates } };
    const [lesson] = pressLesson({ ...from, documents: { ...from.documents, workshop: rested } });
    // 2.5 min with rest are 2.0 and a quarter.
    expect(lesson?.measured).toBeCloseTo(2.5, 12);
    expect(lesson?.places[0]?.after).toMatchObject({ value: 2 });
  });

  it('are those of a job and of its copy together, whose prints bear one id', () => {
    const facts = clubFacts({ reprints: null });
    const { standard, ...run } = learnedRun({ ...facts, hours: [timed(123)] });
    const half = facts.pressings.map((entry, at) =>
      at % 2 === 0 ? entry : { ...entry, body: { ...entry.body, jobId: 'copy' } },
    );
    const works = standard.works.flatMap((work) => [work, { ...work, jobId: 'copy' }]);
    const both = { ...run, standard: { ...standard, works }, facts: { ...run.facts, pressings: half } };
    const lessons = pressLesson(learnedFrom({ runs: [both] }));
    // 123 min for all 41 presses of both are 3.0 each, as of one.
    expect(lessons.map(({ measured, observations }) => [measured, observations])).toEqual([[2.5, 1]]);
  });
});

describe('the price of a size', () => {
  const from = learnedFrom({
    prices: [{ item: { kind: 'blank', blankId: 'white-shirt', size: 'M' }, each: 4.95, day: '2026-12-01' }],
  });
  const blank = from.documents.blanks.find(({ id }) => id === 'white-shirt')?.body;
  const price = foldLearned(from).find(({ subject }) => subject.of === 'blankPrice' && subject.size === 'M');

  it('follows its size where the sizes were sorted anew since', () => {
    if (blank === undefined || price === undefined) throw new Error('a price');
    // S, M, L, XL cost the same: its place in the list alone does not tell them apart.
    const turned = { ...blank, sizes: blank.sizes.toReversed() };
    const { edits, body } = takeOver(price, () => turned, '2026-12-12');
    const written = withEdits(turned, 'blank', 'white-shirt', edits);
    const dearer = written.sizes.filter((size) => size.price?.value === 4.95);
    expect(dearer.map(({ name }) => name)).toEqual(['M']);
    const back = takeBack(body, () => ({ ...written, sizes: written.sizes.toReversed() }));
    expect(back.left).toEqual([]);
    expect(
      withEdits({ ...written, sizes: written.sizes.toReversed() }, 'blank', 'white-shirt', back.edits),
    ).toEqual(blank);
  });

  it('is left, and told, where its size is gone', () => {
    if (blank === undefined || price === undefined) throw new Error('a price');
    const { edits, body } = takeOver(price, () => blank, '2026-12-12');
    const written = withEdits(blank, 'blank', 'white-shirt', edits);
    // Of a list without S and M, whose second size now costs just as much.
    const sizes = written.sizes
      .filter(({ name }) => name !== 'S' && name !== 'M')
      .map((size) => ({ ...size, price: written.sizes[1]?.price ?? null }));
    const { edits: none, left } = takeBack(body, () => ({ ...written, sizes }));
    expect([none, left]).toEqual([[], body.places]);
  });
});

describe('two lessons at one place', () => {
  const path = ['rates', 'sheetReject'];
  const taking = (before: number, after: number, path_ = path) => ({
    body: {
      subject: { of: 'sheetReject' as const },
      places: [{ kind: 'workshop' as const, id: 'workshop', path: path_, before, after }],
    },
  });

  it('are taken back the newest first', () => {
    const [first, second, other] = [
      taking(0.02, 0.03),
      taking(0.03, 0.04),
      taking(1, 2, ['rates', 'packMinutes']),
    ];
    expect(topmostTaken([first, second, other])).toEqual([second, other]);
    expect(topmostTaken([first, other])).toEqual([first, other]);
  });
});

describe('faults before the press', () => {
  const blankFault = noteOf('blankFault', {
    ...{ runId: 'run', blankId: 'white-shirt', size: 'M', lot: null, pieces: 2, fault: null },
  });

  it('of blanks are learned once one is noted', () => {
    expect(lessons.some(({ subject }) => subject.of === 'blankFault')).toBe(false);
    const facts = { ...clubFacts({ reprints: null }), blankFaults: [blankFault] };
    const found = foldLearned(learnedFrom({ runs: [learnedRun(facts)] }));
    const fault = found.find(({ subject }) => subject.of === 'blankFault');
    // (100 · 0.01 + 2) ÷ (100 + 43)
    expect(fault?.measured).toBeCloseTo(3 / 143, 9);
  });

  it('of sheets count like 50 sheets of the share in force', () => {
    const printed = noteOf('sheetsPrinted', {
      ...{
        runId: 'run',
        standardId: null,
        jobId: 'club',
        placementId: null,
        good: 47,
        rejected: 3,
        fault: null,
      },
    });
    const facts = { ...clubFacts({ reprints: null }), sheetsPrinted: [printed] };
    const found = foldLearned(learnedFrom({ runs: [learnedRun(facts)] }));
    // (50 · 0.02 + 3) ÷ 100
    expect(found.find(({ subject }) => subject.of === 'sheetReject')?.measured).toBeCloseTo(0.04, 12);
  });
});

describe('ink', () => {
  it('is watched, not written anywhere', () => {
    const ink = lessons.find(({ subject }) => subject.of === 'ink');
    // 35.102 · (5 + 44 ÷ 35.102) ÷ 6
    expect(ink?.measured).toBeCloseTo((5 * 35.102 + 44) / 6, 8);
    expect(ink?.places).toEqual([]);
  });
});

describe('a lesson taken over', () => {
  it('is told by an entry its schema reads', () => {
    const { workshop, blanks, job } = club();
    const bodyOf = (kind: string, id: string) =>
      kind === 'job' ? job : kind === 'blank' ? blanks[id] : workshop;
    for (const lesson of lessons) {
      const { body } = takeOver(lesson, bodyOf, '2026-12-12');
      expect(rateTakenSchema.parse(body)).toEqual(body);
    }
  });
});
