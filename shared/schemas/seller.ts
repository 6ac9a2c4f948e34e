import { idSchema } from './basics';
import { languageSchema } from './customer';
import { keptFileSchema } from './keptFile';
import { z } from './z';

/** Who stands at the head of the workshop's papers. What nobody told is empty. */
export const sellerSchema = z.strictObject({
  /** Where it is not the workshop's name. */
  name: z.string().max(120).default(''),
  /** What it does, in a few words under the name. */
  tagline: z.string().max(160).default(''),
  /** Lines of text, as on an envelope. */
  address: z.string().max(500).default(''),
  contact: z.string().max(400).default(''),
  taxNumber: z.string().max(60).default(''),
  /** Account and reference, or whatever the customer needs to pay. */
  howToPay: z.string().max(800).default(''),
  logo: keptFileSchema.nullable().default(null),
});

/** Terms that every workshop has to say something about; the words they begin with are the app's. */
export const termKeys = [
  'payment',
  'delivery',
  'proof',
  'revisions',
  'colour',
  'quantity',
  'claims',
  'ownGarments',
  'cancelling',
  'rights',
  'late',
] as const;

/** How papers are written. */
export const papersSchema = z.strictObject({
  /** Null for what is usual where the workshop is. */
  page: z.enum(['a4', 'letter']).nullable().default(null),
  /** The workshop's own words for a label of papers, in one language. */
  words: z
    .array(
      z.strictObject({
        language: languageSchema,
        key: z.string().min(1).max(60),
        text: z.string().trim().min(1).max(1000),
      }),
    )
    .max(1000)
    .default([]),
  /** The workshop's own words for a term; empty leaves it off. */
  terms: z
    .array(z.strictObject({ language: languageSchema, key: z.enum(termKeys), text: z.string().max(1000) }))
    .max(400)
    .default([]),
  /** Terms of the workshop alone. */
  ownTerms: z
    .array(
      z.strictObject({
        id: idSchema,
        /** Of the papers that it stands on; null for all of them. */
        language: languageSchema.nullable().default(null),
        heading: z.string().max(80),
        text: z.string().max(1000),
      }),
    )
    .max(10)
    .default([]),
});

/** What is usual of a quote, where an order says nothing else. */
export const quotingSchema = z.strictObject({
  validDays: z.int().min(1).max(365),
  depositShare: z.number().min(0).max(1),
  revisionsIncluded: z.int().min(0).max(20),
  /** Days in which a spoiled piece is made again or paid back. */
  remakeDays: z.int().min(0).max(365),
  /** Days in which something can be complained of. */
  claimDays: z.int().min(0).max(365),
  /** Days after the invoice; null where it is paid before the goods go out. */
  creditDays: z.int().min(0).max(365).nullable(),
  /** How likely an open quote comes, for what the weeks ahead may hold. */
  winChance: z.number().min(0).max(1),
  /** Days without a print after which the printer is told of. */
  idleDays: z.int().min(1).max(365),
});

/** From memory of common practice. */
export const usualQuoting: Quoting = {
  validDays: 14,
  depositShare: 0.5,
  revisionsIncluded: 2,
  remakeDays: 7,
  claimDays: 14,
  creditDays: null,
  winChance: 0.4,
  idleDays: 5,
};

export const untoldSeller: SellerIdentity = {
  name: '',
  tagline: '',
  address: '',
  contact: '',
  taxNumber: '',
  howToPay: '',
  logo: null,
};

export const untoldPapers: PaperSettings = { page: null, words: [], terms: [], ownTerms: [] };

export type SellerIdentity = z.infer<typeof sellerSchema>;
export type PaperSettings = z.infer<typeof papersSchema>;
export type Quoting = z.infer<typeof quotingSchema>;
export type TermKey = (typeof termKeys)[number];
