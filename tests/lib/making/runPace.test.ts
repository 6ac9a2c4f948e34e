import { describe, expect, it } from 'vitest';
import { pressCycle } from '@/lib/making/pace/pressCycle';
import { runPace } from '@/lib/making/pace/runPace';
import type { JobInput } from '@/shared/schemas/request';
import { club, clubWith, mugs, TODAY } from '@/tests/fixtures/clubJob';
import { jobsOf, planned, runAsked } from '@/tests/fixtures/clubRun';

const tenths = (value: number) => Math.round(value * 10) / 10;

function pace(input: JobInput, isPreTaped = false) {
  const found = runPace(jobsOf(runAsked({}, { club: input })), isPreTaped);
  if (found === null) throw new Error('no piece');
  return found;
}

describe('one press', () => {
  const recipe = club().job.lines[0]?.placements[0]?.recipe;
  if (recipe === undefined) throw new Error('no recipe');

  it('takes 154 s: load and lint 20, preheat 10, align and tape 45, dwell 55, cool in place 12, peel 12', () => {
    // Source of the parts: common practice, from memory.
    expect(pressCycle(recipe, false)).toEqual({ seconds: 154, handSeconds: 77 });
    expect(pressCycle(recipe, true)).toEqual({ seconds: 129, handSeconds: 52 });
  });

  it('goes by the recipe, and by what is usual where the recipe does not say', () => {
    const untold = { ...recipe, preheatSeconds: null, steps: { ...recipe.steps, coolSeconds: null } };
    expect(pressCycle({ ...untold, dwellSeconds: 100 }, false).seconds).toBe(199);
    expect(pressCycle({ ...recipe, preheatSeconds: 0 }, false).seconds).toBe(144);
  });
});

describe('the pace of the worked run', () => {
  const found = pace(club());

  it('is that of the press, 12.5 shirts an hour', () => {
    // 98.7 + 79.3 = 177.98 min for 37; printer 132.24 min; hands 77 of 154 s.
    expect(found.bottleneck).toBe('press');
    expect(tenths(found.piecesPerHour)).toBe(12.5);
    expect(found.each.press).toBeCloseTo(177.984 / 37, 4);
    expect(found.each.printer).toBeCloseTo(132.244 / 37, 4);
    expect(found.each.hands).toBeCloseTo(177.984 / 37 / 2, 4);
  });

  it('gains 19.4 % by taping before; a second press leaves it to the hands', () => {
    expect(found.gains.map(({ what, gain, next }) => [what, tenths(gain * 100), next])).toEqual([
      // The hands are busy in half of a press: two of them keep both hands full.
      ['secondPress', 100, 'hands'],
      ['preTaping', 19.4, 'press'],
    ]);
  });

  it('is faster once transfers are taped before, and offers that no more', () => {
    const taped = pace(club(), true);
    expect(taped.piecesPerHour / found.piecesPerHour).toBeCloseTo(154 / 129, 9);
    expect(taped.gains.map(({ what }) => what)).toEqual(['secondPress']);
  });

  it('leaves all else that the hands do to the pace of the whole run', () => {
    // 352.28 min at the bench and on the road for 37.
    expect(found.wholeRun.bottleneck).toBe('hands');
    expect(tenths(found.wholeRun.each.hands)).toBe(9.5);
  });

  it('is that of a printer that takes longer than the press, until sheets are printed before', () => {
    const minutes = { value: 5, unit: 'min', date: TODAY, origin: 'yours' };
    const slow = pace(clubWith({ 'workshop.printers.0.unattendedMinutesPerSheet': minutes }));
    // 52.8975 × 5 = 264.49 min, the press 177.98.
    expect(slow.bottleneck).toBe('printer');
    expect(slow.gains.find(({ what }) => what === 'printBefore')).toMatchObject({
      gain: expect.closeTo(264.4876 / 177.9844 - 1, 4),
      next: 'press',
    });
  });

  it('takes the hands’ own minutes where a job says what the press does alone', () => {
    const found = pace(mugs());
    const [placement] = mugs().job.lines[0]?.placements ?? [];
    const [hand, alone] = [placement?.handMinutes?.value ?? 0, placement?.aloneMinutes?.value ?? 0];
    expect(alone).toBeGreaterThan(0);
    expect(found.each.hands / found.each.press).toBeCloseTo(hand / (hand + alone), 9);
  });
});

describe('a run of transfers taped before', () => {
  it('has the press hot for less, and as many minutes more with the sheets', () => {
    const [plain, taped] = [planned(runAsked()), planned(runAsked({ isPreTaped: true }))];
    const hot = (plan: typeof plain) => plan.sessions.reduce((sum, { minutes }) => sum + minutes, 0);
    // 177.98 × 25 ÷ 154 = 28.9.
    expect(tenths(hot(plain) - hot(taped))).toBe(28.9);
    expect(taped.pace?.gains.map(({ what }) => what)).toEqual(['secondPress']);
  });
});
