import { describe, expect, it } from 'vitest';
import {
  afterUndo,
  afterVerdict,
  NOTHING_AT_PRESS,
  putIn,
  sizesAhead,
  sizeToJudge,
} from '@/lib/pressing/atPress';
import { causeTiles } from '@/lib/pressing/causeTiles';
import { isLookedAt } from '@/lib/pressing/firstBatch';
import { foldPressings } from '@/lib/pressing/foldPressings';
import { likelyFaults } from '@/lib/pressing/likelyFaults';
import { pressedByRecipe } from '@/lib/pressing/pressedByRecipe';
import { pressMoment } from '@/lib/pressing/pressPhase';
import { testWorth } from '@/lib/pressing/testWorth';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import { pressFaults } from '@/shared/tables/faults';
import { clubRecipe, clubStandard, pieceOf, pressedOn, STANDARD } from '@/tests/fixtures/clubPressing';

const turnAfter = (...sizes: readonly string[]) => {
  const [turn] = foldPressings(clubStandard, pressedOn(sizes.map((size) => pieceOf(size))), []).turns;
  if (turn === undefined) throw new Error('no print');
  return turn;
};

describe('pressMoment', () => {
  const at = (phase: 'heat' | 'press', seconds: number) =>
    pressMoment({ phase, at: 1000 }, clubRecipe, 1000 + seconds * 1000);

  it('counts 10 s of heat down and waits, then 55 of the press and 12 of cooling, then asks to lift', () => {
    expect(at('heat', 4)).toMatchObject({ secondsLeft: 6, isOver: false });
    expect(at('heat', 11)).toMatchObject({ phase: 'heat', secondsLeft: 0, isOver: true });
    expect(at('press', 17)).toMatchObject({ phase: 'press', secondsLeft: 38, secondsIn: 17 });
    expect(at('press', 17).share).toBeCloseTo(17 / 55, 12);
    expect(at('press', 55)).toMatchObject({ phase: 'cool', secondsLeft: 12 });
    expect(at('press', 67)).toMatchObject({ phase: 'lift', isOver: true, secondsIn: 0 });
  });

  it('takes a clock that was set back as none gone', () => {
    expect(at('press', -30)).toMatchObject({ phase: 'press', secondsLeft: 55, secondsIn: 0 });
  });
});

describe('what lies at the press', () => {
  it('presses the piece that was heated, and lifts the one before when the next goes in', () => {
    const turn = turnAfter();
    const heated = putIn(NOTHING_AT_PRESS, turn, 'heat', 1);
    const pressed = putIn(heated, turn, 'press', 2);
    expect(pressed).toMatchObject({ inPress: { size: 'M', phase: 'press', at: 2 }, lifted: [] });
    const next = putIn({ ...pressed, size: 'L' }, turn, 'heat', 3);
    expect(next).toMatchObject({ inPress: { size: 'L', phase: 'heat', at: 3 }, lifted: ['M'] });
    expect(sizeToJudge(turn, next)).toBe('M');
    expect(afterVerdict(next, false)).toMatchObject({ lifted: [], inPress: { size: 'L' } });
  });

  it('judges what is in the press where nothing was lifted, and asks for it again once taken back', () => {
    const turn = turnAfter();
    const pressed = putIn(NOTHING_AT_PRESS, turn, 'press', 1);
    expect(sizeToJudge(turn, pressed)).toBe('M');
    const judged = afterVerdict(pressed, true);
    expect(judged).toMatchObject({ inPress: null, isAsking: true });
    expect(afterUndo(judged, 'M')).toMatchObject({ lifted: ['M'], isAsking: false });
  });

  it('counts what waits for its verdict before it names the next size', () => {
    const turn = turnAfter(...Array.from({ length: 8 }, () => 'M'));
    expect(sizesAhead(turn, NOTHING_AT_PRESS).slice(0, 2)).toEqual(['M', 'L']);
    expect(sizesAhead(turn, { ...NOTHING_AT_PRESS, lifted: ['M'] })[0]).toBe('L');
    expect(sizesAhead(turn, { ...NOTHING_AT_PRESS, size: 'S' })[0]).toBe('S');
  });
});

describe('advice at the press', () => {
  it('looks closely at the first and the third', () => {
    expect([1, 2, 3, 4].map(isLookedAt)).toEqual([true, false, true, false]);
  });

  // 20 % · 5 · 7 = 7.00 against 2.50.
  it('tests where a test saves more than it costs', () => {
    const asked = { doubt: 0.2, piecesAtRisk: 5, lossEach: 7 };
    const { saves, isWorth } = testWorth({ ...asked, cost: 2.5 });
    expect(saves).toBeCloseTo(7, 12);
    expect(isWorth).toBe(true);
    expect(testWorth({ ...asked, lossEach: 2, cost: 2.5 }).isWorth).toBe(false);
  });

  it('names every fault once, those seen oftenest first and the unknown last', () => {
    const seen = ['pale', 'specks', 'specks', 'other', 'other', 'other'] as const;
    const faults = likelyFaults(pressedOn(seen.map((fault) => pieceOf('M', 'scrap', { fault }))));
    expect(faults.slice(0, 3)).toEqual(['specks', 'pale', 'ghost']);
    expect(faults.at(-1)).toBe('other');
    expect([...faults].sort()).toEqual([...pressFaults].sort());
  });

  it('leaves so many causes open, that of the press before always among them, and loses none', () => {
    const faults = likelyFaults([]);
    const { open, rare } = causeTiles(faults, 6, 'ghost');
    expect(open).toEqual(['ghost', 'specks', 'blurred', 'pale', 'reversed', 'crooked']);
    expect([...open, ...rare]).toEqual(faults);
    const hidden = causeTiles(faults, 5, 'patchy');
    expect(hidden.open).toEqual(['ghost', 'specks', 'blurred', 'pale', 'patchy']);
    expect(hidden.rare[0]).toBe('reversed');
    expect([...hidden.open, ...hidden.rare].sort()).toEqual([...pressFaults].sort());
    // What cannot be named is no same fault.
    expect(causeTiles(faults, 5, 'other').open).toEqual(faults.slice(0, 5));
  });

  it('finds the pieces of a recipe on its blank in its press in any run', () => {
    const [work] = clubStandard.works;
    const hotter = { ...clubRecipe, dwellSeconds: 60 };
    const other: RunStandard = {
      ...clubStandard,
      runId: 'second-run',
      works: (work === undefined ? [] : [work]).map((one) => ({
        ...one,
        lines: one.lines.map((line) => ({
          ...line,
          placements: line.placements.map((placement) =>
            placement.placementId === 'back' ? { ...placement, recipe: hotter } : placement,
          ),
        })),
      })),
    };
    const standards = [
      { id: STANDARD, body: clubStandard },
      { id: 'second', body: other },
    ];
    const pieces = [
      pieceOf('M'),
      pieceOf('L', 'scrap', { standardId: 'second', fault: 'pale' }),
      pieceOf('S', 'scrap', { standardId: 'second', placementId: 'badge', fault: 'specks' }),
      pieceOf('XL', 'good', { standardId: 'nowhere' }),
    ].map((body) => ({ body }));
    const use = { blankId: 'tee', pressId: 'flat' };
    const sizes = (recipe: typeof clubRecipe) =>
      pressedByRecipe({ ...use, recipe }, pieces, standards).map(({ body }) => body.size);
    // The badge of the second run keeps the recipe that the first one's back has.
    expect(sizes({ ...clubRecipe, provenPresses: 7 })).toEqual(['M', 'S']);
    expect(sizes(hotter)).toEqual(['L']);
    expect(pressedByRecipe({ ...use, recipe: hotter, blankId: 'mug' }, pieces, standards)).toEqual([]);
  });
});
