import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import { namesAnswerWords } from '@/app/_words/names/namesAnswerWords';
import { compareCounts } from '@/lib/names/compareCounts';
import type { Order } from '@/shared/schemas/order';
import type { NamesWorkspace } from './namesWorkspace';
import { type NamedLine, namedLines } from './orderNames';

/** @returns the sizes that a line may be made in: those of its blank, or as ordered where the blank is gone. */
export const sizesOf = ({ blank, line }: Pick<NamedLine, 'blank' | 'line'>): readonly string[] =>
  blank === null ? line.quantities.map(({ size }) => size) : blank.sizes.map(({ name }) => name);

/** @returns the same answer as of one thing that is made, for all of them. */
export function orderNamesAnswer(
  order: Order,
  { jobs, blanks }: Pick<NamesWorkspace, 'jobs' | 'blanks'>,
  formatter: Pick<Formatter, 'count'>,
): AnswerWords {
  const compared = namedLines(order, jobs, blanks).map((named) =>
    compareCounts(named.rows, named.line.quantities, sizesOf(named)),
  );
  const sum = (of: (one: ReturnType<typeof compareCounts>) => number) =>
    compared.reduce((total, one) => total + of(one), 0);
  return namesAnswerWords(
    {
      ordered: sum(({ ordered }) => ordered),
      named: sum(({ named }) => named),
      differences: compared.flatMap(({ differences }) => differences),
      withoutSize: sum(({ withoutSize }) => withoutSize),
      unknown: compared.flatMap(({ unknown }) => unknown),
    },
    formatter,
  );
}
