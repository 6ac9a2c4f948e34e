import type { Formatter } from '@/app/_words/formatter';
import type { stillToPress } from '@/lib/variances/stillToPress';

/** A run that is not closed: nothing of it is judged yet. */
export const soFarTable = {
  heading: 'So far',
  judgedLater: 'What it paid you an hour, and where money went, is told once the run is closed.',
  close: 'Close it',
  press: 'To the press',
  asIf: 'As if it ended now',
} as const;

/** “37 of 37 still to press; 1 lost” */
export function soFarWords(
  { wanted, good, toPress }: ReturnType<typeof stillToPress>,
  lost: number,
  formatter: Formatter,
): { readonly key: string; readonly after: string } {
  const gone = lost === 0 ? '' : `; ${formatter.number(lost)} lost`;
  if (toPress === 0) return { key: `All ${formatter.number(wanted)} are pressed`, after: gone };
  const done = good === 0 ? '' : `; ${formatter.number(good)} good`;
  return {
    key: `${formatter.number(toPress)} of ${formatter.number(wanted)} still to press`,
    after: `${done}${gone}`,
  };
}
