/**
 * What a piece loses of its cost when it stays unsold, once: one that came home from an earlier day lost it then, and
 * costs and loses no more than its leftover value from there on.
 *
 * @param cost of one more piece, currency units
 * @param leftoverShare of it that an unsold piece is still worth, 0 to 1
 * @returns currency units
 * @example lossUnsold({ cost: 6.5, leftoverShare: 0.6 }) // => 2.6
 */
export const lossUnsold = ({
  cost,
  leftoverShare,
}: {
  readonly cost: number;
  readonly leftoverShare: number;
}): number => (1 - leftoverShare) * cost;
