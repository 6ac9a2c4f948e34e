import type { Shop } from '@/shared/schemas/shop';

type Named = Pick<Shop, 'name' | 'knownAs'>;

/** @returns every name under which goods of a shop may lie: another device may not have heard of its newest yet. */
export const shopNames = ({ name, knownAs }: Named): ReadonlySet<string> =>
  new Set([name, ...knownAs.map((one) => one.name)]);

/**
 * A shop under a new name. It stays known by the old one and by this: of two names given on two devices at once only
 * one is kept as its name, and goods may lie under either.
 */
export const shopRenamed = <Of extends Named>(shop: Of, name: string): Of => ({
  ...shop,
  name,
  knownAs: [...shopNames(shop), name]
    .filter((one, at, all) => all.indexOf(one) === at)
    .map((one) => ({ name: one })),
});

/** @returns whether goods of a shop of that name would lie among those of another. */
export const isNameTaken = (name: string, others: readonly Named[]): boolean =>
  others.some((other) => shopNames(other).has(name));
