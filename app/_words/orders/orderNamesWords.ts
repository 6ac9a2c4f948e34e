import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import type { OrderLine } from '@/shared/schemas/order';

/** @returns how many people are named, and how many of them have no size yet. */
export function namesAnswer(lines: readonly OrderLine[], formatter: Formatter): AnswerWords {
  const rows = lines.flatMap(({ names }) => names);
  if (rows.length === 0) return { key: 'No names', after: ' noted' };
  const open = rows.filter(({ size }) => size.trim() === '').length;
  return {
    key: formatter.count(rows.length, 'name'),
    after: open === 0 ? ', each with a size' : `, ${formatter.number(open)} without a size`,
  };
}
