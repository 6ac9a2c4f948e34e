import type { BuyingAsked } from './buyingAsked';
import type { BuyingPlan } from './buyingPlan';
import { type NeededThing, neededThings } from './neededThings';
import { rowsToBuy } from './rowsToBuy';
import { freeOf } from './stockFor';
import type { WorkNeeds } from './workNeeds';

type Needs = readonly (WorkNeeds | null)[];

/**
 * What the works would cost one after the other, each with suppliers, packs, spares and freight of its own. Jobs of one
 * order stay together; what lies in stock goes to the first that needs it. Numbers the maker holds are of the whole list,
 * so both sides leave them out.
 *
 * @returns null where there is nothing to part
 */
export function boughtApart(
  asked: BuyingAsked,
  needs: Needs,
  things: readonly NeededThing[],
): BuyingPlan['apart'] {
  const groups = groupsOf(asked.works, needs);
  if (groups.length < 2) return null;
  const list = { ...asked.list, held: [] };
  const togetherMinor = rowsToBuy(things, needs, { ...asked, list }).choice.totalMinor;
  let reserved = asked.reserved;
  let totalMinor = 0;
  for (const group of groups) {
    const works = group.flatMap((at) => asked.works[at] ?? []);
    const own = group.map((at) => needs[at] ?? null);
    const terms = { ...asked, list, works, reserved };
    const bought = rowsToBuy(neededThings(own, terms), own, terms);
    totalMinor += bought.choice.totalMinor;
    const taken = bought.rows.map(({ item, need, stock }) => ({
      item,
      quantity: Math.min(need, freeOf(stock)),
    }));
    reserved = [...reserved, ...taken];
  }
  return { totalMinor, togetherMinor, savingMinor: totalMinor - togetherMinor };
}

/** @returns places of works that are bought for at once; those whose sums do not stand are in none. */
function groupsOf(works: BuyingAsked['works'], needs: Needs): readonly (readonly number[])[] {
  const groups = new Map<string, number[]>();
  for (const [at, { orderId }] of works.entries()) {
    if (needs[at] == null) continue;
    const key = orderId === null ? `job ${at}` : `order ${orderId}`;
    const group = groups.get(key) ?? [];
    group.push(at);
    groups.set(key, group);
  }
  return [...groups.values()];
}
