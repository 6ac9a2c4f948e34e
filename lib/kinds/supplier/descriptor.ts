import { supplyItemLinks } from '@/lib/kinds/supplyItemLinks';
import type { KindFacts } from '@/lib/stored/registry';
import type { Supplier } from '@/shared/schemas/making/supply';

export const supplier: KindFacts<Supplier, 'draft'> = {
  nature: 'draft',
  word: 'supplier',
  version: 1,
  steps: {},
  linksOf: ({ offers }) =>
    offers.flatMap(({ item, standsInFor }, at) => [
      ...supplyItemLinks(item, ['offers', at, 'item']),
      ...(standsInFor === null ? [] : supplyItemLinks(standsInFor, ['offers', at, 'standsInFor'])),
    ]),
};
