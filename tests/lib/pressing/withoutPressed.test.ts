import { describe, expect, it } from 'vitest';
import { judgeJob } from '@/lib/costing/priceJob';
import { standardOf } from '@/lib/making/standard/standardOf';
import { recipesPressed, withoutPressed } from '@/lib/pressing/withoutPressed';
import { pressingSchema } from '@/shared/schemas/making/runEvents';
import type { JobInput } from '@/shared/schemas/request';
import { club, clubWith, TODAY } from '@/tests/fixtures/clubJob';
import { jobsOf, planned, runAsked } from '@/tests/fixtures/clubRun';
import { grid } from '@/tests/fixtures/costed';

/** The badge at another dwell than the back, so that each has a recipe of its own; neither was pressed by the job's own count. */
const apart = (badgeSeconds = 50) =>
  clubWith({
    'job.lines.0.placements.0.recipe.provenPresses': 0,
    'job.lines.0.placements.1.recipe.provenPresses': 0,
    'job.lines.0.placements.1.recipe.dwellSeconds': badgeSeconds,
  });

/** What a run of the job logged: a piece of each of these prints, by their places. */
function logged(input: JobInput, ...slots: readonly number[]) {
  const asked = runAsked({}, { club: input });
  const body = standardOf({
    ...{ runId: 'run', run: asked.run, jobs: jobsOf(asked), plan: planned(asked) },
    ...{ number: { count: 1, letter: 'A' }, issuedOn: TODAY },
  });
  const [line] = input.job.lines;
  const pressings = slots.map((slot) => ({
    body: pressingSchema.parse({
      ...{ runId: 'run', standardId: 'standard', jobId: 'club', lineId: line?.id, size: 'M' },
      ...{ placementId: line?.placements[slot]?.id, result: 'good' },
    }),
  }));
  return recipesPressed(pressings, [{ id: 'standard', body }]);
}

const never = (input: JobInput, pressed: ReadonlySet<string>) =>
  withoutPressed(judgeJob(input, grid).answer.findings, input.job, pressed).filter(
    ({ id }) => id === 'REC-12',
  );

describe('that a recipe was never pressed on a blank', () => {
  it('is told while the log has no press of it, or of one of its prints alone', () => {
    expect(never(apart(), new Set())).toMatchObject([{ variant: 'never' }]);
    expect(never(apart(), logged(apart(), 0))).toHaveLength(1);
    expect(never(apart(), logged(apart(), 1))).toHaveLength(1);
  });

  it('is left out where the log has presses of all', () => {
    expect(never(apart(), logged(apart(), 0, 1))).toEqual([]);
  });

  it('is told again where the recipe is another now, and nothing else is left out', () => {
    expect(never(apart(45), logged(apart(), 0, 1))).toHaveLength(1);
    const { findings } = judgeJob(apart(), grid).answer;
    const kept = withoutPressed(findings, apart().job, logged(apart(), 0, 1));
    expect(kept).toEqual(findings.filter(({ id }) => id !== 'REC-12'));
    expect(kept.length).toBeGreaterThan(0);
  });

  it('stays what the worked example says by its own count', () => {
    const { findings } = judgeJob(club(), grid).answer;
    const counted = findings.filter(({ id }) => id === 'REC-12');
    expect(never(club(), new Set())).toEqual(counted);
  });
});
