import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import type { compareCounts } from '@/lib/names/compareCounts';

type Compared = Pick<
  ReturnType<typeof compareCounts>,
  'ordered' | 'named' | 'differences' | 'withoutSize' | 'unknown'
>;

/** @returns in one line whether the names are as many, size by size, as is ordered: “37 names, all sizes as ordered”. */
export function namesAnswerWords(compared: Compared, formatter: Pick<Formatter, 'count'>): AnswerWords {
  const { ordered, named, differences, withoutSize, unknown } = compared;
  if (named === 0)
    return {
      key: 'No names yet',
      after: ordered === 0 ? '' : `, ${formatter.count(ordered, 'piece')} ordered`,
    };
  return { key: formatter.count(named, 'name'), after: `, ${standing()}` };

  function standing(): string {
    if (ordered === 0) return 'nothing ordered yet';
    if (differences.length > 0)
      return `${formatter.count(differences.length, 'size')} otherwise than ordered`;
    const open = withoutSize + unknown.reduce((sum, { quantity }) => sum + quantity, 0);
    return open === 0
      ? 'all sizes as ordered'
      : `${formatter.count(open, 'name')} without a size of the blank`;
  }
}

/** @returns what the button says that orders as many of each size as names say */
export const takeCountsWords = (
  byNames: readonly { readonly quantity: number }[],
  formatter: Pick<Formatter, 'count'>,
): string =>
  `Order what the names say: ${formatter.count(
    byNames.reduce((sum, { quantity }) => sum + quantity, 0),
    'piece',
  )}`;

/** @returns that names are left of what the order makes no more */
export const strayNamesWords = (names: number, formatter: Pick<Formatter, 'count'>): string =>
  `${formatter.count(names, 'name')} of something this order makes no more. ${
    names === 1 ? 'It is' : 'They are'
  } kept until you remove ${names === 1 ? 'it' : 'them'}.`;

/** @returns that the job prints names and the order has none */
export const jobListWords = (names: number, formatter: Pick<Formatter, 'count'>): string =>
  `The job prints ${formatter.count(names, 'name')}, without sizes. Taken here, each can have its size.`;

/** @returns that the job prints other names than the order has */
export function printedOtherwiseWords({
  onlyInList,
  onlyInRows,
}: {
  readonly onlyInList: readonly string[];
  readonly onlyInRows: readonly string[];
}): string {
  const parts = [
    ...(onlyInList.length === 0 ? [] : [`only the job prints ${shown(onlyInList)}`]),
    ...(onlyInRows.length === 0 ? [] : [`only here stands ${shown(onlyInRows)}`]),
  ];
  return `The job prints other names: ${parts.join('; ')}.`;
}

// Helpers

function shown(lines: readonly string[]): string {
  const few = lines.slice(0, 3).map((line) => `“\u2068${line}\u2069”`);
  const more = lines.length - few.length;
  return more > 0 ? `${few.join(', ')} and ${more} more` : few.join(', ');
}
