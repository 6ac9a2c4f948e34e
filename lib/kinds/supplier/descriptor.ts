import { supplyItemLinks } from '@/lib/kinds/supplyItemLinks';
import type { KindDescriptor } from '@/lib/stored/registry';
import { type Supplier, supplierSchema } from '@/shared/schemas/supply';

export const supplier: KindDescriptor<Supplier, 'draft'> = {
  nature: 'draft',
  word: 'supplier',
  version: 1,
  schema: supplierSchema,
  steps: {},
  linksOf: ({ offers }) =>
    offers.flatMap(({ item, standsInFor }, at) => [
      ...supplyItemLinks(item, ['offers', at, 'item']),
      ...(standsInFor === null ? [] : supplyItemLinks(standsInFor, ['offers', at, 'standsInFor'])),
    ]),
};
