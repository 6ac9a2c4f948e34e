/** @returns what is asked about an amount spent; null where nothing is. */
export const amountQuestion = (amount: number | null): string | null =>
  amount === 0 ? 'Nothing was paid: it would be in no sum. Say how much it was, or leave it.' : null;

/** @returns what another currency means for the sums; null for the workshop's own. */
export const currencyQuestion = (currency: string, own: string): string | null =>
  currency === own
    ? null
    : `It is kept and told, and in no sum: those are in ${own}. To have it counted, note what it came to in ${own}.`;
