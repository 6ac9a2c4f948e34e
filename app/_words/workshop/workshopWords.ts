import type { Channel, Press } from '@/shared/schemas/workshop';

/** Kinds of press as the trade calls them. */
export const pressKindWords: Readonly<Record<Press['kind'], string>> = {
  flat: 'Flat press',
  mug: 'Mug press',
  tumbler: 'Tumbler press',
  oven: 'Oven',
};

/** Ways of selling. */
export const channelKindWords: Readonly<Record<Channel['kind'], string>> = {
  order: 'Own orders',
  stall: 'Market stall',
  wholesale: 'Wholesale',
  consignment: 'Consignment in a shop',
};

/** What the prices that are typed and shown hold of the tax. */
export const taxModeWords: Readonly<Record<NonNullable<Channel['taxMode']>, string>> = {
  added: 'No: it is added on top',
  inside: 'Yes: it is already inside',
  none: 'I charge no tax',
};

/** What a commission is a share of. */
export const commissionBaseWords: Readonly<Record<Channel['commissionBase'], string>> = {
  withoutTax: 'Price without tax',
  withTax: 'Price with tax',
};

/** Days of the week as documents count them. */
export const weekdayWords = [
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
  'Sunday',
] as const;
