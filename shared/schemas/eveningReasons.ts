/** How a difference of the tin was explained. */
export const cashReasons = ['wrongChange', 'boughtWithIt', 'notKnown', 'other'] as const;

/** Why more or fewer pieces are there than by what was noted. */
export const stockReasons = [
  'damaged',
  'given',
  'soldNotTapped',
  'tappedTwice',
  'refillNotTapped',
  'notKnown',
] as const;
