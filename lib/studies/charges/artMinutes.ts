export type ArtWork =
  /** Within what the price includes. */
  | { readonly kind: 'included' }
  | { readonly kind: 'hourly'; readonly chargedMinutes: number; readonly amount: number }
  /** A redraw is quoted before it is begun. */
  | { readonly kind: 'quoted' };

/**
 * The art fee: some minutes are included, the rest goes by the hour.
 *
 * @param minutes of work on the artwork, 0 or more; null for a redraw, whose minutes nobody knows yet
 * @param includedMinutes that the price carries already
 * @param hourly currency units an hour
 */
export function artMinutes(minutes: number | null, includedMinutes: number, hourly: number): ArtWork {
  if (minutes === null) return { kind: 'quoted' };
  const chargedMinutes = Math.max(0, minutes - includedMinutes);
  if (chargedMinutes === 0) return { kind: 'included' };
  return { kind: 'hourly', chargedMinutes, amount: (chargedMinutes / 60) * hourly };
}
