import { z } from './z';

export const childRisks = ['underThree', 'sleepwear', 'bib', 'cords', 'smallParts'] as const;
export type ChildRisk = (typeof childRisks)[number];

/** What else is known of a blank; `unknown` and null where nobody has said. */
export const traitsSchema = z.strictObject({
  finish: z.enum(['plain', 'performance', 'heather', 'unknown']).default('unknown'),
  /** Cloth coloured after it was woven, whose own dye may move under heat. */
  dyed: z.boolean().nullable().default(null),
  /** Of a bag or cushion: whether another layer lies behind the printed one. */
  layers: z.enum(['one', 'two', 'unknown']).default('unknown'),
  /** Of flat hard goods: whether the coated face is marked, or both are coated. */
  coatedFace: z.enum(['marked', 'both', 'unknown']).default('unknown'),
  /** Of coated drinkware. */
  coatingHardness: z.enum(['soft', 'hard', 'unknown']).default('unknown'),
  thicknessMm: z.number().positive().max(500).nullable().default(null),
  /** What the supplier's label says now, and what it said when a recipe last worked; empty where nobody noted it. */
  lot: z.string().trim().max(80).default(''),
  provenLot: z.string().trim().max(80).default(''),
  /** What makes goods for children a matter of special rules; null where nobody was asked. */
  childRisks: z.array(z.enum(childRisks)).max(childRisks.length).nullable().default(null),
});

export type Traits = z.infer<typeof traitsSchema>;

/** Of a blank that nobody has described yet. */
export const untoldTraits: Traits = {
  finish: 'unknown',
  dyed: null,
  layers: 'unknown',
  coatedFace: 'unknown',
  coatingHardness: 'unknown',
  thicknessMm: null,
  lot: '',
  provenLot: '',
  childRisks: null,
};
