import { suitsPress } from '@/lib/drafts/pressFor';
import { lengthMmSchema } from '@/shared/schemas/basics';
import { sizeNameSchema } from '@/shared/schemas/blank';
import { rateSchema } from '@/shared/schemas/rate';
import { rateOverridesSchema, workshopSchema } from '@/shared/schemas/workshop';
import { z } from '@/shared/schemas/z';
import { blankPatterns, type StartingBlankName, startingBlankNames } from './blankPatterns';
import { type Region, usualSheet } from './regionOf';

const presses = ['flat', 'large', 'other', 'mug', 'tumbler', 'oven'] as const;
const papers = ['letter', 'a4', 'a3', 'wide', 'roll'] as const;
export type StartPress = (typeof presses)[number];
export type StartPaper = (typeof papers)[number];

const { currency, locale, units } = workshopSchema.shape;

/** What somebody has answered on the way to a first job; null is not answered, and what is usual stands in. */
export const startChoicesSchema = z.strictObject({
  region: z.strictObject({ currency, locale, units }),
  /** How much of the money of the place a dollar is; null where nobody has typed it. */
  dollar: z.number().positive().max(1e6).nullable().default(null),
  make: z.enum(startingBlankNames).nullable().default(null),
  press: z.enum(presses).nullable().default(null),
  /** Of another press than those offered. */
  platen: z.strictObject({ widthMm: lengthMmSchema, heightMm: lengthMmSchema }).nullable().default(null),
  paper: z.enum(papers).nullable().default(null),
  rollWidthMm: lengthMmSchema.max(2000).nullable().default(null),
  quantities: z
    .array(z.strictObject({ size: sizeNameSchema, quantity: z.number().min(0).max(100_000) }))
    .max(30)
    .nullable()
    .default(null),
  isAired: z.boolean().nullable().default(null),
  hasOwnCircuit: z.boolean().nullable().default(null),
  usesFreshPaper: z.boolean().nullable().default(null),
  keepsLabel: z.boolean().nullable().default(null),
  rates: rateOverridesSchema.default({}),
  blankPrice: rateSchema(['money/piece']),
  handMinutes: rateSchema(['min']),
  sheetPrice: rateSchema(['money/sheet', 'money/m']),
});

export type StartChoices = z.infer<typeof startChoicesSchema>;

/** @returns choices of somebody who has answered nothing yet. */
export const noChoices = (region: Region): StartChoices => startChoicesSchema.parse({ region });

const kindOfPress = {
  flat: 'flat',
  large: 'flat',
  other: 'flat',
  mug: 'mug',
  tumbler: 'tumbler',
  oven: 'oven',
} as const;
export const pressKindOf = (press: StartPress) => kindOfPress[press];

/** @returns the presses to choose from: those that take what is made. */
export function pressesOffered(make: StartingBlankName | null): readonly StartPress[] {
  if (make === null) return ['flat', 'large', 'mug', 'other'];
  const { kind } = blankPatterns[make];
  return presses.filter(
    (press) => suitsPress(kindOfPress[press], { kind }) && (press !== 'oven' || kind === 'drinkware'),
  );
}

/** @returns the press that was chosen, where it takes what is made; else the usual one. */
export function pressChosen({ make, press }: Pick<StartChoices, 'make' | 'press'>): StartPress | null {
  const offered = pressesOffered(make);
  if (press !== null && offered.includes(press)) return press;
  if (make === null) return null;
  return make === 'tumbler' ? 'tumbler' : (offered[0] ?? null);
}

/** @returns the papers to choose from, that of the place first. */
export const papersOffered = (region: Region): readonly StartPaper[] =>
  usualSheet(region).name === 'Letter' ? ['letter', 'a4', 'wide', 'roll'] : ['a4', 'a3', 'wide', 'roll'];

/** @returns the paper that was chosen; else the usual one of the place. */
export const paperChosen = ({ region, paper }: Pick<StartChoices, 'region' | 'paper'>): StartPaper => {
  const offered = papersOffered(region);
  return paper !== null && offered.includes(paper) ? paper : (offered[0] ?? 'a4');
};
