import type { KindDescriptor } from '@/lib/stored/registry';
import { type Shop, shopSchema } from '@/shared/schemas/shop';

export const shop: KindDescriptor<Shop, 'draft'> = {
  nature: 'draft',
  word: 'shop',
  version: 1,
  schema: shopSchema,
  steps: {},
  linksOf: ({ channelId }) =>
    channelId === null ? [] : [{ to: 'channel', id: channelId, path: ['channelId'] }],
};
