import { supplyItemLinks } from '@/lib/kinds/supplyItemLinks';
import { workLinks } from '@/lib/kinds/workLinks';
import type { KindFacts, Link } from '@/lib/stored/registry';
import type { BuyingList } from '@/shared/schemas/making/supply';

export const buyingList: KindFacts<BuyingList, 'draft'> = {
  nature: 'draft',
  word: 'buying list',
  version: 1,
  steps: {},
  linksOf: ({ works, held, chosen }) => [
    ...works.flatMap((work, at) => workLinks(work, ['works', at])),
    ...held.flatMap(({ item }, at) => supplyItemLinks(item, ['held', at, 'item'])),
    ...chosen.flatMap(({ item, supplierId }, at): readonly Link[] => [
      ...supplyItemLinks(item, ['chosen', at, 'item']),
      { to: 'supplier', id: supplierId, path: ['chosen', at, 'supplierId'] },
    ]),
  ],
};
