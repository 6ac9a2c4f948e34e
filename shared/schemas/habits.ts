import { z } from './z';

/** What makers promise of their goods and may be asked to prove. */
export const claims = ['handmade', 'organic', 'dishwasherSafe', 'madeIn'] as const;
export type Claim = (typeof claims)[number];

const toldOnce = () => z.boolean().nullable().default(null);

/** How this workshop works in every job: asked once. Null is not yet asked. */
export const habitsSchema = z.strictObject({
  /** Whether the press hangs on a circuit that bears it, where nobody has entered its figures. */
  ownCircuit: toldOnce(),
  extensionLead: toldOnce(),
  /** Whether the safety data sheets of ink and coatings are kept. */
  safetySheets: toldOnce(),
  /** Whether somebody stays in the room while a press works alone. */
  staysByPress: toldOnce(),
  /** What happens to sewn labels where a job does not say. */
  sewnLabel: z.enum(['kept', 'covered', 'removed']).nullable().default(null),
  /** Relative humidity of the room by a meter, 0 to 1. */
  humidity: z.number().min(0).max(1).nullable().default(null),
  /** Whether the air is neither dry nor damp, where nobody has measured it. */
  humidityFits: toldOnce(),
  /** Fewest pieces the workshop takes an order for; null where there is no such rule. */
  leastPieces: z.int().min(1).max(10_000).nullable().default(null),
  /** What buyers are promised, and whether the maker can prove it. */
  claims: z
    .array(z.strictObject({ claim: z.enum(claims), proven: z.boolean().default(false) }))
    .max(claims.length)
    .default([]),
});

export type Habits = z.infer<typeof habitsSchema>;

/** Of a workshop that nobody has asked anything yet. */
export const untoldHabits: Habits = {
  ownCircuit: null,
  extensionLead: null,
  safetySheets: null,
  staysByPress: null,
  sewnLabel: null,
  humidity: null,
  humidityFits: null,
  leastPieces: null,
  claims: [],
};
