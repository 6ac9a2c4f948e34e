import type { Noted } from '@/app/_stallBook/notedBefore';
import type { Formatter } from '@/app/_words/formatter';
import { goodsName } from '@/app/_words/stall/evening/goodsName';
import { askedForWords, nextTimeWords } from '@/app/_words/stall/notedWords';

/** As much stands without a fold. */
const MOST_LINES = 3;
const MOST_LETTERS = 240;

/** @returns every line of what was noted: the maker's words first, then what the day says and they do not. */
export function linesNoted(
  { close, plan, lessons }: Noted,
  { count }: Pick<Formatter, 'count'>,
): readonly string[] {
  const own = close.note
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
  const ranges = plan?.ranges ?? [];
  const told = [
    ...lessons.map(({ goods, ...numbers }) => {
      const { rangeId, design, size } = goods;
      return nextTimeWords(goodsName({ ranges }, { rangeId: rangeId ?? '', design, size }).trim(), numbers);
    }),
    ...close.askedFor.map((wish) => askedForWords(wish, count)),
  ];
  return [...new Set([...own, ...told.filter((words) => !close.note.includes(words))])];
}

/** @returns how many lines stand without a fold; none where the first is long. */
export function shownLines(lines: readonly string[]): number {
  let letters = 0;
  const past = lines.findIndex((line, at) => {
    letters += line.length;
    return at >= MOST_LINES || letters > MOST_LETTERS;
  });
  return past < 0 ? lines.length : past;
}
