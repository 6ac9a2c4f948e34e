import type { KindDescriptor } from '@/lib/stored/registry';
import { type PriceListVersion, priceListVersionSchema } from '@/shared/schemas/priceList';

const priceListVersion: KindDescriptor<PriceListVersion, 'issued'> = {
  nature: 'issued',
  word: 'version of a price list',
  version: 1,
  schema: priceListVersionSchema,
  steps: {},
  // What went out keeps what it promised, whatever becomes of the jobs it was made from.
  linksOf: () => [],
};

/** Every kind of paper that goes out, under the name its records bear. */
export const paperKinds = { priceListVersion } as const;

type PaperKind = keyof typeof paperKinds;

/** What a paper of each kind says. */
export type PaperBodies = {
  readonly [Kind in PaperKind]: ReturnType<(typeof paperKinds)[Kind]['schema']['parse']>;
};
