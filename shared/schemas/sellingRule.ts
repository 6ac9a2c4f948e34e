import { z } from './z';

/** How a list is reckoned: as it stands, no dearer than a larger order, by slabs, or so much to start and a piece. */
export const sellingRuleSchema = z.enum(['asListed', 'cap', 'slab', 'tariff']);

export type SellingRule = z.infer<typeof sellingRuleSchema>;
