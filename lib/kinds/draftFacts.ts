import { artwork } from '@/lib/kinds/artwork/descriptor';
import { blank } from '@/lib/kinds/blank/descriptor';
import { buyingList } from '@/lib/kinds/buyingList/descriptor';
import { consumable } from '@/lib/kinds/consumable/descriptor';
import { customer } from '@/lib/kinds/customer/descriptor';
import { job } from '@/lib/kinds/job/descriptor';
import { order } from '@/lib/kinds/order/descriptor';
import { priceList } from '@/lib/kinds/priceList/descriptor';
import { run } from '@/lib/kinds/run/descriptor';
import { shop } from '@/lib/kinds/shop/descriptor';
import { stallDay } from '@/lib/kinds/stallDay/descriptor';
import { supplier } from '@/lib/kinds/supplier/descriptor';
import { workshop } from '@/lib/kinds/workshop/descriptor';

/** What is known of every kind of document that is kept, under the name its records bear; of rare ones the schema is apart. */
export const draftFacts = {
  workshop,
  blank,
  artwork,
  job,
  priceList,
  customer,
  order,
  stallDay,
  shop,
  supplier,
  consumable,
  buyingList,
  run,
} as const;

export type DocumentKind = keyof typeof draftFacts;

/** @returns whether a record's kind is one that is known here. */
export const isKnownKind = (kind: string | null): kind is DocumentKind =>
  kind !== null && Object.hasOwn(draftFacts, kind);
