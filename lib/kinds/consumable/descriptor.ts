import type { KindDescriptor, Link } from '@/lib/stored/registry';
import { type Consumable, consumableSchema } from '@/shared/schemas/supply';

export const consumable: KindDescriptor<Consumable, 'draft'> = {
  nature: 'draft',
  word: 'consumable',
  version: 1,
  schema: consumableSchema,
  steps: {},
  linksOf: ({ uses }) =>
    uses.flatMap(({ pressIds, packagingIds }, at): readonly Link[] => [
      ...(pressIds ?? []).map((id, of): Link => ({ to: 'press', id, path: ['uses', at, 'pressIds', of] })),
      ...(packagingIds ?? []).map(
        (id, of): Link => ({ to: 'packaging', id, path: ['uses', at, 'packagingIds', of] }),
      ),
    ]),
};
