import { lengthMmSchema, nameSchema } from './basics';
import { traitsSchema, untoldTraits } from './blankTraits';
import { rateSchema, shareSchema } from './rate';
import { z } from './z';

const blankKinds = ['garment', 'bag', 'cushion', 'drinkware', 'panel', 'mat', 'tile', 'small'] as const;
/** Kinds made of cloth; fibre and colour rules judge these only. */
export const textileKinds: readonly (typeof blankKinds)[number][] = ['garment', 'bag', 'cushion'];

/** Rows of the table of starting recipes that a blank follows. */
export const substrates = [
  'polyesterShirt',
  'performancePolyester',
  'blend65',
  'polyesterTote',
  'foamMat',
  'aluminiumPanel',
  'ceramicMug',
  'glassMug',
  'ceramicTile',
  'steelTumblerOven',
  'steelTumblerPress',
  'coatedHardboard',
] as const;
export type Substrate = (typeof substrates)[number];

export const fibres = [
  'polyester',
  'cotton',
  'wool',
  'viscose',
  'nylon',
  'elastane',
  'acrylic',
  'acetate',
  'other',
] as const;

export const positions = [
  'front',
  'back',
  'leftChest',
  'rightChest',
  'leftSleeve',
  'rightSleeve',
  'wrap',
  'face',
] as const;
export type Position = (typeof positions)[number];

const suppliers = ['maker', 'customer'] as const;

export const sizeNameSchema = z.string().trim().min(1).max(24);

export const blankSizeSchema = z.strictObject({
  name: sizeNameSchema,
  price: rateSchema(['money/piece']),
  /** Width of the item across the chest or face. */
  widthMm: lengthMmSchema.nullable().default(null),
  /** Supplier's pack; 1 where sold singly. */
  packSize: z.int().min(1).max(10_000).nullable().default(null),
  /** Of a body that a print wraps around; null for flat goods and where nobody measured. */
  wrap: z
    .strictObject({
      circumferenceMm: lengthMmSchema,
      /** Width that a handle takes from the wrap; 0 where there is none. */
      handleGapMm: z.number().min(0).max(500),
      /** How far the side leans from straight, degrees. */
      taperDegrees: z.number().min(0).max(45),
    })
    .nullable()
    .default(null),
  maxPrints: z
    .array(z.strictObject({ position: z.enum(positions), widthMm: lengthMmSchema, heightMm: lengthMmSchema }))
    .max(20)
    .default([]),
});

export const blankSchema = z.strictObject({
  name: nameSchema,
  kind: z.enum(blankKinds),
  substrate: z.enum(substrates),
  /** Fibre content by mass as on the sewn label; empty for hard goods. */
  fibres: z
    .array(z.strictObject({ fibre: z.enum(fibres), share: z.number().min(0).max(1) }))
    .max(9)
    .default([]),
  /** CIE L*a*b* of the surface, by measurement or judged against a swatch. */
  colour: z.strictObject({
    name: nameSchema,
    L: z.number().min(0).max(100),
    a: z.number().min(-128).max(127),
    b: z.number().min(-128).max(127),
  }),
  /** Polymer coating of a hard good; `cloth` where none is needed. */
  coating: z.enum(['coated', 'uncoated', 'unknown', 'cloth']),
  /** Highest temperature the maker of the blank allows, °C; null where none is stated. */
  maxTemperatureC: z.number().min(0).max(500).nullable().default(null),
  forChildren: z.boolean().nullable().default(null),
  /** Who brings the blanks. A customer's own cost nothing, and spoiled ones are not replaced. */
  suppliedBy: z.enum(suppliers).default('maker'),
  traits: traitsSchema.default(untoldTraits),
  sizes: z.array(blankSizeSchema).min(1).max(30),
  /** Share of blanks found faulty before pressing. */
  blankFault: shareSchema(0.9),
  finishMinutes: rateSchema(['min']),
  /** Working days from order to arrival. */
  leadWorkingDays: z.int().min(0).max(250).nullable().default(null),
});

export type Blank = z.infer<typeof blankSchema>;
export type BlankSize = z.infer<typeof blankSizeSchema>;
