import type { KindDescriptor } from '@/lib/stored/registry';
import { type Customer, customerSchema } from '@/shared/schemas/customer';

export const customer: KindDescriptor<Customer, 'draft'> = {
  nature: 'draft',
  word: 'customer',
  version: 1,
  schema: customerSchema,
  steps: {},
  linksOf: () => [],
};
