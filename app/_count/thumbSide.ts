const KEY = 'pressminute-thumb-side';

export type ThumbSide = 'right' | 'left';

/** By which hand the count is tapped on this device; kept apart from the documents, for it is of a hand. */
export const thumbSide = {
  recall(): ThumbSide {
    try {
      return localStorage.getItem(KEY) === 'left' ? 'left' : 'right';
    } catch {
      // Some browsers forbid it; then it is the right hand at each visit.
      return 'right';
    }
  },
  remember(side: ThumbSide): void {
    try {
      localStorage.setItem(KEY, side);
    } catch {
      // As above.
    }
  },
};
