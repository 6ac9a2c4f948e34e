import { failed, ok, type Result } from '@/shared/result';

export interface WholesaleRule {
  /** Price to shops that leaves the margin wanted of wholesale, without tax. */
  readonly wholesale: number;
  /** The retail price that lets a shop double it. */
  readonly leastRetail: number;
  /** False where wholesale is better declined. */
  readonly holds: boolean;
}

/**
 * Retail must be at least twice the wholesale price, or there is nothing in it for the shop or for the maker.
 *
 * @param fullCost full cost and fees of a piece sold wholesale, without tax
 * @param margin wanted of wholesale, share of its price, 0 to below 1
 * @param retail price of a piece to the last buyer, without tax
 */
export function wholesaleRule(
  fullCost: number,
  margin: number,
  retail: number,
): Result<WholesaleRule, { readonly kind: 'notAMargin'; readonly margin: number }> {
  if (!(margin >= 0 && margin < 1)) return failed({ kind: 'notAMargin', margin });
  const wholesale = fullCost / (1 - margin);
  const leastRetail = 2 * wholesale;
  return ok({ wholesale, leastRetail, holds: retail >= leastRetail - 1e-9 });
}
