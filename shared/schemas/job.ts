import { findingIds } from '@/shared/tables/findingIds';
import { idSchema, lengthMmSchema, nameSchema } from './basics';
import { positions, sizeNameSchema } from './blank';
import { ownRowSchema } from './ownRow';
import { daySchema, rateSchema, shareSchema } from './rate';
import { recipeStepsSchema, untoldSteps } from './recipeSteps';
import { breaksSchema, sellingRuleSchema } from './sellingRule';
import { rateOverridesSchema } from './workshop';
import { z } from './z';

/** More presses on one piece than this have no place in the grid. */
export const MOST_PLACEMENTS = 4;
/** More pieces than this are taken for a slip of the hand by the schema; the check questions fewer. */
const MOST_PIECES = 100_000;

const pressureLevels = ['light', 'lightMedium', 'medium', 'mediumFirm', 'firm'] as const;
const protectivePapers = ['freshPlain', 'reused', 'parchment', 'wax', 'ptfe', 'none'] as const;

/** How far a job has come, as its maker says: being priced, quoted to somebody, agreed on, handed over. */
export const jobStates = ['draft', 'quoted', 'agreed', 'done'] as const;
export type JobState = (typeof jobStates)[number];
/** Crowds whose usual mix of sizes is known. */
export const audiences = ['adults', 'women', 'youth'] as const;
export type Audience = (typeof audiences)[number];

export const recipeSchema = z.strictObject({
  /** As typed, because a slip between the scales shows only in the typed pair. */
  temperature: z.strictObject({ value: z.number().min(0).max(1000), unit: z.enum(['F', 'C']) }),
  dwellSeconds: z.number().positive().max(7200),
  pressure: z.enum(pressureLevels),
  /** Reading at the press; null where it has no gauge. */
  pressureKpa: z.number().min(0).max(2000).nullable().default(null),
  preheatSeconds: z.number().min(0).max(600).nullable().default(null),
  protectivePaper: z.enum(protectivePapers),
  /** Pillow under the print, or the raised part hung off the platen. */
  reliefFromRaisedParts: z.boolean().default(false),
  /** Clean paper inside and under while another side is pressed. */
  barrierPaper: z.boolean().default(false),
  /** Good presses logged with this recipe on this substrate. */
  provenPresses: z.int().min(0).max(1_000_000).default(0),
  steps: recipeStepsSchema.default(untoldSteps),
});

/** Sizes that share one print size; `sizes` null means all that no other entry names. */
export const printSchema = z.strictObject({
  sizes: z.array(sizeNameSchema).min(1).max(30).nullable().default(null),
  widthMm: lengthMmSchema,
  heightMm: lengthMmSchema,
});

export const placementSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  position: z.enum(positions),
  artworkId: idSchema,
  prints: z.array(printSchema).min(1).max(10),
  fit: z.enum(['inside', 'fill', 'stretch']).default('inside'),
  /** Top of the print below the collar seam; null where there is no collar. */
  dropFromCollarMm: z.number().min(-500).max(2000).nullable().default(null),
  /** Whether the transfer is printed mirrored. */
  mirror: z.boolean(),
  pressId: idSchema,
  recipe: recipeSchema,
  raisedParts: z.enum(['none', 'underPlaten', 'insidePrint']).default('none'),
  /** Share of presses that spoil the piece. */
  scrap: shareSchema(0.9),
  handMinutes: rateSchema(['min']),
  /** Minutes of one piece, as all three: its own share where several lie in a press. In these nobody is paid. */
  aloneMinutes: rateSchema(['min']),
  /** Minutes the press is held hot for one piece. */
  hotMinutes: rateSchema(['min']),
  /** Planned test presses on scrap cloth, each with its own sheet. */
  testPresses: z.int().min(0).max(100).default(0),
  /** How far the picture runs past the edge of the item; null where the print ends inside it. */
  bleedMm: z.number().min(0).max(500).nullable().default(null),
  /** From the part that must be seen whole to the nearest edge, handle or seam; null where nobody measured. */
  safeZoneMm: z.number().min(0).max(2000).nullable().default(null),
  /** Of drinkware: how far the print ends below the rim, and whether it lies inside; null where nobody measured. */
  rim: z
    .strictObject({
      belowMm: z.number().min(0).max(500).nullable().default(null),
      inside: z.boolean().default(false),
    })
    .default({ belowMm: null, inside: false }),
  /** Whether the print for a spoiled piece takes a sheet alone or its share of a full one. */
  replacements: z.enum(['alone', 'ganged']).default('alone'),
  /** Its artwork was checked and prepared for an earlier order; left out where that is still to do. */
  artReady: z.literal(true).exactOptional(),
});

export const lineSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  blankId: idSchema,
  packagingId: idSchema.nullable().default(null),
  quantities: z
    .array(z.strictObject({ size: sizeNameSchema, quantity: z.number().min(0).max(MOST_PIECES) }))
    .max(30),
  /** What the customer said in all; null where nobody said a sum. */
  orderedQuantity: z.number().min(0).max(MOST_PIECES).nullable().default(null),
  /** Names or numbers of single pieces, one to a line of text; empty where no piece bears its own. */
  nameList: z.string().max(100_000).default(''),
  /** Who the sizes are for; null where nobody chose. */
  audience: z.enum(audiences).nullable().default(null),
  /** In press order. */
  placements: z.array(placementSchema).min(1).max(MOST_PLACEMENTS),
  /** Price asked for a piece, typed with or without tax as the channel says; null where not yet decided. */
  askedPrice: z.number().positive().max(1e9).nullable().default(null),
  /** What its order pays once on top of its pieces, written as the asked price is; null where nothing is apart. */
  askedStart: z.number().min(0).max(1e9).nullable().default(null),
  /** Added to the asked price for a size. */
  upCharges: z
    .array(z.strictObject({ size: sizeNameSchema, amount: z.number().min(-1e6).max(1e6) }))
    .max(30)
    .default([]),
  /** Whether a size adds its charge, or one price over the actual mix covers all sizes. */
  upCharging: z.enum(['separate', 'averaged']).default('separate'),
  /** The maker's own prices for breaks, written as the channel writes prices; a break without one is suggested. */
  ownPrices: z
    .array(z.strictObject({ from: z.int().min(1).max(2000), each: z.number().positive().max(1e9) }))
    .max(12)
    .default([]),
  /** How its orders are reckoned; null follows the workshop, and what is made to stock has one price a size. */
  selling: sellingRuleSchema.nullable().default(null),
  /** First quantities of its own price breaks; null follows the workshop. */
  breaks: breaksSchema.nullable().default(null),
  /** The most this crowd has been seen to pay for a piece, by the maker's own evidence. */
  marketCeiling: z.number().positive().max(1e9).nullable().default(null),
});

export const jobSchema = z.strictObject({
  name: nameSchema,
  customer: z.string().max(200).default(''),
  state: z.enum(jobStates).default('draft'),
  /** The day it was put away, out of the list of jobs; null while it is in it. */
  archivedOn: daySchema.nullable().default(null),
  /** Made to order, or made to stock for a stall. */
  madeFor: z.enum(['order', 'stock']),
  printerId: idSchema,
  sheetId: idSchema,
  channelId: idSchema,
  /** Whether prints of several placements may share a sheet. */
  gang: z.enum(['apart', 'together']).default('apart'),
  lines: z.array(lineSchema).min(1).max(12),
  wantedOn: daySchema.nullable().default(null),
  /** Pieces that one session can carry; null where one session carries all. */
  piecesPerSession: z.int().min(1).max(MOST_PIECES).nullable().default(null),
  /** Of the blanks; null where nobody has said, 0 where it comes free. An order without it is asked about. */
  freightIn: rateSchema(['money/order']),
  /** Round trip; null where nobody has said, and nothing of a delivery is counted; 0 where nobody drives. */
  deliveryKm: z.number().min(0).max(100_000).nullable().default(null),
  /** How many card payments settle the order; a stall counts tickets instead. */
  cardPayments: z.int().min(0).max(100).default(0),
  sewnLabel: z.enum(['kept', 'covered', 'removed', 'unknown']),
  rates: rateOverridesSchema.default({}),
  ownRows: z.array(ownRowSchema).max(20).default([]),
  /** Stops passed with a reason, which is printed on the run sheet. */
  waivers: z
    .array(
      z.strictObject({
        finding: z.enum(findingIds),
        placementId: idSchema.nullable().default(null),
        lineId: idSchema.nullable().default(null),
        reason: z.string().trim().min(3).max(500),
      }),
    )
    .max(50)
    .default([]),
});

export type Job = z.infer<typeof jobSchema>;
export type Line = z.infer<typeof lineSchema>;
export type Placement = z.infer<typeof placementSchema>;
export type Print = z.infer<typeof printSchema>;
export type Recipe = z.infer<typeof recipeSchema>;
