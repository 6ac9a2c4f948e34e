import { describe, expect, it } from 'vitest';
import { MasterProgram } from '@/lib/packing/columns/masterProgram';

const column = (...counts: readonly number[]) => ({ counts });

type Column = ReturnType<typeof column>;

/** Takes in columns as long as one saves sheets. */
function solved(asked: readonly number[], alone: readonly Column[], others: readonly Column[]) {
  const program = new MasterProgram(asked, alone);
  for (let turn = 0; turn < 100; turn += 1) {
    if (program.enterSurplus()) continue;
    const { prices } = program;
    const next = others.find(
      ({ counts }) => counts.reduce((sum, count, kind) => sum + count * (prices[kind] ?? 0), 0) > 1 + 1e-9,
    );
    if (next === undefined) return program;
    program.enter(next);
  }
  throw new Error('goes round in a circle');
}

describe('the fewest sheets where parts of sheets count', () => {
  // Worked by hand: lengths 6, 4 and 3 out of 10, asked 4, 5 and 6 times. 6 + 4 four times, 4 + 3 + 3 once, then
  // 3 + 3 + 3 four thirds of a time. The prices 2/3, 1/3 and 1/3 make no pattern dearer than a sheet.
  it('are 19/3 for a cutting stock problem of three lengths', () => {
    const alone = [column(1, 0, 0), column(0, 2, 0), column(0, 0, 3)];
    const program = solved([4, 5, 6], alone, [column(1, 1, 0), column(1, 0, 1), column(0, 1, 2)]);
    expect(program.sheets).toBeCloseTo(19 / 3, 12);
    [2 / 3, 1 / 3, 1 / 3].forEach((price, kind) => {
      expect(program.prices[kind]).toBeCloseTo(price, 12);
    });
    for (const kind of [0, 1, 2]) {
      const laid = program.uses.reduce((sum, use) => sum + use.times * (use.column.counts[kind] ?? 0), 0);
      expect(laid).toBeCloseTo([4, 5, 6][kind] ?? 0, 9);
    }
  });

  // Worked by hand: one sheet with two of the first and three of the second serves one and three.
  it('let more boxes than asked onto a sheet where that saves a sheet', () => {
    const program = solved([1, 3], [column(1, 0), column(0, 1)], [column(2, 3)]);
    expect(program.sheets).toBeCloseTo(1, 12);
    expect([...program.prices].map((price) => Math.round(price * 3 * 1e9) / 1e9)).toEqual([0, 1]);
  });

  // Worked by hand: n sizes of which each two neighbours in a ring share a sheet need n / 2 sheets; the inverse is
  // worked out anew on the way.
  it('stay exact over many columns', () => {
    const size = 57;
    const unit = (...kinds: readonly number[]) =>
      column(...Array.from({ length: size }, (_, kind) => Number(kinds.includes(kind))));
    const alone = Array.from({ length: size }, (_, kind) => unit(kind));
    const pairs = Array.from({ length: size }, (_, kind) => unit(kind, (kind + 1) % size));
    const program = solved(
      alone.map(() => 1),
      alone,
      pairs,
    );
    expect(program.sheets).toBeCloseTo(size / 2, 9);
  });
});
