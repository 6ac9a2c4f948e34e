/** Fewer lost pieces than this are not worth a line. */
export const LEAST_LOST = 1;

/**
 * How many of goods that were gone to bring next time: halfway between what was expected and what was wanted, for one
 * day is no rule; one more than was brought at least (the product's own choice).
 *
 * @param expected null where nothing was
 */
export const nextBring = (
  wanted: number,
  { brought, expected }: { readonly brought: number; readonly expected: number | null },
): number => Math.max(brought + 1, Math.round(((expected ?? wanted) + wanted) / 2));
