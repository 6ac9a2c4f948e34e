import { z } from './z';

/**
 * How the orders of a line are reckoned. `capped`: by its breaks, and no order pays more than a larger one.
 * `setUpApart`: so much to start and so much a piece. `asListed`: by its breaks as they stand. `onePrice`: one price a
 * size. `slab`: each price holds for the pieces of its own step.
 */
export const sellingRuleSchema = z.enum(['capped', 'setUpApart', 'asListed', 'onePrice', 'slab']);

/** What a workshop picks once for what it makes to order. */
export const listRuleSchema = z.enum(['capped', 'setUpApart']);

/** First quantities of price breaks. */
export const breaksSchema = z.array(z.int().min(1).max(2000)).min(1).max(12);

/** How many breaks the sums choose, from which order on, and up to which one they are judged. */
export const chosenBreaksSchema = z.strictObject({
  count: z.int().min(1).max(12),
  /** The least order. */
  from: z.int().min(1).max(1000),
  judgedTo: z.int().min(1).max(1000),
});

export const usualChosenBreaks = { count: 6, from: 1, judgedTo: 150 } as const;

export type SellingRule = z.infer<typeof sellingRuleSchema>;
export type ListRule = z.infer<typeof listRuleSchema>;
export type ChosenBreaks = z.infer<typeof chosenBreaksSchema>;
