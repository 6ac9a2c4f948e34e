import { describe, expect, it } from 'vitest';
import { learnedScrap } from '@/lib/learning/learnedScrap';
import { runsToLearnFrom } from '@/lib/learning/runsToLearnFrom';
import { upperScrap } from '@/lib/learning/upperScrap';
import { factsOfRuns, type StandardPaper } from '@/lib/making/runFacts';
import { runSchema } from '@/shared/schemas/making/run';
import { club, TODAY } from '@/tests/fixtures/clubJob';
import { clubPressings, clubStandard } from '@/tests/fixtures/clubStandard';

const run = runSchema.parse({ name: 'Club shirts', works: [{ jobId: 'club', orderId: null }] });
const pressId = club().job.lines[0]?.placements[0]?.pressId ?? '';

function begun(runId: string, at: number, backScrap: number): StandardPaper {
  const body = clubStandard();
  const works = body.works.map((work) => ({
    ...work,
    lines: work.lines.map((line) => ({
      ...line,
      placements: line.placements.map((one) => ({
        ...one,
        pressId,
        scrap: one.position === 'back' ? backScrap : one.scrap,
      })),
    })),
  }));
  return { id: `of-${runId}`, device: 'one', at, withdrawn: false, body: { ...body, runId, works } };
}

/** Both made alike: 41 backs each, two of them spoiled. */
const pressedIn = (runId: string) =>
  clubPressings().map((entry) => ({ ...entry, id: `${runId} ${entry.id}`, body: { ...entry.body, runId } }));

/** The club's run at 3.5 %, then a second one under what the first taught, 4.12 %. */
const inOrder = (first: string, second: string, documents: readonly string[]) =>
  runsToLearnFrom(
    factsOfRuns(
      Object.fromEntries(documents.map((id) => [id, run])),
      [...pressedIn('a'), ...pressedIn('z')],
      [begun(first, 1000, 0.035), begun(second, 2000, 0.0412)],
    ),
  );

const none = { jobs: [] };

// By hand: (50 · 0.035 + 2 + 2) ÷ (50 + 41 + 41) = 5.75 ÷ 132 = 4.356 %. From 4.12 % it would be 4.591 %.
describe('the first begun is measured from', () => {
  it.each([
    ['a', 'z', ['a', 'z']],
    ['z', 'a', ['a', 'z']],
    ['z', 'a', ['z', 'a']],
  ])('of %s before %s, with documents as %s', (first, second, documents) => {
    const runs = inOrder(first, second, documents);
    expect(runs.map(({ runId }) => runId)).toEqual([first, second]);
    const back = learnedScrap({ runs, documents: none, day: TODAY }).find(
      ({ subject }) => subject.of === 'scrap' && subject.position === 'back',
    );
    expect(back?.standard).toBe(0.035);
    expect(back?.measured).toBeCloseTo(5.75 / 132, 12);
  });

  it('for the bound that blanks are bought by, too', () => {
    const { job } = club();
    const [one, other] = [inOrder('z', 'a', ['a', 'z']), inOrder('a', 'z', ['a', 'z'])];
    expect(upperScrap(one, TODAY)(job)).toEqual(upperScrap(other, TODAY)(job));
  });

  it('goes by the id where two were begun at once', () => {
    const facts = factsOfRuns({ z: run, a: run }, [], [begun('z', 1000, 0.035), begun('a', 1000, 0.035)]);
    expect(runsToLearnFrom(facts).map(({ runId }) => runId)).toEqual(['a', 'z']);
  });

  it('leaves out what was begun without a standard', () => {
    expect(runsToLearnFrom(factsOfRuns({ a: run }, pressedIn('a'), []))).toEqual([]);
  });
});
