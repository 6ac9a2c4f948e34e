import { z } from './z';

/** What is charged around the price of a piece, where a quote or a price list asks for it. */
export const chargesSchema = z.strictObject({
  /** Profit wanted of the least order, in currency units. */
  minimumProfit: z.number().min(0).max(1e6),
  /** Minutes on the artwork that the price includes. */
  artMinutesIncluded: z.number().min(0).max(2400),
  /** Minutes to type and check one name. */
  nameMinutes: z.number().min(0).max(600),
  foldMinutes: z.number().min(0).max(600),
  /** Minutes to split an order by name, once. */
  splitMinutes: z.number().min(0).max(2400),
  changeMinutes: z.number().min(0).max(2400),
  /** The least a change after approval costs, in currency units. */
  changeAtLeast: z.number().min(0).max(1e6),
  /** Working days an order usually takes. */
  normalWorkingDays: z.int().min(1).max(250),
  /** Shares of the price for less than that, for less than half of it, and for the next day. */
  rushShares: z.strictObject({
    underNormal: z.number().min(0).max(5),
    underHalf: z.number().min(0).max(5),
    nextDay: z.number().min(0).max(5),
  }),
});

/** From memory of common practice; amounts of money are the maker's own to set. */
export const usualCharges: Charges = {
  minimumProfit: 0,
  artMinutesIncluded: 15,
  nameMinutes: 3,
  foldMinutes: 0.5,
  splitMinutes: 15,
  changeMinutes: 15,
  changeAtLeast: 0,
  normalWorkingDays: 10,
  rushShares: { underNormal: 0.2, underHalf: 0.5, nextDay: 1 },
};

export type Charges = z.infer<typeof chargesSchema>;
