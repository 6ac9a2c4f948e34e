import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import type { Line } from '@/shared/schemas/job';
import { type LineList, sellingOf } from './lineList';
import { sellingTotal } from './selling';

/** What a piece of a size adds in a job, and by its list. */
interface AskedSize {
  readonly size: string;
  readonly own: MinorUnits;
  readonly listed: MinorUnits;
}

/** What a job asks beside what its list says for so many pieces; whole minor units as the channel writes prices. */
export interface AskedAgainstList {
  readonly n: number;
  /** What the list comes to as a price a piece of the base size: what is suggested where none is asked. */
  readonly listEach: MinorUnits;
  /** What the order pays once, by the list and as it is asked or suggested, where set-up is apart; else null. */
  readonly start: { readonly listed: MinorUnits; readonly asked: MinorUnits } | null;
  /** What the whole order pays in the base size, where a larger one holds it down; null where it pays by the piece. */
  readonly held: { readonly pays: MinorUnits; readonly as: number } | null;
  /** Null while no price is asked. */
  readonly asked: MinorUnits | null;
  /** Asked less listed. */
  readonly over: MinorUnits;
  /** The whole order in its sizes, what they add included: by the list, and as it is asked or suggested. */
  readonly sums: { readonly byList: MinorUnits; readonly ofJob: MinorUnits; readonly areAdded: boolean };
  /** Sizes whose charge differs from the list's. */
  readonly sizes: readonly AskedSize[];
}

/**
 * @param listEach the price that is suggested for a piece of the base size in an order of n
 * @returns null where the list has no price for so few, or none a piece
 */
export function askedAgainstList(
  {
    askedPrice,
    askedStart,
    upCharges,
    quantities,
  }: Pick<Line, 'askedPrice' | 'askedStart' | 'upCharges' | 'quantities'>,
  list: LineList,
  { n, listEach }: Pick<AskedAgainstList, 'n' | 'listEach'>,
  currency: string,
): AskedAgainstList | null {
  const step = list.breaks.findLast(({ from }) => from <= n);
  const selling = sellingOf(list, 0 as MinorUnits, currency);
  if (step === undefined || !selling.ok) return null;
  const pays = sellingTotal(selling.value, n);
  const as = list.breaks.find(({ from, total }) => from > n && total === pays)?.from;
  const asked = askedPrice === null ? null : toMinor(askedPrice, currency);
  const sizes = list.sizes.map(({ size, more: listed }) => {
    const own = toMinor(upCharges.find((one) => one.size === size)?.amount ?? 0, currency);
    return { size, own: asked === null ? listed : own, listed };
  });
  const added = (of: 'own' | 'listed') =>
    quantities.reduce(
      (sum, { size, quantity }) => sum + quantity * (sizes.find((one) => one.size === size)?.[of] ?? 0),
      0,
    );
  const held = pays !== null && pays < n * step.each && as !== undefined ? { pays, as } : null;
  const start =
    list.rule === 'setUpApart'
      ? {
          listed: list.start,
          asked: asked === null ? list.start : toMinor(askedStart ?? 0, currency),
        }
      : null;
  return {
    n,
    listEach,
    start,
    held,
    sums: {
      byList: ((held?.pays ?? listEach * n + (start?.listed ?? 0)) + added('listed')) as MinorUnits,
      ofJob: ((asked ?? listEach) * n + (start?.asked ?? 0) + added('own')) as MinorUnits,
      areAdded: added('listed') > 0 || added('own') > 0,
    },
    asked,
    over: ((asked ?? listEach) - listEach) as MinorUnits,
    sizes: sizes.filter(({ own, listed }) => own !== listed),
  };
}

/** Whether this job asks anything else than its list; where nothing is asked, what the list does is not asked yet. */
export const differsFromList = ({ asked, start, over, sizes }: AskedAgainstList): boolean =>
  asked === null || over !== 0 || sizes.length > 0 || (start !== null && start.asked !== start.listed);

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
