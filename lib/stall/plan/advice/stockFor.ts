/**
 * The rule of a stock for a single period: the smallest whole number of pieces with which the chance that all who ask
 * are served reaches the critical ratio.
 *
 * @param ratio what a missed sale costs ÷ (what a missed sale costs + what an unsold piece costs); 0 or less: nothing
 * @param chanceUpTo chance that no more than so many pieces are asked for; rises to 1
 * @param most never more than this, for a ratio that is never reached
 */
export function stockFor(ratio: number, chanceUpTo: (pieces: number) => number, most: number): number {
  if (!(ratio > 0)) return 0;
  let [missed, enough] = [-1, 1];
  while (enough < most && chanceUpTo(enough) < ratio) [missed, enough] = [enough, enough * 2];
  enough = Math.min(enough, most);
  while (enough - missed > 1) {
    const middle = Math.floor((missed + enough) / 2);
    if (chanceUpTo(middle) < ratio) missed = middle;
    else enough = middle;
  }
  return enough;
}
