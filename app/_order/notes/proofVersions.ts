import type { ArtworkVersion, OrderFacts, OutOf } from '@/lib/orders/orderFacts';

/** @returns proof sheets in force, the last first. */
export const proofsOf = ({ happened }: Pick<OrderFacts, 'happened'>): readonly OutOf<'proof'>[] =>
  happened.flatMap((one) => (one.kind === 'proof' && !one.withdrawn ? [one] : [])).toReversed();

/** @returns the version of each picture that a proof sheet shows. */
export const versionsShown = ({ body }: OutOf<'proof'>): readonly ArtworkVersion[] => [
  ...new Map(
    body.goods.flatMap(({ prints }) =>
      prints.map(({ artwork: { artworkId, version } }) => [artworkId, { artworkId, version }] as const),
    ),
  ).values(),
];
