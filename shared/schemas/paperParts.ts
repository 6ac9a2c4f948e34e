import { idSchema, lengthMmSchema, nameSchema } from './basics';
import { benchWorkSchema } from './benchWork';
import { positions, sizeNameSchema } from './blank';
import { languageSchema } from './customer';
import { paperNumberSchema, sha256Schema } from './happened';
import { orderNumberSchema } from './orderEvents';
import { daySchema } from './rate';
import { termKeys } from './seller';
import { z } from './z';

/** Money of a paper: whole minor units, which nothing rounds again. */
export const minorSchema = z.int().min(-1e12).max(1e12);
const textSchema = z.string().max(2000);

/** Who stands on a paper, as they stood there. */
const partySchema = z.strictObject({
  name: nameSchema,
  /** Lines of text. */
  address: z.string().max(500),
  contact: z.string().max(400),
  taxNumber: z.string().max(60),
});

const sellerOnPaperSchema = partySchema.extend({
  tagline: z.string().max(160),
  howToPay: z.string().max(800),
  /** The picture at its head; null where there is none. */
  logo: z.strictObject({ fileId: sha256Schema, fileName: z.string().max(200) }).nullable(),
});

/** What every paper of an order bears. */
export const heading = {
  orderId: idSchema,
  /** What it answers: the number of the order. */
  order: orderNumberSchema.nullable(),
  /** Of the paper itself, in its series; the version, where a paper has versions. */
  number: paperNumberSchema,
  issuedOn: daySchema,
  title: nameSchema,
  /** Whose words and figures it is written in. */
  language: languageSchema,
  locale: z.string().max(40),
  length: z.enum(['in', 'mm']),
  page: z.enum(['a4', 'letter']),
  currency: z.string().regex(/^[A-Z]{3}$/),
  seller: sellerOnPaperSchema,
  customer: partySchema.extend({ person: z.string().max(120) }),
} as const;

/** One print as a customer is told of it. */
const printOnPaperSchema = z.strictObject({
  placementId: idSchema,
  name: nameSchema,
  position: z.enum(positions),
  sizes: z.array(sizeNameSchema).max(30).nullable(),
  widthMm: lengthMmSchema,
  heightMm: lengthMmSchema,
  /** Top of the print below the collar; null where there is no collar. */
  dropFromCollarMm: z.number().nullable(),
  artwork: z.strictObject({ artworkId: idSchema, name: nameSchema, version: z.int().min(1) }),
  /** The picture as it was; null where no file is kept. */
  picture: z.strictObject({ fileId: sha256Schema, fileName: z.string().max(200) }).nullable(),
});

export const goodsSchema = z.strictObject({
  jobId: idSchema,
  lineId: idSchema,
  name: nameSchema,
  /** Blank, fibres, colour. */
  says: z.string().max(1000),
  /** Decides what is drawn behind its prints. */
  shape: z.enum(['garment', 'mug', 'panel', 'other']),
  prints: z.array(printOnPaperSchema).max(40),
});

export const pricedSizeSchema = z.strictObject({
  size: sizeNameSchema,
  quantity: z.int().min(0).max(100_000),
  each: minorSchema,
  total: minorSchema,
});

const pricedGoodsSchema = goodsSchema.extend({
  sizes: z.array(pricedSizeSchema).min(1).max(60),
  /** Once for its order, on top of its pieces; 0 where nothing is apart. */
  start: minorSchema,
});

export const sumsSchema = z.strictObject({
  /** As prices are written, after the discount. */
  subtotal: minorSchema,
  tax: minorSchema,
  total: minorSchema,
});

export const taxOnPaperSchema = z.strictObject({
  mode: z.enum(['added', 'inside', 'none']),
  share: z.number().min(0).max(1),
  rounding: z.enum(['document', 'line']),
  /** The customer's certificate, where no tax is taken of them. */
  exemption: z.string().max(80).nullable(),
});

const chargesOnPaperSchema = z.array(z.strictObject({ what: nameSchema, amount: minorSchema })).max(100);

/** Already taken from the subtotal. */
const discountOnPaperSchema = z
  .strictObject({ amount: z.int().min(0).max(1e12), why: z.string().max(200) })
  .nullable();

export const goodsSoldSchema = z.array(pricedGoodsSchema).max(48);

/** What is sold, and what it comes to. */
export const sale = {
  goods: goodsSoldSchema.min(1),
  charges: chargesOnPaperSchema,
  discount: discountOnPaperSchema,
  tax: taxOnPaperSchema,
  sums: sumsSchema,
} as const;

export const datesSchema = z.strictObject({
  orderBlanksBy: daySchema.nullable(),
  approveBy: daySchema.nullable(),
  ready: daySchema.nullable(),
  /** Working days from the later of approval and deposit. */
  leadDays: z.int().min(0).max(1000).nullable(),
});

export const termSchema = z.strictObject({ heading: z.string().max(80), text: textSchema });

/** A term before figures are put in; null where it is the workshop's alone. */
const termToFillSchema = termSchema.extend({ key: z.enum(termKeys).nullable() });

export const alternativeOnPaperSchema = z.strictObject({
  id: idSchema,
  label: nameSchema,
  says: z.string().max(300),
  sizes: z
    .array(
      z.strictObject({
        jobId: idSchema,
        lineId: idSchema,
        size: sizeNameSchema,
        quantity: z.int().min(0).max(100_000),
      }),
    )
    .max(1440),
  sums: sumsSchema,
  deposit: minorSchema,
  /** How it comes to that, so that the choice can be confirmed and billed from the paper alone. */
  priced: z.strictObject({
    lines: z
      .array(
        z.strictObject({
          jobId: idSchema,
          lineId: idSchema,
          /** A size may stand twice: further pieces have a price of their own. */
          sizes: z.array(pricedSizeSchema).min(1).max(60),
          start: minorSchema,
          /** Prints of the line that it goes without. */
          without: z.array(idSchema).max(4),
        }),
      )
      .min(1)
      .max(48),
    charges: chargesOnPaperSchema,
    discount: discountOnPaperSchema,
  }),
});

/** The maker's own side: it is kept with the paper and never printed. */
export const ownersSideSchema = z.strictObject({
  fullCost: minorSchema,
  floor: minorSchema,
  profit: minorSchema,
  margin: z.number(),
  /** An hour, after everything else; null where no minutes are known. */
  payPerHour: minorSchema.nullable(),
  /** Findings that stood, and reasons given. */
  risks: z.array(z.string().max(600)).max(200),
  underCostWhy: z.string().max(500),
  /** The terms before figures were put in, so that papers that follow say the same with their own. */
  terms: z.strictObject({
    texts: z.array(termToFillSchema).max(30),
    /** By name, as the quote wrote them; those that nobody knew are left out. */
    figures: z.record(z.string().max(40), textSchema),
    /** What was agreed besides, word for word. */
    besides: z.array(termSchema).max(1),
  }),
  /** What each job takes at the bench, so that a stop that comes up later takes no accepted order out of the plan. */
  work: z
    .array(
      z.strictObject({
        jobId: idSchema,
        /** The alternative by which it takes so much; null for what was asked, and for jobs that no alternative changes. */
        alternativeId: idSchema.nullable(),
        work: benchWorkSchema,
        /** Working days until the slowest of its blanks arrives; null where none was to be ordered, or none is known. */
        lead: z.number().min(0).max(1000).nullable(),
      }),
    )
    .max(36),
  rates: z
    .array(
      z.strictObject({
        place: z.string().max(400),
        label: z.string().max(200),
        value: z.number(),
        unit: z.string().max(40),
        date: daySchema,
      }),
    )
    .max(4000),
});

export type GoodsOnPaper = z.infer<typeof goodsSchema>;
export type QuoteAlternative = z.infer<typeof alternativeOnPaperSchema>;
export type SaleSums = z.infer<typeof sumsSchema>;
export type TermToFill = z.infer<typeof termToFillSchema>;
export type TaxOnPaper = z.infer<typeof taxOnPaperSchema>;
export type Seller = z.infer<typeof sellerOnPaperSchema>;
