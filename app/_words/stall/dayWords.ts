import type { StallDay } from '@/shared/schemas/stallDay';

export const stageChoices: readonly { readonly value: StallDay['stage']; readonly label: string }[] = [
  { value: 'idea', label: 'Only an idea' },
  { value: 'applied', label: 'Applied for' },
  { value: 'accepted', label: 'Accepted' },
  { value: 'refused', label: 'Refused' },
  { value: 'calledOff', label: 'Called off' },
];

export const proofChoices: readonly {
  readonly value: StallDay['permit']['state'];
  readonly label: string;
}[] = [
  { value: 'unset', label: 'Not yet said' },
  { value: 'asked', label: 'Asked for, not here yet' },
  { value: 'have', label: 'Here' },
  { value: 'notNeeded', label: 'Not needed' },
];

export const powerChoices: readonly {
  readonly value: StallDay['power']['source'];
  readonly label: string;
}[] = [
  { value: 'unset', label: 'Not yet said' },
  { value: 'none', label: 'Nothing: there is no power' },
  { value: 'mains', label: 'The mains' },
  { value: 'battery', label: 'A battery' },
  { value: 'generator', label: 'A generator' },
];

export const dayWays = {
  count: 'Count sales',
  evening: 'The evening after',
} as const;

export const planActs = {
  fix: 'Fix the plan',
  fixed: 'The fixed plan',
  table: 'Table list',
  load: 'List to load by',
  take: 'Take the advice',
  takeAll: (pieces: number): string => `Take the advice, ${pieces} in all`,
} as const;

export const sameDayMend = 'Change it, or take one of them out.';

export const sameDayWords = `This date stands there already. ${sameDayMend}`;

/** The stall is open longer than the maker is there; null where the hours may be right. */
export const openLongerWords = (
  open: number,
  own: number,
  hours: (hours: number) => string,
): string | null =>
  own >= open
    ? null
    : `The stall is open ${hours(open)}, and your hours say ${hours(own)}: your pay is told too high unless somebody else sells. Add what is missing.`;

export const powerWords = {
  pressThere: (press: string): string => `${press} is used there`,
  hint: 'What it gives all day, from its own papers or the organiser. A licensed electrician says what may be plugged in.',
} as const;

export const costKindChoices = [
  { value: 'avoidable', label: 'Saved by staying home' },
  { value: 'sunk', label: 'Paid either way' },
] as const;

export const costAmountChoices = [
  { value: 'typed', label: 'An amount' },
  { value: 'drive', label: 'A drive' },
] as const;

/** @returns the answer line of the day: what it costs and takes, or what is missing for that */
export function dayAnswer(
  costs: ToldCosts | null,
  amount: (money: number) => string,
  hours: (hours: number) => string,
): { readonly key: string; readonly after: string } {
  if (costs === null) return { key: 'Not all costs are told', after: ' yet' };
  if (costs.money === null)
    return costs.hours === null
      ? { key: 'Costs and hours are not told', after: ' yet' }
      : { key: hours(costs.hours), after: ' of yours; no costs are told yet' };
  return costs.hours === null
    ? { key: amount(costs.money), after: ' in costs; your hours are not told yet' }
    : { key: amount(costs.money), after: ` in costs and ${hours(costs.hours)} of yours` };
}

/** What the hours of a day give pause for. Minutes since midnight. */
export function closingCaution(fromMinute: number, toMinute: number): string | undefined {
  if (toMinute < fromMinute) return 'After midnight, counted to this day.';
  return toMinute === fromMinute
    ? 'It ends as it begins, so the stall is open for no hour and nothing is planned by hours. Change one of them.'
    : undefined;
}

/** What a day costs whatever is sold, and own hours; null of what nobody told, which is not 0. */
interface ToldCosts {
  readonly money: number | null;
  readonly hours: number | null;
}

/** @param reckoned null where a cost or the rate it needs is missing */
export const toldCosts = (
  { costs, hours }: Pick<StallDay, 'costs' | 'hours'>,
  reckoned: { readonly sunk: number; readonly avoidable: number; readonly hours: number } | null,
): ToldCosts | null =>
  reckoned && {
    money: costs.length === 0 ? null : reckoned.sunk + reckoned.avoidable,
    hours: hours.length === 0 ? null : reckoned.hours,
  };
