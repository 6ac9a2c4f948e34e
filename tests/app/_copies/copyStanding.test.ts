import { describe, expect, it } from 'vitest';
import { copyStanding } from '@/app/_copies/copyStanding';

const facts = { ownSince: '2026-11-01', lastCopyOn: null, hasNew: true, today: '2026-11-26' };

describe('copyStanding', () => {
  it('is quiet while all that is here is the example', () => {
    expect(copyStanding({ ...facts, ownSince: null, hasNew: false })).toEqual({ state: 'nothingOwn' });
  });

  it.each([
    ['2026-11-24', false],
    ['2026-11-23', true],
    ['2026-11-01', true],
  ])('asks whoever never copied on the third day: own since %s, due %s', (ownSince, isDue) => {
    expect(copyStanding({ ...facts, ownSince })).toEqual({ state: 'never', isDue });
  });

  it.each([
    ['2026-11-26', 0, false],
    ['2026-11-19', 7, false],
    ['2026-11-18', 8, true],
    ['2026-11-14', 12, true],
  ])('asks again once a copy of %s is older than a week', (lastCopyOn, daysOld, isDue) => {
    expect(copyStanding({ ...facts, lastCopyOn })).toEqual({
      state: 'copied',
      daysOld,
      hasNew: true,
      isDue,
    });
  });

  it('is quiet however old the copy is while nothing changed since', () => {
    const standing = copyStanding({ ...facts, lastCopyOn: '2026-01-01', hasNew: false });
    expect(standing).toMatchObject({ state: 'copied', isDue: false });
  });

  it('never tells a negative age where the clock was set back', () => {
    const standing = copyStanding({ ...facts, lastCopyOn: '2026-12-24' });
    expect(standing).toMatchObject({ daysOld: 0, isDue: false });
  });
});
