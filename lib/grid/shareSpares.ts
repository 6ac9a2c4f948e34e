import type { GoodOnes } from '@/lib/statistics/enoughGood';
import { splitWhole } from '@/shared/splitWhole';

/**
 * Who a stack of blanks is laid out for. Its spares stand there for whoever spoils one; on paper they go to each as it is
 * expected to need them, so that the parts add up to the stack.
 *
 * @param stack good pieces, whole, and the chance of a blank to end good, of each that shares it
 * @param blanks in the stack, whole, spares among them
 * @returns blanks of each, in the order given
 */
export function shareSpares(stack: readonly GoodOnes[], blanks: number): readonly number[] {
  const spares = blanks - sum(stack.map(({ pieces }) => pieces));
  const lost = stack.map(({ pieces, chance }) => pieces / chance - pieces);
  const all = sum(lost);
  const parts = splitWhole(
    spares,
    lost.map((one) => (all === 0 ? 0 : (spares * one) / all)),
  );
  return stack.map(({ pieces }, at) => pieces + (parts[at] ?? 0));
}

// Helpers

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
