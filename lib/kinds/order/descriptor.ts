import type { KindDescriptor, Link } from '@/lib/stored/registry';
import { type Order, orderSchema } from '@/shared/schemas/order';

export const order: KindDescriptor<Order, 'draft'> = {
  nature: 'draft',
  word: 'order',
  version: 1,
  schema: orderSchema,
  steps: {},
  linksOf: ({ customerId, jobIds, lines, channelId, repeats }) => [
    ...linkTo('customer', customerId, ['customerId']),
    ...jobIds.map((id, at): Link => ({ to: 'job', id, path: ['jobIds', at] })),
    ...lines.flatMap(({ jobId, price }, at): readonly Link[] => [
      { to: 'job', id: jobId, path: ['lines', at, 'jobId'] },
      ...(price.from === 'list' ? linkTo('paper', price.paperId, ['lines', at, 'price', 'paperId']) : []),
    ]),
    ...linkTo('channel', channelId, ['channelId']),
    // The order it repeats has papers and payments of its own.
    ...linkTo('order', repeats, ['repeats']).map((link): Link => ({ ...link, isApart: true })),
  ],
};

// Helpers

const linkTo = (to: string, id: string | null, path: Link['path']): readonly Link[] =>
  id === null ? [] : [{ to, id, path }];
