import { newJob } from '@/lib/drafts/newJob';
import type { Artwork } from '@/shared/schemas/artwork';
import { type Blank, textileKinds } from '@/shared/schemas/blank';
import type { Job, Line } from '@/shared/schemas/job';
import type { Press, Sheet, Workshop } from '@/shared/schemas/workshop';
import { blankPatterns, type StartingBlankName } from './blankPatterns';
import { freshWorkshop } from './freshWorkshop';
import { usualCircuit } from './regionOf';
import { moneySize, scaleMoney, timesExact } from './scaleMoney';
import { paperChosen, pressChosen, type StartChoices } from './startChoices';
import { startingBlank } from './startingBlanks';
import { startPackaging, startPress, startSheet } from './startParts';

/** Ids of what a first job brings into being. */
export interface StartIds {
  readonly job: string;
  readonly blank: string;
  readonly artwork: string;
}

/** What the answers so far come to: a workshop, a blank, and a job on it. */
export interface StartDraft {
  readonly workshop: Workshop;
  readonly blank: Blank;
  readonly artwork: Artwork;
  readonly job: Job;
}

/** @returns how much of its money a place has for a dollar; null where nobody has said, and no amount is typical. */
export const dollarOf = ({ region, dollar }: Pick<StartChoices, 'region' | 'dollar'>): number | null =>
  moneySize(region.currency) === 1 ? 1 : (dollar ?? moneySize(region.currency));

/**
 * A first job in a workshop of its own, made of what was answered; all else is typical.
 *
 * @param day the day it begins, YYYY-MM-DD
 */
export function startDraft(
  make: StartingBlankName,
  choices: StartChoices,
  day: string,
  ids: StartIds,
): StartDraft {
  const press = startPress(pressChosen({ ...choices, make }) ?? 'flat', 'press-1', day, inDollars(choices));
  const sheet = startSheet(paperChosen(choices), 'sheet-1', day, inDollars(choices));
  const workshop = startWorkshop(make, choices, day, press, sheet);
  const blank = startBlank(make, choices, day, press);
  return { ...draftIn(workshop, blank, choices, day, ids, { pressId: press.id, sheetId: sheet.id }) };
}

/** A first job in a workshop that is the maker's own already, on the press and the sheet that were chosen. */
export function draftIn(
  workshop: Workshop,
  blank: Blank,
  choices: StartChoices,
  day: string,
  ids: StartIds,
  chosen: { readonly pressId: string; readonly sheetId: string },
): StartDraft {
  const made = newJob({
    name: 'My first job',
    day,
    workshop,
    blank: { id: ids.blank, body: blank },
    artworkId: ids.artwork,
    machines: { printerId: workshop.printers[0]?.id ?? '', ...chosen },
  });
  const isCloth = textileKinds.includes(blank.kind);
  const { keepsLabel } = choices;
  return {
    workshop,
    blank,
    artwork: made.artwork,
    job: {
      ...made.job,
      sewnLabel: !isCloth || keepsLabel === null ? 'unknown' : keepsLabel ? 'kept' : 'removed',
      lines: made.job.lines.map((line) => answered(line, blank, choices)),
    },
  };
}

/** @returns the blank that is made on, with the price that was typed for its usual sizes. */
export function startBlank(make: StartingBlankName, choices: StartChoices, day: string, press: Press): Blank {
  const blank = scaleMoney(startingBlank(make, day, inDollars(choices).region), dollarOf(choices) ?? 1);
  const [first] = blank.sizes;
  const { blankPrice } = choices;
  return {
    ...blank,
    // A tumbler wrapped for the oven is not heated like one in a press.
    substrate: make === 'tumbler' && press.kind === 'oven' ? 'steelTumblerOven' : blank.substrate,
    sizes: blank.sizes.map((size) =>
      blankPrice !== null && size.price?.value === first?.price?.value
        ? { ...size, price: blankPrice }
        : size,
    ),
  };
}

function startWorkshop(
  make: StartingBlankName,
  choices: StartChoices,
  day: string,
  press: Press,
  sheet: Sheet,
): Workshop {
  const { region, rates, sheetPrice, isAired, hasOwnCircuit } = choices;
  const dollar = dollarOf(choices) ?? 1;
  const priced = inDollars(choices);
  const fresh = freshWorkshop(day, priced.region);
  const { kind } = blankPatterns[make];
  const scaled = scaleMoney(
    {
      ...fresh,
      presses: [press],
      sheets: [sheet],
      packagings: [startPackaging(kind === 'drinkware', 'packaging-1', day, priced)],
    },
    dollar,
  );
  return {
    ...scaled,
    ...region,
    rates: {
      ...scaled.rates,
      ...Object.fromEntries(Object.entries(rates).filter(([, rate]) => rate !== undefined)),
    },
    sheets: scaled.sheets.map((one) =>
      sheetPrice !== null && (sheetPrice.unit === 'money/m') === (one.form === 'roll')
        ? { ...one, price: sheetPrice }
        : one,
    ),
    circuit: hasOwnCircuit === true ? { ...usualCircuit(region), otherWatts: 0 } : null,
    room: { ...scaled.room, ventilated: isAired },
    policy:
      dollar === 1
        ? scaled.policy
        : // Prices end on a round coin of about half a dollar.
          { ...scaled.policy, priceStep: Number(timesExact(0.5, dollar).toPrecision(1)) },
  };
}

/** Where amounts are typical only in dollars the parts are made in them, and their money is brought to size after. */
function inDollars(choices: StartChoices): StartChoices {
  return dollarOf(choices) === null || moneySize(choices.region.currency) === 1
    ? choices
    : { ...choices, region: { ...choices.region, currency: 'USD' } };
}

function answered(
  line: Line,
  { sizes }: Blank,
  { quantities, handMinutes, usesFreshPaper }: StartChoices,
): Line {
  const names = sizes.map(({ name }) => name);
  const isOfBlank = quantities?.every(({ size }) => names.includes(size)) ?? false;
  return {
    ...line,
    quantities: isOfBlank && quantities !== null ? quantities : line.quantities,
    placements: line.placements.map((placement) => ({
      ...placement,
      handMinutes: handMinutes ?? placement.handMinutes,
      recipe: {
        ...placement.recipe,
        protectivePaper: usesFreshPaper === false ? 'reused' : placement.recipe.protectivePaper,
      },
    })),
  };
}
