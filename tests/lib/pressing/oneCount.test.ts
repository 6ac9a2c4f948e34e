import fc from 'fast-check';
import { expect, it } from 'vitest';
import { foldPressings } from '@/lib/pressing/foldPressings';
import { goodMade } from '@/lib/variances/goodMade';
import { clubStandard, pieceOf, pressedOn } from '@/tests/fixtures/clubPressing';
import { cases } from '@/tests/tools/cases';

const piece = fc.record({
  size: fc.constantFrom('S', 'M', 'L', 'XL', '2XL', '3XL', 'of none'),
  placementId: fc.constantFrom('back', 'badge', 'gone'),
  result: fc.constantFrom('good' as const, 'second' as const, 'scrap' as const),
});

it('a run has one count of good pieces: at the press and after it', () => {
  fc.assert(
    fc.property(fc.array(piece, { minLength: 1, maxLength: 60 }), (drawn) => {
      const pressed = pressedOn(drawn.map((one) => ({ ...pieceOf(one.size), ...one })));
      const { turns } = foldPressings(clubStandard, pressed, []);
      const made = goodMade(
        clubStandard,
        pressed.map(({ body }) => body),
      );
      for (const { size, good, seconds, scrap, started } of made ?? []) {
        const [first, last] = turns.map(({ counts }) => counts.find((one) => one.size === size));
        expect([good, seconds]).toEqual([last?.good, last?.seconds]);
        expect(scrap).toBe((first?.scrap ?? 0) + (last?.scrap ?? 0));
        expect(started).toBe((first?.good ?? 0) + (first?.seconds ?? 0) + (first?.scrap ?? 0));
      }
    }),
    cases(200),
  );
});
