import fc from 'fast-check';

export interface Side {
  readonly width: number;
  readonly height: number;
}

interface Cutting {
  readonly bin: Side;
  readonly pieces: readonly Side[];
}

/** A rectangle cut from edge to edge into up to twelve pieces, some turned: they fill it again without a gap. */
export const guillotineCutting: fc.Arbitrary<Cutting> = fc
  .record({
    width: fc.integer({ min: 10, max: 200 }),
    height: fc.integer({ min: 10, max: 200 }),
    cuts: fc.array(
      fc.record({
        which: fc.nat(),
        across: fc.boolean(),
        share: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
      }),
      { minLength: 1, maxLength: 11 },
    ),
    turns: fc.array(fc.boolean(), { minLength: 12, maxLength: 12 }),
  })
  .map(({ width, height, cuts, turns }) => {
    const pieces: Side[] = [{ width, height }];
    for (const { which, across, share } of cuts) {
      const [piece] = pieces.splice(which % pieces.length, 1);
      if (piece !== undefined) pieces.push(...cutInTwo(piece, across, share));
    }
    const turned = pieces.map((piece, index) =>
      turns[index] === true ? { width: piece.height, height: piece.width } : piece,
    );
    return { bin: { width, height }, pieces: turned };
  });

/** Cut at a whole length; what is too small to cut stays whole. */
function cutInTwo({ width, height }: Side, across: boolean, share: number): readonly Side[] {
  const side = across ? width : height;
  const cut = Math.round(side * share);
  if (cut < 1 || cut >= side) return [{ width, height }];
  return across
    ? [
        { width: cut, height },
        { width: width - cut, height },
      ]
    : [
        { width, height: cut },
        { width, height: height - cut },
      ];
}
