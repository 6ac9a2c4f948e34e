import { describe, expect, it, test } from 'vitest';
import { piecesPerSheet } from '@/lib/packing/equal/piecesPerSheet';
import { packRoll } from '@/lib/packing/roll/packRoll';
import { packSheets } from '@/lib/packing/sheet/packSheets';
import { layoutProblems, pieceProblems } from '@/tests/lib/packing/layoutProblems';
import { binInstances, equalPieceInstances, piecesOf, stripInstances } from './packingInstances';

const bare = { marginMm: 0, gutterMm: 0 };

const equal = equalPieceInstances();
/** No blocks fill these; the search without blocks still finds all but the last two. */
const ONE_BELOW = ['57x34-7x4', '86x52-9x5'];

describe(`equal pieces on one sheet (Dowsland 1984, Birgin, Lobato, Morabito 2010)${note(equal)}`, () => {
  test.skipIf(equal.missing !== null)('all eighteen instances are there', () => {
    expect(equal.instances).toHaveLength(18);
  });

  test.each(equal.instances.map((instance) => [instance.id, instance] as const))(
    '%s holds the most there can be, or one below where that is known',
    (id, { sheet, piece, optimum, fiveBlockRecomputed }) => {
      const { count, pieces } = piecesPerSheet({
        ...bare,
        sheetWidthMm: sheet[0],
        sheetHeightMm: sheet[1],
        pieceWidthMm: piece[0],
        pieceHeightMm: piece[1],
      });
      expect(layoutProblems(pieces, { ...bare, widthMm: sheet[0], heightMm: sheet[1] })).toEqual([]);
      expect(pieces).toHaveLength(count);
      expect(count).toBeGreaterThanOrEqual(fiveBlockRecomputed);
      expect(count).toBe(optimum - (ONE_BELOW.includes(id) ? 1 : 0));
    },
  );
});

const bins = binInstances();

describe(`mixed pieces on sheets (Berkey, Wang 1987; Martello, Vigo 1998)${note(bins)}`, () => {
  const packed = bins.instances.map((instance) => {
    const request = {
      ...bare,
      sheetWidthMm: instance.binWidth,
      sheetHeightMm: instance.binHeight,
      rotate: true,
    };
    const answer = packSheets({ ...request, pieces: piecesOf(instance.items) });
    if (!answer.ok) throw new Error(`${instance.id} was refused`);
    return { instance, ...answer.value };
  });

  it.skipIf(bins.missing !== null)('takes no more sheets than the best known, 491', () => {
    const sum = packed.reduce((total, { count }) => total + count, 0);
    expect(bins.instances.reduce((total, { bestKnownRotated }) => total + bestKnownRotated, 0)).toBe(491);
    expect(sum).toBeLessThanOrEqual(491);
  });

  test.each(packed.map((answer) => [answer.instance.id, answer] as const))(
    '%s is laid out without a fault, and its bound is none above the best known',
    (_, { instance, sheets, count, lowerBound }) => {
      const paper = { ...bare, widthMm: instance.binWidth, heightMm: instance.binHeight };
      expect(sheets.flatMap(({ pieces }) => layoutProblems(pieces, paper))).toEqual([]);
      const placed = sheets.flatMap(({ pieces }) => pieces);
      expect(pieceProblems(placed, piecesOf(instance.items), true)).toEqual([]);
      expect(lowerBound).toBeLessThanOrEqual(instance.bestKnownRotated);
      expect(sheets).toHaveLength(count);
    },
  );

  test.each(bins.instances.map((instance) => [instance.id, instance] as const))(
    '%s without turning: the bound is none above the best known',
    (_, { binWidth, binHeight, bestKnownOriented, items }) => {
      const pieces = piecesOf(items);
      const request = { ...bare, sheetWidthMm: binWidth, sheetHeightMm: binHeight, rotate: false, pieces };
      const answer = packSheets(request, { steps: 1_000, seed: 1 });
      if (!answer.ok) throw new Error('refused');
      expect(answer.value.lowerBound).toBeLessThanOrEqual(bestKnownOriented);
      expect(answer.value.count).toBeGreaterThanOrEqual(answer.value.lowerBound);
      expect(
        pieceProblems(
          answer.value.sheets.flatMap((sheet) => sheet.pieces),
          pieces,
          false,
        ),
      ).toEqual([]);
    },
  );
});

const strips = stripInstances();

describe(`pieces on a roll (Hopper, Turton 2001)${note(strips)}`, () => {
  const packed = strips.instances.map((instance) => {
    const pieces = piecesOf(instance.items);
    const answer = packRoll({ ...bare, rollWidthMm: instance.stripWidth, rotate: true, pieces });
    if (!answer.ok) throw new Error(`${instance.id} was refused`);
    return { instance, ...answer.value };
  });

  it.skipIf(strips.missing !== null)('is at most one in twenty longer than the best, over all 21', () => {
    const excess = packed.map(({ instance, rollLengthMm }) => rollLengthMm / instance.optimalHeight - 1);
    expect(excess).toHaveLength(21);
    expect(excess.reduce((sum, share) => sum + share, 0) / 21).toBeLessThanOrEqual(0.05);
  });

  test.each(packed.map((answer) => [answer.instance.id, answer] as const))(
    '%s is laid out without a fault',
    (id, { instance, pieces, rollLengthMm, lowerBoundMm }) => {
      const paper = { ...bare, widthMm: instance.stripWidth, heightMm: rollLengthMm };
      expect(layoutProblems(pieces, paper)).toEqual([]);
      expect(pieceProblems(pieces, piecesOf(instance.items), true)).toEqual([]);
      expect(lowerBoundMm).toBe(instance.optimalHeight);
      if (id.startsWith('C1')) expect(rollLengthMm).toBe(20);
      if (id.startsWith('C2')) expect(rollLengthMm).toBeLessThanOrEqual(16);
    },
  );
});

/** A skipped check says why in its title. */
function note({ missing }: { readonly missing: string | null }): string {
  return missing === null ? '' : `: skipped, as ${missing}`;
}
