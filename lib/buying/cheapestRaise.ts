import { toMinor } from '@/shared/money';
import type { Purchase } from './buyingPlan';
import { purchaseOf, type Way } from './waysToBuy';

/** Something that can be bought more of. */
interface Raisable {
  readonly way: Way;
  readonly purchase: Purchase;
  readonly isHeld: boolean;
}

interface Raise {
  /** What is bought instead, by the place of the thing; what stays as it was is not in it. */
  readonly purchases: ReadonlyMap<number, Purchase>;
  /** What another raise might spare at most, minor units; 0 where none is cheaper. */
  readonly overMinor: number;
}

/** More packs of a thing than this are not bought to fill an order. */
const MOST_PACKS = 10_000;
/** Mixtures that are looked at; beyond them the gap is told. */
const MOST_LOOKS = 2000;

/**
 * The cheapest way to make an order so much larger: whole packs more of one thing, or of several where that costs less.
 * Of ways that cost the same the one with the fewest things is taken.
 *
 * @param lackingMinor above 0
 * @param isMixed whether several things at once are looked at
 * @returns null where nothing has a price and packs and may be bought more of
 */
export function cheapestRaise(
  things: readonly Raisable[],
  lackingMinor: number,
  currency: string,
  isMixed: boolean,
): Raise | null {
  const steps = things.flatMap((thing, place) => stepsOf(thing, place, currency)).filter(isFirstOfItsKind);
  const leastMinor = leastReached(steps, lackingMinor);
  const search: Search = { steps: bySize(steps), leastMinor, best: null, looks: isMixed ? MOST_LOOKS : 0 };
  for (const step of steps) close(search, [], 0, step, lackingMinor);
  const most = isMixed ? steps.length : 1;
  for (let count = 2; count <= most && !isSettled(search); count += 1)
    mix(search, [], 0, lackingMinor, count, 0);
  const { best } = search;
  if (best === null) return null;
  const isLeast = steps.length === 1 || best.minor <= leastMinor || (isMixed && search.looks > 0);
  return {
    purchases: new Map(best.parts.map(({ step, packs }) => [step.place, step.at(packs)])),
    overMinor: isLeast ? 0 : best.minor - leastMinor,
  };
}

// Helpers

/** A thing by the packs more of it. */
interface Step {
  readonly place: number;
  readonly way: Way;
  readonly quantity: number;
  readonly packSize: number;
  readonly at: (packs: number) => Purchase;
  /** What so many packs more cost, minor units. */
  readonly extraAt: (packs: number) => number;
  /** What a pack costs where each costs the same, however many; null where it depends. */
  readonly packMinor: number | null;
}

interface Part {
  readonly step: Step;
  readonly packs: number;
}

interface Search {
  /** What comes in large amounts first: small ones fill what is left. */
  readonly steps: readonly Step[];
  /** Less than this nothing can come to. */
  readonly leastMinor: number;
  best: { readonly minor: number; readonly parts: readonly Part[] } | null;
  /** Still allowed. */
  looks: number;
}

function stepsOf({ way, purchase, isHeld }: Raisable, place: number, currency: string): readonly Step[] {
  const { packSize, tiers } = way;
  const now = purchase.amountMinor ?? 0;
  if (isHeld || packSize === null || now <= 0) return [];
  const { quantity } = purchase;
  const at = (packs: number) =>
    purchaseOf(way, Number((quantity + packs * packSize).toPrecision(12)), currency);
  const [tier, ...others] = tiers;
  const packMinor = tier === undefined ? 0 : toMinor(tier.each * packSize, currency);
  // Without fractions of the smallest coin nothing is rounded on the way.
  const isEven =
    others.length === 0 &&
    tier !== undefined &&
    toMinor(tier.each * packSize * 1000, currency) === packMinor * 1000;
  return [
    {
      ...{ place, way, quantity, packSize, at },
      extraAt: (packs) => (isEven ? packs * packMinor : (at(packs).amountMinor ?? 0) - now),
      packMinor: isEven ? packMinor : null,
    },
  ];
}

/** Sizes at one price fill an order alike: the first of them does for all. */
const isFirstOfItsKind = ({ packMinor }: Step, at: number, steps: readonly Step[]): boolean =>
  packMinor === null || steps.findIndex((step) => step.packMinor === packMinor) === at;

const bySize = (steps: readonly Step[]): readonly Step[] =>
  steps.toSorted((one, other) => other.extraAt(1) - one.extraAt(1));

/** Packs of 4.00 and 6.00 come to even amounts alone. */
function leastReached(steps: readonly Step[], lackingMinor: number): number {
  const packs = steps.flatMap(({ packMinor }) => packMinor ?? []);
  if (packs.length < steps.length) return lackingMinor;
  const common = packs.reduce(divisor, 0);
  return common === 0 ? lackingMinor : Math.ceil(lackingMinor / common) * common;
}

const divisor = (one: number, other: number): number => (other === 0 ? one : divisor(other, one % other));

const isSettled = ({ best, leastMinor, looks }: Search): boolean =>
  best === null || best.minor <= leastMinor || looks <= 0;

/** Fills what is left with one thing, where that is the cheapest yet. */
function close(
  search: Search,
  parts: readonly Part[],
  raisedMinor: number,
  step: Step,
  lackingMinor: number,
): void {
  const packs = packsToReach(step, lackingMinor - raisedMinor).toSorted(
    (one, other) => step.extraAt(one) - step.extraAt(other),
  )[0];
  if (packs === undefined) return;
  const minor = raisedMinor + step.extraAt(packs);
  if (search.best === null || minor < search.best.minor)
    search.best = { minor, parts: [...parts, { step, packs }] };
}

/** Looks at everything that takes so many things, each after those before it. */
function mix(
  search: Search,
  parts: readonly Part[],
  raisedMinor: number,
  lackingMinor: number,
  count: number,
  from: number,
): void {
  search.steps.slice(from).forEach((step, index) => {
    if (count === 1) {
      close(search, parts, raisedMinor, step, lackingMinor);
      return;
    }
    const most = Math.max(0, ...packsToReach(step, lackingMinor - raisedMinor));
    for (let packs = 1; packs < most && !isSettled(search); packs += 1) {
      const raised = raisedMinor + step.extraAt(packs);
      if (raised >= lackingMinor) continue;
      search.looks -= 1;
      mix(search, [...parts, { step, packs }], raised, lackingMinor, count - 1, from + index + 1);
    }
  });
}

/** @returns in each tier the fewest packs that cost so much more; none where that takes too many */
function packsToReach(step: Step, wantedMinor: number): readonly number[] {
  const { way, quantity, packSize, packMinor, extraAt } = step;
  if (packMinor !== null && packMinor > 0) {
    const packs = Math.ceil(wantedMinor / packMinor);
    return packs > MOST_PACKS ? [] : [packs];
  }
  const packsFrom = (from: number) => Math.max(1, Math.ceil((from - quantity) / packSize - 1e-9));
  return way.tiers.flatMap((tier, at) => {
    const first = at === 0 ? 1 : packsFrom(tier.from);
    const next = way.tiers[at + 1];
    const last = next === undefined ? MOST_PACKS : Math.min(MOST_PACKS, packsFrom(next.from) - 1);
    if (last < first || tier.each <= 0) return [];
    return firstOf(first, last, (packs) => extraAt(packs) >= wantedMinor);
  });
}

/** @returns the first whole number that passes, where all after it do too; none where none passes */
function firstOf(first: number, last: number, passes: (at: number) => boolean): readonly number[] {
  if (!passes(last)) return [];
  let [low, high] = [first, last];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (passes(middle)) high = middle;
    else low = middle + 1;
  }
  return [low];
}
