import { describe, expect, it } from 'vitest';
import { runSheetFacts } from '@/lib/making/sheet/runSheetFacts';
import { standardOf } from '@/lib/making/standard/standardOf';
import { foldPressings } from '@/lib/pressing/foldPressings';
import { addDays } from '@/shared/days';
import { club, clubWith, TODAY } from '@/tests/fixtures/clubJob';
import { jobsOf, ownBlock, planned, runAsked } from '@/tests/fixtures/clubRun';

/** Badges alone, which the sequence puts first, for they are one side; wanted a month after the club's shirts. */
function fair() {
  const [line] = club().job.lines;
  if (line === undefined) throw new Error('no line');
  return clubWith({
    'job.wantedOn': addDays(TODAY, 60),
    'job.lines.0.placements': line.placements.slice(1).map((one) => ({ ...one, id: 'fair-badge' })),
  });
}

describe('prints of two jobs of which the one wanted sooner is pressed a week before', () => {
  // 37 and 37 pieces fill a heating-up each: lines are laid by the day they are wanted on.
  const asked = runAsked(
    { ownBlocks: [ownBlock(addDays(TODAY, 10)), ownBlock(addDays(TODAY, 17))] },
    { fair: fair(), club: clubWith({ 'job.wantedOn': addDays(TODAY, 30) }) },
  );
  const plan = planned(asked);
  const jobs = jobsOf(asked);
  const standard = standardOf({
    ...{ runId: 'run', run: asked.run, jobs, plan },
    ...{ number: { count: 1, letter: 'A' }, issuedOn: TODAY },
  });
  const before = runSheetFacts(jobs, { plan, cover: 'usual' });
  const begun = runSheetFacts(jobs, { standard });
  const told = ({ presses }: typeof before) =>
    presses.map(({ jobId, of, times }) => [jobId, of.placement.name, times[0]?.day]);

  it('stand by the clock, before the run begins, after it and at the press', () => {
    const byClock = [
      ['club', 'Back picture', addDays(TODAY, 10)],
      ['club', 'Chest badge', addDays(TODAY, 10)],
      ['fair', 'Chest badge', addDays(TODAY, 17)],
    ];
    expect(told(before)).toEqual(byClock);
    expect(told(begun)).toEqual(byClock);
    const { turns } = foldPressings(standard, [], []);
    expect(turns.map(({ jobId, placement }) => [jobId, placement.name])).toEqual(
      byClock.map(([jobId, name]) => [jobId, name]),
    );
  });

  it('have their stacks laid out in that order', () => {
    for (const { stacks } of [before, begun])
      expect([...new Set(stacks.map(({ jobId }) => jobId))]).toEqual(['club', 'fair']);
  });
});
