import type { StartChoices } from '@/lib/examples/startChoices';
import { type NumberLimits, numberLimits } from '@/shared/limits';
import { blankSizeSchema } from '@/shared/schemas/blank';
import { placementSchema } from '@/shared/schemas/job';
import type { Rate } from '@/shared/schemas/rate';
import type { JobInput } from '@/shared/schemas/request';
import { ratesSchema, sheetSchema } from '@/shared/schemas/workshop';
import { type RateName, type RateUnit, rateDefinition, rateNames } from '@/shared/tables/rateCatalogue';
import { placementTypicals } from '@/shared/tables/typicalRates';

/** One of the dozen figures that matter most. */
export interface StartQuestion {
  readonly id: string;
  readonly label: string;
  /** What moves when it moves. */
  readonly changes: string;
  readonly units: readonly [RateUnit, ...RateUnit[]];
  readonly limits: NumberLimits;
  readonly rate: Rate | null;
  /** Null goes back to what is typical. */
  readonly answer: (rate: Rate | null) => Partial<StartChoices>;
}

/** The figures that matter most, in order, as the job of the answers so far has them. */
export function startQuestions(
  input: JobInput,
  choices: StartChoices,
  piece: string,
): readonly StartQuestion[] {
  const asked = new Map<number, StartQuestion>();
  for (const name of rateNames) {
    const place = rateDefinition(name).asked;
    if (place !== undefined) asked.set(place, ofCatalogue(name, input, choices));
  }
  const [line] = input.job.lines;
  const sizes = input.blanks[line?.blankId ?? '']?.sizes ?? [];
  const [placement] = line?.placements ?? [];
  const sheet = input.workshop.sheets.find(({ id }) => id === input.job.sheetId);
  // The places between are kept for what does not hang on the workshop as a whole.
  asked.set(4, {
    id: 'blankPrice',
    label: `A plain ${piece}`,
    changes:
      'The largest cost of most orders. Larger sizes keep their distance until you type them under Blanks.',
    units: ['money/piece'],
    limits: numberLimits(blankSizeSchema, ['price', 'value']),
    rate: sizes[0]?.price ?? null,
    answer: (rate) => ({ blankPrice: inUnit(rate, 'money/piece') }),
  });
  asked.set(9, {
    id: 'handMinutes',
    label: placementTypicals.flat.handMinutes.label,
    changes: 'Lay out, tape, press, lift: once for every print on every piece, so it counts on every order.',
    units: ['min'],
    limits: numberLimits(placementSchema, ['handMinutes', 'value']),
    rate: placement?.handMinutes ?? null,
    answer: (rate) => ({ handMinutes: inUnit(rate, 'min') }),
  });
  const unit = sheet?.form === 'roll' ? 'money/m' : 'money/sheet';
  asked.set(11, {
    id: 'sheetPrice',
    label: sheet?.form === 'roll' ? 'A metre of transfer paper' : 'A sheet of transfer paper',
    changes: 'Every sheet that is printed, tests and spoiled ones too.',
    units: [unit],
    limits: numberLimits(sheetSchema, ['price', 'value']),
    rate: sheet?.price ?? null,
    answer: (rate) => ({ sheetPrice: inUnit(rate, unit) }),
  });
  return [...asked].toSorted(([a], [b]) => a - b).map(([, question]) => question);
}

function ofCatalogue(name: RateName, { workshop }: JobInput, { rates }: StartChoices): StartQuestion {
  const { label, units, changes } = rateDefinition(name);
  return {
    id: name,
    label,
    changes,
    units,
    limits: numberLimits(ratesSchema, [name, 'value']),
    rate: workshop.rates[name],
    answer: (rate) => ({ rates: { ...rates, [name]: rate ?? undefined } }),
  };
}

/** A rate in the only unit its question has. */
const inUnit = <Unit extends RateUnit>(rate: Rate | null, unit: Unit): Rate<Unit> | null =>
  rate === null ? null : { ...rate, unit };
