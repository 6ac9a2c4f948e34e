import type { Formatter } from '@/app/_words/formatter';
import { listed } from '@/app/_words/listed';
import { FIRST_DOUBT, type TestExpected } from '@/lib/pressing/testExpected';

/** Whence the figures come that stand in the fields before anybody typed; null where nothing stands there. */
export function expectedHints(
  { tests, runs, wrong, piece }: TestExpected,
  { count, number, share }: Formatter,
): Readonly<Record<'doubt' | 'pieces' | 'loss' | 'cost', string | null>> {
  const seen = listed([
    ...(tests > 0 ? [count(tests, 'test')] : []),
    ...(runs > 0 ? [count(runs, 'run')] : []),
  ]);
  return {
    doubt:
      seen === ''
        ? `${share(FIRST_DOUBT)} is assumed: nothing was tested yet.`
        : `By ${seen}: ${wrong === 0 ? 'none' : number(wrong)} went wrong. ${share(FIRST_DOUBT)} was assumed before.`,
    pieces: 'Assumed.',
    loss: piece === null ? null : `All that one piece of ${piece.name} costs, by its newest run.`,
    cost: piece === null ? null : `One piece of ${piece.name} without its blank, by its newest run.`,
  };
}
