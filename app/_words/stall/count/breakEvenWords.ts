import type { StallPlan } from '@/shared/schemas/stallPapers';

/** A number of pieces at which a sum is earned. */
export interface BreakMark {
  /** Whole pieces. */
  readonly pieces: number;
  /** Under the bar. */
  readonly words: string;
  /** What so many pieces bring, as a sentence goes on: “4 to go until …”. */
  readonly aim: string;
}

/** Far below any share of a piece that counts. */
const NOISE = 1e-9;

const aims = {
  cash: { words: 'cash back', aim: 'until the day’s costs are back' },
  withPay: { words: 'pay', aim: 'until your pay is earned' },
  everything: { words: 'all', aim: 'until all is paid' },
  withWriteDown: { words: 'unsold too', aim: 'until the unsold is paid too' },
} as const;

/** @returns the marks of the bar, from few pieces to many; none where no piece earns anything */
export function breakMarks({ breakEven }: Pick<StallPlan, 'breakEven'>): readonly BreakMark[] {
  if (breakEven === null) return [];
  return (['cash', 'withPay', 'everything', 'withWriteDown'] as const).flatMap((name) => {
    const pieces = breakEven[name];
    return pieces === null ? [] : [{ pieces: Math.max(0, Math.ceil(pieces - NOISE)), ...aims[name] }];
  });
}

/** @returns how many pieces are missing at the next mark, and what for; null where there is none ahead */
export function toGo(marks: readonly BreakMark[], sold: number): { count: number; aim: string } | null {
  const next = marks.find(({ pieces }) => pieces > sold);
  return next === undefined ? null : { count: next.pieces - sold, aim: next.aim };
}

/** @returns the bar in words */
export const barWords = (marks: readonly BreakMark[], sold: number): string =>
  `${sold} sold. ${marks
    .map(({ pieces, words }) => `${pieces} ${words}${pieces <= sold ? ', reached' : ''}`)
    .join('; ')}.`;
