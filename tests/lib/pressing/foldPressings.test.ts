import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldPressings } from '@/lib/pressing/foldPressings';
import type { PressedEntry } from '@/lib/pressing/pressedEntry';
import { pressFaults } from '@/shared/tables/faults';
import { clubStandard, faultyOn, pieceOf, pressedOn } from '@/tests/fixtures/clubPressing';
import { cases } from '@/tests/tools/cases';

const fold = (pressed: readonly PressedEntry[], faulty: Parameters<typeof foldPressings>[2] = []) =>
  foldPressings(clubStandard, pressed, faulty);
const times = <Of>(many: number, of: Of): readonly Of[] => Array.from({ length: many }, () => of);
const at = (run: ReturnType<typeof fold>, placementId: string, size: string) => {
  const counts = run.turns.find((turn) => turn.placementId === placementId)?.counts ?? [];
  const found = counts.find((one) => one.size === size);
  if (found === undefined) throw new Error(`no ${size} at ${placementId}`);
  return found;
};
const badge = { placementId: 'badge' } as const;

describe('foldPressings', () => {
  it('of nothing yet wants all of the first print, and begins with the first size', () => {
    const { turns, current } = fold([]);
    expect(turns.map(({ placementId, toGo }) => [placementId, toGo])).toEqual([
      ['back', 37],
      ['badge', 37],
    ]);
    expect([current?.placementId, current?.next, current?.afterNext]).toEqual(['back', 'M', 'L']);
    expect(current?.counts.map(({ size, sparesLeft }) => [size, sparesLeft])).toEqual([
      ['M', 2],
      ['L', 2],
      ['XL', 2],
      ['S', 1],
      ['2XL', 1],
      ['3XL', 0],
    ]);
  });

  it('counts good, scrap by its fault and what is next', () => {
    const run = fold(
      pressedOn([
        ...times(9, pieceOf('M')),
        ...times(4, pieceOf('L')),
        pieceOf('L', 'scrap', { fault: 'ghost' }),
        pieceOf('L', 'scrap'),
      ]),
    );
    const l = at(run, 'back', 'L');
    expect([l.good, l.scrap, l.toGo, l.sparesLeft]).toEqual([4, 2, 7, 0]);
    expect([...l.scrapByFault]).toEqual([
      ['ghost', 1],
      [null, 1],
    ]);
    expect([run.current?.good, run.current?.scrap, run.current?.next]).toEqual([13, 2, 'L']);
    expect(run.withoutCause.map(({ id }) => id)).toEqual(['pressphone1-15']);
  });

  it('a shirt spoiled by the second press takes a spare through both', () => {
    const run = fold(
      pressedOn([...times(4, pieceOf('S')), pieceOf('S', 'scrap', { ...badge, fault: 'specks' })]),
    );
    expect(at(run, 'back', 'S')).toMatchObject({ good: 4, toGo: 1, sparesLeft: 0, moreThanCame: 0 });
    expect(at(run, 'badge', 'S')).toMatchObject({ good: 0, scrap: 1, toGo: 4, sparesLeft: 0 });
  });

  it('a second of the last press takes a spare, one of the first goes on', () => {
    const first = fold(pressedOn([pieceOf('S', 'second', { fault: 'pale' }), ...times(3, pieceOf('S'))]));
    expect(at(first, 'back', 'S')).toMatchObject({ seconds: 1, toGo: 0, sparesLeft: 1 });
    const last = fold(
      pressedOn([...times(4, pieceOf('S')), pieceOf('S', 'second', { ...badge, fault: 'pale' })]),
    );
    expect(at(last, 'back', 'S')).toMatchObject({ toGo: 1, sparesLeft: 0 });
  });

  it('says how many cannot be made once no spare is left', () => {
    expect(at(fold(pressedOn([pieceOf('3XL', 'scrap')])), 'back', '3XL')).toMatchObject({
      toGo: 1,
      sparesLeft: -1,
    });
  });

  it('a blank found faulty before it was pressed takes a spare of its size', () => {
    const run = fold([], [faultyOn('XL', 2, 1)]);
    expect(at(run, 'back', 'XL')).toMatchObject({ sparesLeft: 0, toGo: 8, scrap: 0 });
    expect(fold([], [faultyOn('XL', 1, 1, 'mug')]).faultyOutside).toHaveLength(1);
  });

  it('keeps and tells more than was laid out, and more than came out of the press before', () => {
    const run = fold(pressedOn([...times(3, pieceOf('3XL', 'scrap')), pieceOf('3XL', 'good', badge)]));
    expect(at(run, 'back', '3XL')).toMatchObject({ scrap: 3, sparesLeft: -3, moreThanCame: 2 });
    expect(at(run, 'badge', '3XL')).toMatchObject({ good: 1, moreThanCame: 1 });
  });

  it('keeps pieces of a size, a print or a job that the standard does not name, and counts them nowhere', () => {
    const strange = pressedOn([
      pieceOf('5XL'),
      pieceOf('M', 'good', { placementId: 'sleeve' }),
      pieceOf('M', 'good', { jobId: 'other' }),
    ]);
    const run = fold([...strange, ...pressedOn([pieceOf('M')], 'pressphone1', 4)]);
    expect(run.outside.map(({ id }) => id)).toEqual(strange.map(({ id }) => id));
    expect(run.turns[0]?.good).toBe(1);
    expect(run.pressed).toHaveLength(4);
  });

  it('a cause that is named later keeps the place of its piece', () => {
    const run = fold([
      ...pressedOn([pieceOf('M'), pieceOf('M', 'scrap', { fault: 'pale', pressedAt: 30_000 })]),
    ]);
    expect(run.pressed.map(({ body }) => body.result)).toEqual(['scrap', 'good']);
  });

  it('is done once the last print is, and reckons the minutes that are left', () => {
    const all = clubStandard.works[0]?.lines[0]?.sizes ?? [];
    const backs = all.flatMap(({ size, wanted }) => times(wanted, pieceOf(size)));
    const badges = backs.map((body) => ({ ...body, ...badge }));
    expect(fold(pressedOn(backs)).current?.placementId).toBe('badge');
    expect(fold(pressedOn([...backs, ...badges])).current).toBeNull();
    // 37 presses of 2.4 min, one in 0.965 of them good.
    expect(fold([]).turns[0]?.minutesToGo).toBeCloseTo((37 * 2.4) / 0.965, 9);
  });

  it('comes to the same in any order, from two devices, and with entries that come twice', () => {
    const piece = fc.record({
      size: fc.constantFrom('S', 'M', 'L', '3XL', '5XL'),
      result: fc.constantFrom('good', 'second', 'scrap' as const),
      placementId: fc.constantFrom('back', 'badge'),
      fault: fc.constantFrom(null, ...pressFaults),
    });
    const log = fc.array(piece, { maxLength: 40 });
    fc.assert(
      fc.property(log, log, fc.infiniteStream(fc.nat()), (mine, theirs, keys) => {
        const noted = [
          ...pressedOn(
            mine.map((one) => pieceOf(one.size, 'good', one as never)),
            'pressphone1',
          ),
          ...pressedOn(
            theirs.map((one) => pieceOf(one.size, 'good', one as never)),
            'pressphone2',
            2,
          ),
        ];
        const faulty = [faultyOn('M', 1, 90), faultyOn('5XL', 1, 91)];
        const mixed = [...noted, ...noted.slice(0, 5)]
          .map((entry) => ({ entry, key: keys.next().value }))
          .sort((one, other) => one.key - other.key)
          .map(({ entry }) => entry);
        expect(fold(mixed, faulty.toReversed())).toEqual(fold(noted, faulty));
        // Nothing is lost: what was noted stands either in a turn or outside.
        const { turns, outside } = fold(mixed);
        const inTurns = turns.reduce((sum, turn) => sum + turn.good + turn.seconds + turn.scrap, 0);
        expect(inTurns + outside.length).toBe(noted.length);
      }),
      cases(200),
    );
  });
});
