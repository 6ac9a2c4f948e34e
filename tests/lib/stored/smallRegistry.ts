import { z } from 'zod';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { type PaperBodies, paperKinds } from '@/lib/kinds/paperKinds';
import type { KindDescriptor, PaperRegistry, Registry, StoreKinds } from '@/lib/stored/registry';
import { paperNumberSchema } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';

const rateSchema = z.strictObject({ value: z.number(), unit: z.string() });
const lineSchema = z.strictObject({
  id: z.string(),
  quantity: z.int().min(0),
  notes: z.string().exactOptional(),
});

/** Documents small enough to be read in a test. The job is in its second version: `copies` became `lines`. */
export const smallJobSchema = z.strictObject({
  name: z.string().min(1),
  lines: z.array(lineSchema),
  /** Must not be under what all lines ask for. */
  most: z.int().exactOptional(),
  rates: z.record(z.string(), rateSchema).exactOptional(),
  /** A picture that goes with it. */
  fileId: z.string().exactOptional(),
});
export type SmallJob = z.infer<typeof smallJobSchema>;
export type SmallBodies = {
  readonly workshop: { readonly name: string; readonly wage?: number };
  readonly blank: { readonly name: string };
  readonly artwork: { readonly name: string };
  readonly job: SmallJob;
  readonly priceList: { readonly name: string };
};

const draft = (word: string) => ({ nature: 'draft', word, linksOf: () => [] }) as const;

const job: KindDescriptor<SmallJob, 'draft'> = {
  ...draft('job'),
  version: 2,
  schema: smallJobSchema,
  steps: {
    1: (body) => {
      const { copies, ...rest } = z.looseObject({ copies: z.number() }).parse(body);
      return { ...rest, lines: [{ id: 'first', quantity: copies }] };
    },
  },
};
const named = {
  ...draft('thing'),
  version: 1,
  schema: z.strictObject({ name: z.string().min(1) }),
  steps: {},
};

export const smallRegistry: Registry<SmallBodies> = {
  workshop: {
    ...draft('workshop'),
    version: 1,
    schema: z.strictObject({ name: z.string().min(1), wage: z.number().exactOptional() }),
    steps: {},
  },
  blank: named,
  artwork: named,
  job,
  priceList: named,
};

const smallPaperSchema = z.strictObject({ number: paperNumberSchema, text: z.string().min(1) });
type SmallPaper = z.infer<typeof smallPaperSchema>;
export type SmallPapers = PaperBodies & { readonly offer: SmallPaper; readonly bill: SmallPaper };

export const smallPaperKinds: PaperRegistry<SmallPapers> = {
  ...paperKinds,
  offer: {
    nature: 'issued',
    word: 'offer',
    version: 1,
    schema: smallPaperSchema,
    steps: {},
    linksOf: () => [],
  },
  /** Numbered by each device for itself, and nothing without its file. */
  bill: {
    nature: 'issued',
    word: 'bill',
    version: 1,
    schema: smallPaperSchema,
    steps: {},
    linksOf: () => [],
    numbering: 'device',
    needsFile: true,
  },
};

export const smallKinds: StoreKinds = { registry: smallRegistry, paperKinds: smallPaperKinds, entryKinds };

export const aJobBody = (change: Partial<SmallJob> = {}): SmallJob => ({
  name: 'Club order',
  lines: [{ id: 'shirts', quantity: 38 }],
  ...change,
});

export const aStoredJob = (change: Partial<Stored> = {}): Stored => ({
  id: 'job-1',
  kind: 'job',
  version: 2,
  revision: 1,
  updatedAt: 1000,
  body: aJobBody(),
  ...change,
});
