export type Rush =
  | { readonly kind: 'none' }
  | { readonly kind: 'rush'; readonly share: number }
  /** No share buys hours that are not there. */
  | { readonly kind: 'noCapacity' };

type RushStep = 'underNormal' | 'underHalf' | 'nextDay';

/**
 * The surcharge of an order wanted sooner than usual.
 *
 * @param wantedDays working days until it is wanted, 0 or more
 * @param normalDays working days that an order usually takes, above 0
 * @param hasCapacity whether the hours it needs are free until then
 * @param shares of the price, as the workshop's policy has them
 */
export function rushShare(
  wantedDays: number,
  normalDays: number,
  hasCapacity: boolean,
  shares: Readonly<Record<RushStep, number>>,
): Rush {
  if (wantedDays >= normalDays) return { kind: 'none' };
  if (!hasCapacity) return { kind: 'noCapacity' };
  if (wantedDays <= 1) return { kind: 'rush', share: shares.nextDay };
  return { kind: 'rush', share: wantedDays < normalDays / 2 ? shares.underHalf : shares.underNormal };
}
