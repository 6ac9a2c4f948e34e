import { describe, expect, it } from 'vitest';
import { startingPlacement } from '@/lib/drafts/startingPlacement';
import { measuredScrap } from '@/lib/learning/measuredScrap';
import type { RateTaken } from '@/shared/schemas/making/learnedEvents';
import { club, TODAY } from '@/tests/fixtures/clubJob';

const { workshop, blanks } = club();
const blank = blanks['white-shirt'] ?? null;

const taken = (value: number, blankId = 'white-shirt'): RateTaken[] =>
  workshop.presses.flatMap(({ id: pressId }) =>
    (['front', 'back', 'leftChest'] as const).map((position) => ({
      ...{ day: '2026-12-12', value, observations: 41, spread: null, runIds: ['run'], places: [] },
      subject: { of: 'scrap' as const, blankId, pressId, position },
    })),
  );

const scrapOf = (entries: readonly RateTaken[]) =>
  startingPlacement({
    ...{ id: 'new', artworkId: 'art', blank, workshop, sheet: null, printer: null, day: TODAY },
    measuredScrap: measuredScrap(entries, 'white-shirt'),
  }).scrap;

describe('a new placement', () => {
  it('begins with the newest scrap that was measured for its blank, press and place', () => {
    expect(scrapOf([...taken(0.03), ...taken(0.0412)])).toEqual({
      ...{ value: 0.0412, unit: 'share', date: '2026-12-12', origin: 'measured', count: 41 },
    });
  });

  it('is typical where nothing was taken over for it', () => {
    expect(scrapOf(taken(0.0412, 'black-shirt'))?.origin).toBe('typical');
  });
});
