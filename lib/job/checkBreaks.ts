export type BreaksProblem =
  | { readonly kind: 'noBreaks' }
  | { readonly kind: 'notWhole'; readonly from: number }
  | { readonly kind: 'doubled'; readonly from: number }
  | { readonly kind: 'outOfOrder'; readonly from: number; readonly after: number }
  /** Orders under the first break have no price. */
  | { readonly kind: 'beginsLate'; readonly from: number };

/**
 * What is to be said of the first quantities of price breaks as they are typed. A price table works without any of
 * it being mended: it takes them in rising order, each once.
 *
 * @returns every problem, in the order of the list
 */
export function checkBreaks(starts: readonly number[]): readonly BreaksProblem[] {
  const [first] = starts;
  if (first === undefined) return [{ kind: 'noBreaks' }];
  const problems = starts.flatMap((from, index): readonly BreaksProblem[] => {
    if (!Number.isInteger(from) || from < 1) return [{ kind: 'notWhole', from }];
    if (starts.indexOf(from) < index) return [{ kind: 'doubled', from }];
    const before = starts[index - 1];
    return before !== undefined && before > from ? [{ kind: 'outOfOrder', from, after: before }] : [];
  });
  const least = Math.min(...starts);
  return least > 1 ? [...problems, { kind: 'beginsLate', from: least }] : problems;
}
