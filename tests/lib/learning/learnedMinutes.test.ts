import { describe, expect, it } from 'vitest';
import { foldLearned } from '@/lib/learning/foldLearned';
import type { LearnedFrom, LearnedRun } from '@/lib/learning/learnedFrom';
import type { Lesson } from '@/lib/learning/lesson';
import { sortedLessons } from '@/lib/learning/sortedLessons';
import { takeOver, withEdits } from '@/lib/learning/takeOver';
import { runResult } from '@/lib/variances/runResult';
import type { WorkElement } from '@/shared/schemas/making/runEvents';
import { clubFacts, hour } from '@/tests/fixtures/clubStandard';
import { learnedFrom, learnedRun } from '@/tests/fixtures/learnedRun';

const day = '2026-12-12';

/** A run whose standard plans an element so many times over, and what the clock said of it. */
function timed(runId: string, element: WorkElement, minutes: number, times = 1, begunOn = day): LearnedRun {
  const facts = { ...clubFacts({ reprints: null }), hours: [hour(minutes, element)] };
  const { standard } = learnedRun(facts, runId);
  const works = standard.works.map((work) => ({
    ...work,
    labour: {
      ...work.labour,
      elements: work.labour.elements.map((one) =>
        one.element === element ? { ...one, minutes: one.minutes * times } : one,
      ),
    },
  }));
  const body = { ...standard, works, issuedOn: begunOn };
  const paid = { blank: () => null, sheet: () => null };
  return { runId, standard: body, facts, result: runResult({ body }, { facts, paid, orderHours: [] }) };
}

const lessonOf = (from: LearnedFrom, element: WorkElement): Lesson | undefined =>
  foldLearned(from).find(({ subject }) => subject.of === 'minutes' && subject.element === element);

describe('minutes of work done once', () => {
  it('do not move where every run took what its own standard plans, however often it heated up', () => {
    const from = learnedFrom({ runs: [timed('one', 'setUp', 25), timed('two', 'setUp', 75, 3)] });
    expect(lessonOf(from, 'setUp')).toMatchObject({ standard: 25, measured: 25, observations: 2, spread: 0 });
    expect(sortedLessons(foldLearned(from), []).moved.filter(isSetUp)).toEqual([]);
  });

  it('move by how much longer than its own standard each took', () => {
    // 37 of 25 and 81 of 75: 37 and 27 a heating-up; (5 · 25 + 37 + 27) ÷ 7 = 27. The sample deviates by 10 ÷ √2.
    const lesson = lessonOf(
      learnedFrom({ runs: [timed('one', 'setUp', 37), timed('two', 'setUp', 81, 3)] }),
      'setUp',
    );
    expect(lesson?.measured).toBeCloseTo(27, 12);
    expect(lesson?.spread).toBeCloseTo(10 / Math.SQRT2, 12);
    expect(lesson?.places[0]?.after).toMatchObject({ value: 27, origin: 'measured', count: 2 });
  });

  it('measure a run begun after they were taken over against what it began with', () => {
    const first = learnedFrom({ runs: [timed('one', 'setUp', 37)] });
    const lesson = lessonOf(first, 'setUp');
    const { workshop } = first.documents;
    if (lesson === undefined || workshop === null) throw new Error('no lesson');
    const { edits, body } = takeOver(lesson, () => workshop.body, day);
    const held = { ...workshop, body: withEdits(workshop.body, 'workshop', 'workshop', edits) };
    const documents = { ...first.documents, workshop: held };
    expect(held.body.rates.setUpMinutes?.value).toBe(27);
    // Told again it is the same figure: nothing is counted twice.
    expect(lessonOf({ ...first, documents, taken: [body] }, 'setUp')).toMatchObject({
      ...{ standard: 25, measured: 27, places: [] },
    });
    // A second one, of 27 planned, took 37 too: (5 · 25 + 37 + 37) ÷ 7.
    const second = timed('two', 'setUp', 37, 27 / 25, '2026-12-13');
    const both = { ...first, runs: [...first.runs, second], documents, taken: [body] };
    expect(lessonOf(both, 'setUp')?.measured).toBeCloseTo(199 / 7, 12);
  });
});

describe('minutes of work done often', () => {
  it('of sheets go to the rate of one', () => {
    // A fifth more than planned, one run of six: 1 · (1 + 0.2 ÷ 6)
    const lesson = lessonOf(learnedFrom({ runs: [timed('one', 'sheets', 52.8975 * 1.2)] }), 'sheets');
    expect(lesson?.measured).toBeCloseTo(1 + 0.2 / 6, 12);
    expect(lesson?.places[0]).toMatchObject({ kind: 'workshop', path: ['rates', 'sheetMinutes'] });
  });

  it('of finishing go to the one blank', () => {
    // 88.8 of 44.4 planned is twice 1.2 a piece: (5 · 1.2 + 2.4) ÷ 6 = 1.4
    const lesson = lessonOf(learnedFrom({ runs: [timed('one', 'finish', 88.8)] }), 'finish');
    expect(lesson?.measured).toBeCloseTo(1.4, 12);
    expect(lesson?.places[0]).toMatchObject({ kind: 'blank', id: 'white-shirt', path: ['finishMinutes'] });
  });

  it('of artwork, and of presses that nobody told apart, are watched', () => {
    // 90 of 45 planned: 45 · (5 + 2) ÷ 6; of the presses half of what was planned.
    const art = lessonOf(learnedFrom({ runs: [timed('one', 'art', 90)] }), 'art');
    expect([art?.standard, art?.places]).toEqual([45, []]);
    expect(art?.measured).toBeCloseTo(52.5, 12);
    const presses = lessonOf(learnedFrom({ runs: [timed('one', 'presses', 177.9844 / 2)] }), 'presses');
    expect(presses?.measured).toBeCloseTo((177.9844 * 5.5) / 6, 8);
    expect(presses?.places).toEqual([]);
  });

  it('are told for every element that somebody noted', () => {
    const all = [
      'enquiry',
      'art',
      'proof',
      'setUp',
      'sheets',
      'finish',
      'pack',
      'cleanDown',
      'deliver',
    ] as const;
    for (const element of all)
      expect(lessonOf(learnedFrom({ runs: [timed('one', element, 60)] }), element), element).toBeDefined();
  });
});

// Helpers

const isSetUp = ({ subject }: Lesson): boolean => subject.of === 'minutes' && subject.element === 'setUp';
