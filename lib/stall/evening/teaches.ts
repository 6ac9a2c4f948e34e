import type { DayCount } from '@/lib/stall/count/dayCount';
import type { WallClock } from '@/lib/stall/count/sellingTime';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import type { EveningAnswers } from './eveningAnswers';
import { firstsSold } from './firstsSold';
import { type LostStretch, lostAtPace, lostLearned, lostStretches } from './lostSales';
import { LEAST_LOST, nextBring } from './nextBring';
import type { StockRow } from './stockRows';

/** What a day teaches the next, as an offer. */
export type Lesson =
  | {
      /** Goods that were gone before the end, or until more was put out. */
      readonly kind: 'more';
      readonly row: StockRow;
      /** Bring so many next time. */
      readonly next: number;
      /** Pieces that would have sold too: asked for, and reckoned where that is not left out; unrounded. */
      readonly lost: number;
      /** Reckoned from how fast the others went, also what is left out. */
      readonly atPace: number;
      /** Each time they were gone. */
      readonly stretches: readonly LostStretch[];
      /** Why some of it is not learned: the maker said so, or it rests on too little. Null where all of it is. */
      readonly leftOut: 'said' | 'thin' | null;
    }
  | {
      /** Somebody wanted what there is none of. */
      readonly kind: 'asked';
      readonly words: string;
      readonly count: number;
    };

/** What was missed that day, the most first. */
export function lessonsOf(
  plan: StallPlan,
  count: Pick<DayCount, 'askedFor'>,
  rows: readonly StockRow[],
  answers: Pick<EveningAnswers, 'notLost' | 'lostAfterAll'>,
  clock: WallClock,
): readonly Lesson[] {
  const more = rows.flatMap((row): readonly Extract<Lesson, { kind: 'more' }>[] => {
    const stretches = lostStretches(plan, row, clock);
    const atPace = lostAtPace(stretches);
    if (stretches.length === 0 || atPace + row.asked < LEAST_LOST) return [];
    const learned = lostLearned(row.key, stretches, answers);
    const why = answers.notLost.includes(row.key) ? 'said' : 'thin';
    const lost = row.asked + learned;
    const wanted = firstsSold(row) + lost;
    const next = nextBring(wanted, { brought: row.brought, expected: row.goods.expected });
    return [{ kind: 'more', row, next, lost, atPace, stretches, leftOut: learned < atPace ? why : null }];
  });
  const asked = count.askedFor.map(
    ({ words, count: times }): Lesson => ({ kind: 'asked', words, count: times }),
  );
  return [
    ...more.toSorted((one, other) => other.atPace + other.row.asked - one.atPace - one.row.asked),
    ...asked,
  ];
}
