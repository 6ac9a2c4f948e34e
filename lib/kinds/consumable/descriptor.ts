import type { KindFacts, Link } from '@/lib/stored/registry';
import type { Consumable } from '@/shared/schemas/making/supply';

export const consumable: KindFacts<Consumable, 'draft'> = {
  nature: 'draft',
  word: 'consumable',
  version: 1,
  steps: {},
  linksOf: ({ uses }) =>
    uses.flatMap(({ pressIds, packagingIds }, at): readonly Link[] => [
      ...(pressIds ?? []).map((id, of): Link => ({ to: 'press', id, path: ['uses', at, 'pressIds', of] })),
      ...(packagingIds ?? []).map(
        (id, of): Link => ({ to: 'packaging', id, path: ['uses', at, 'packagingIds', of] }),
      ),
    ]),
};
