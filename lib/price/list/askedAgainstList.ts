import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import type { Line } from '@/shared/schemas/job';
import { type LineList, sellingOf } from './lineList';
import { sellingTotal } from './selling';

/** What a job asks beside what its list says for so many pieces; whole minor units as the channel writes prices. */
export interface AskedAgainstList {
  readonly n: number;
  /** First quantity of the break the job falls into. */
  readonly from: number;
  readonly listEach: MinorUnits;
  /** What the order pays once, listed and asked, where set-up is apart; else null. */
  readonly start: { readonly listed: MinorUnits; readonly asked: MinorUnits } | null;
  /** What the whole order pays by the rule, where a larger one holds it down; null where it pays by the piece. */
  readonly held: { readonly pays: MinorUnits; readonly as: number } | null;
  /** Null while no price is asked. */
  readonly asked: MinorUnits | null;
  /** Asked less listed. */
  readonly over: MinorUnits;
  /** Sizes whose charge differs from the list's: asked less listed. */
  readonly sizes: readonly { readonly size: string; readonly over: MinorUnits }[];
}

/** @returns null where the list has no price for so few, or none a piece. */
export function askedAgainstList(
  { askedPrice, askedStart, upCharges }: Pick<Line, 'askedPrice' | 'askedStart' | 'upCharges'>,
  list: LineList,
  n: number,
  currency: string,
): AskedAgainstList | null {
  const step = list.breaks.findLast(({ from }) => from <= n);
  const selling = sellingOf(list, 0 as MinorUnits, currency);
  if (step === undefined || !selling.ok) return null;
  const pays = sellingTotal(selling.value, n);
  const isApart = list.rule === 'setUpApart';
  const as = list.breaks.find(({ from, total }) => from > n && total === pays)?.from;
  const asked = askedPrice === null ? null : toMinor(askedPrice, currency);
  const sizes = list.sizes.flatMap(({ size, more }) => {
    const own = toMinor(upCharges.find((one) => one.size === size)?.amount ?? 0, currency);
    return own === more ? [] : [{ size, over: (own - more) as MinorUnits }];
  });
  return {
    n,
    from: step.from,
    listEach: step.each,
    start: isApart ? { listed: list.start, asked: toMinor(askedStart ?? 0, currency) } : null,
    held: pays !== null && pays < n * step.each && as !== undefined ? { pays, as } : null,
    asked,
    over: ((asked ?? step.each) - step.each) as MinorUnits,
    sizes: asked === null ? [] : sizes,
  };
}

/** An order that the rule holds down: what it pays, as which larger one, and what its pieces would come to. */
export interface RuleAtWork {
  readonly n: number;
  readonly as: number;
  readonly pays: number;
  readonly instead: number;
}

/** @returns the last order before a break near the job that its rule holds down; null where none is. */
export function ruleAtWork(
  held: readonly { readonly from: number; readonly to: number; readonly pays: MinorUnits }[],
  list: Pick<LineList, 'breaks'>,
  near: number,
  currency: string,
): RuleAtWork | null {
  const found = held.findLast(({ from }) => from <= near) ?? held[0];
  if (found === undefined) return null;
  const each = list.breaks.findLast(({ from }) => from <= found.to)?.each;
  return each === undefined
    ? null
    : {
        n: found.to,
        as: found.to + 1,
        pays: fromMinor(found.pays, currency),
        instead: fromMinor((each * found.to) as MinorUnits, currency),
      };
}
