import { describe, expect, it } from 'vitest';
import { foldPressings } from '@/lib/pressing/foldPressings';
import { pressedSummary } from '@/lib/pressing/pressedSummary';
import { pressTurns } from '@/lib/pressing/pressTurns';
import { twiceRunningChance } from '@/lib/pressing/stopRule';
import type { ClockPart } from '@/shared/schemas/making/runPapers';
import { clubStandard, pieceOf, pressedOn } from '@/tests/fixtures/clubPressing';

const badge = { placementId: 'badge' } as const;

describe('pressedSummary', () => {
  it('counts what came out of the last press, and what any press lost', () => {
    const run = foldPressings(
      clubStandard,
      pressedOn([
        pieceOf('M'),
        pieceOf('M', 'scrap', { fault: 'ghost' }),
        pieceOf('L'),
        pieceOf('M', 'good', badge),
        pieceOf('L', 'scrap', { ...badge, fault: 'ghost' }),
        pieceOf('L', 'scrap', badge),
      ]),
      [],
    );
    const made = pressedSummary(run);
    expect(made.sizes.slice(0, 2)).toMatchObject([
      { size: 'M', wanted: 9, good: 1, seconds: 0, lost: 1 },
      { size: 'L', wanted: 11, good: 0, seconds: 0, lost: 2 },
    ]);
    expect(made).toMatchObject({ wanted: 37, good: 1, lost: 3, toGo: 36 });
    expect(made.lostBy).toEqual([
      { fault: 'ghost', pieces: 2 },
      { fault: null, pieces: 1 },
    ]);
  });
});

describe('twiceRunningChance', () => {
  it('of two presses is the square, and of three at a half 3 of 8', () => {
    expect(twiceRunningChance(2, 0.03)).toBeCloseTo(0.0009, 12);
    // Spoiled S, good G: SSS, SSG and GSS of eight.
    expect(twiceRunningChance(3, 0.5)).toBeCloseTo(3 / 8, 12);
    expect(twiceRunningChance(1, 0.5)).toBe(0);
  });
});

describe('pressTurns', () => {
  const [work] = clubStandard.works;
  if (work === undefined) throw new Error('the standard has changed');
  const works = [work, { ...work, jobId: 'garden', name: 'Garden shirts' }];
  const part = (jobId: string, placementId: string, fromMinute: number): ClockPart => ({
    ...{ what: 'press', name: 'Back', session: 0, day: '2026-11-28', fromMinute, minutes: 60 },
    turn: { jobId, lineId: 'shirts', placementId },
  });

  it('follows the clock where prints of several jobs have one name', () => {
    const clock = [
      part('garden', 'back', 1080),
      part('garden', 'badge', 1140),
      part('club', 'back', 1200),
      part('club', 'badge', 1260),
    ];
    const turns = pressTurns({ ...clubStandard, works, clock });
    expect(turns.map(({ jobId, placementId }) => `${jobId} ${placementId}`)).toEqual([
      'garden back',
      'garden badge',
      'club back',
      'club badge',
    ]);
  });
});

describe('what is ready at a press', () => {
  const turnsOf = (...pieces: ReturnType<typeof pieceOf>[]) =>
    foldPressings(clubStandard, pressedOn(pieces), []).turns;

  it('is what came out of the press before, and a print that waits for it is no longer up', () => {
    const [back, badges] = turnsOf(pieceOf('M'), pieceOf('M'), pieceOf('M', 'good', badge));
    expect([back?.ready, back?.isThrough]).toEqual([35, false]);
    expect([badges?.ready, badges?.isThrough]).toEqual([1, false]);
    const [, all] = turnsOf(pieceOf('M'), pieceOf('M', 'good', badge));
    expect([all?.ready, all?.isThrough, all?.toGo]).toEqual([0, true, 36]);
  });

  it('is not waited for where nobody logged the print before', () => {
    const [, badges] = turnsOf(pieceOf('M', 'good', badge));
    expect(badges?.isThrough).toBe(false);
  });
});
