import { idSchema, nameSchema } from './basics';
import { sizeNameSchema } from './blank';
import { attachmentSchema } from './keptFile';
import { daySchema, shareSchema } from './rate';
import { sizeMixSchema } from './sizeMix';
import { z } from './z';

/** A line of a job: what a stall calls a design. */
const designOf = { jobId: idSchema, lineId: idSchema } as const;

/** One size of a design; goods of one size bear the name their blank gives it. */
export const stallGoodsSchema = z.strictObject({ ...designOf, size: sizeNameSchema });

/** Currency units, as the way of selling writes prices. */
const moneySchema = z.number().min(0).max(1e6);
const minuteSchema = z.int().min(0).max(1439);

/** How far the place at the event has come. */
const stallStages = ['idea', 'applied', 'accepted', 'refused', 'calledOff'] as const;

/** Papers that an organiser or an authority may ask for; `unset` where nobody asked yet. */
const proofStates = ['unset', 'asked', 'have', 'notNeeded'] as const;
const proofSchema = z.strictObject({
  state: z.enum(proofStates).default('unset'),
  until: daySchema.nullable().default(null),
});

/** One day of selling. Several days share what was brought; before each but the first more may be put out. */
const openDaySchema = z.strictObject({
  id: idSchema,
  day: daySchema,
  fromMinute: minuteSchema,
  /** Before `fromMinute` where it ends after midnight. */
  toMinute: minuteSchema,
  /** Its part of the visitors beside the other days; 1 each where nobody says otherwise. */
  weight: z.number().positive().max(100).default(1),
});

/** Money the day costs. A drive is its length at the workshop's rate. */
const dayCostSchema = z.strictObject({
  id: idSchema,
  what: nameSchema,
  amount: z.discriminatedUnion('of', [
    z.strictObject({ of: z.literal('typed'), money: moneySchema.nullable() }),
    z.strictObject({ of: z.literal('drive'), km: z.number().min(0).max(20_000).nullable() }),
  ]),
  /** Sunk is spent whether or not one goes; avoidable is saved by staying at home. */
  kind: z.enum(['sunk', 'avoidable']),
  /** What is paid to have the stall, by which a fair is measured. */
  isStallFee: z.boolean().default(false),
  paidOn: daySchema.nullable().default(null),
});

/** Own hours that the day takes; all are avoidable. */
const dayHoursSchema = z.strictObject({
  id: idSchema,
  what: nameSchema,
  hours: z.number().min(0).max(200),
});

/** A weather with its chance; chances of a day add to 1. Of a stall under a roof there is one. */
const weatherSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  chance: shareSchema(1),
  /** What it leaves of the sales of a dry day. */
  factor: shareSchema(2),
});

const rangeDesignSchema = z.strictObject({
  ...designOf,
  /** What it is called on the table, such as Fern; empty where the line's own name says it. */
  name: z.string().trim().max(120).default(''),
  /** Its part of what the range sells; parts of a range add to 1, or are taken as proportions. */
  share: z.number().min(0).max(1e6),
  /** What an unsold piece is still worth, share of its cost; null follows the day. */
  leftoverShare: z.number().min(0).max(1).nullable().default(null),
  /** Left at home: it is neither advised nor brought. */
  isLeftOut: z.boolean().default(false),
});

/** Goods that are forecast together, such as shirts or mugs. */
const rangeSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  /**
   * Pieces asked for over all days if all are dry; null where nobody said. Where the forecast comes from visitors or
   * other days these are proportions between the ranges.
   */
  pieces: z.number().min(0).max(100_000).nullable(),
  /** Null for goods of one size. */
  sizes: sizeMixSchema.nullable().default(null),
  designs: z.array(rangeDesignSchema).max(48),
});

/** Where the pieces asked for come from. */
const forecastSchema = z.discriminatedUnion('from', [
  z.strictObject({ from: z.literal('typed') }),
  z.strictObject({
    from: z.literal('visitors'),
    /** On a day of selling, the mean of all of them. */
    visitors: z.number().min(0).max(1e6).nullable(),
    /** Who stops at the stall, of those who come; and who buys, of those who stop. */
    stopShare: shareSchema(1),
    buyShare: shareSchema(1),
  }),
  z.strictObject({
    from: z.literal('pastDays'),
    stallDayIds: z.array(idSchema).max(60),
    /** Visitors expected against those of the days it rests on. */
    footfallRatio: z.number().positive().max(100).default(1),
  }),
]);

/** Two or more pieces for one price. */
const setOfferSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  pieces: z.int().min(2).max(20),
  price: moneySchema.nullable(),
  /** Of which ranges and sizes; sizes null takes all. */
  rangeIds: z.array(idSchema).max(20),
  sizes: z.array(sizeNameSchema).max(30).nullable().default(null),
});

/** Prices that differ from those of the jobs. `size` null holds for every size that has none of its own. */
const dayPriceSchema = z.strictObject({
  ...designOf,
  size: sizeNameSchema.nullable(),
  price: moneySchema,
});

const pricesSchema = z.strictObject({
  own: z.array(dayPriceSchema).max(500).default([]),
  sets: z.array(setOfferSchema).max(10).default([]),
  /** What seconds cost, share of the price of the hour; null or left out where nobody said. */
  secondsShare: z.number().min(0).max(1).nullable().exactOptional(),
  /** Lower prices from a time of the last day on. */
  lastHour: z
    .strictObject({ fromMinute: minuteSchema, prices: z.array(dayPriceSchema).max(500) })
    .nullable()
    .default(null),
});

const limitsSchema = z.strictObject({
  /** Pieces there is room for on table and rail. */
  tablePieces: z.int().min(0).max(100_000).nullable().default(null),
  /** Currency units that may be laid out before the first sale, costs of the day included. */
  cash: moneySchema.nullable().default(null),
  /** Hours at the bench until the day. */
  benchHours: z.number().min(0).max(10_000).nullable().default(null),
});

/** Power on the spot, for pressing there. */
const powerSchema = z.strictObject({
  source: z.enum(['unset', 'none', 'mains', 'battery', 'generator']).default('unset'),
  /** Presses that are used there. */
  pressIds: z.array(idSchema).max(20).default([]),
  /** Watts that the source gives without a break; null where nobody said. */
  guaranteedWatts: z.number().min(0).max(100_000).nullable().default(null),
});

const takeAlongSchema = z.strictObject({ id: idSchema, what: nameSchema, isPacked: z.boolean() });

/** How many of a note or coin, its value in currency units. */
export const coinsSchema = z
  .array(z.strictObject({ value: z.number().positive().max(1e6), count: z.int().min(0).max(100_000) }))
  .max(30);

const floatSchema = z.strictObject({
  /** What is put into the tin; null follows the advice. */
  coins: coinsSchema.nullable().default(null),
  /** Tickets expected in the first 90 minutes; null is worked out. */
  firstTickets: z.number().min(0).max(10_000).nullable().default(null),
});

/** A day, or a few days together, of selling at a stall. */
export const stallDaySchema = z.strictObject({
  name: nameSchema,
  place: z.string().max(200).default(''),
  organiser: z.string().max(200).default(''),
  stage: z.enum(stallStages).default('idea'),
  /** Until when to apply, and when the answer is due. */
  applyBy: daySchema.nullable().default(null),
  answerBy: daySchema.nullable().default(null),
  permit: proofSchema.default({ state: 'unset', until: null }),
  insurance: proofSchema.default({ state: 'unset', until: null }),
  attachments: z.array(attachmentSchema).max(50).default([]),
  isOutdoor: z.boolean().nullable().default(null),
  days: z.array(openDaySchema).max(7).default([]),
  /** The way of selling, which says tax and fees; null where none is chosen. */
  channelId: idSchema.nullable().default(null),
  costs: z.array(dayCostSchema).max(40).default([]),
  hours: z.array(dayHoursSchema).max(20).default([]),
  weathers: z.array(weatherSchema).max(6).default([]),
  /** What this event does to the forecast beside the days it rests on; 1 where nothing. */
  eventFactor: z.number().positive().max(20).default(1),
  forecast: forecastSchema.default({ from: 'typed' }),
  ranges: z.array(rangeSchema).max(20).default([]),
  /** Sizes go by their mix alone; left out or false, what own stall days and orders asked for is blended in. */
  areOwnSizesLeftOut: z.boolean().exactOptional(),
  /** What an unsold piece is still worth, share of its cost. */
  leftoverShare: shareSchema(1),
  /** The maker's own numbers; goods that are left out follow the advice. */
  held: z
    .array(stallGoodsSchema.extend({ bring: z.int().min(0).max(10_000) }))
    .max(1500)
    .default([]),
  limits: limitsSchema.default({ tablePieces: null, cash: null, benchHours: null }),
  prices: pricesSchema.default({ own: [], sets: [], lastHour: null }),
  float: floatSchema.default({ coins: null, firstTickets: null }),
  power: powerSchema.default({ source: 'unset', pressIds: [], guaranteedWatts: null }),
  takeAlong: z.array(takeAlongSchema).max(100).default([]),
  /** Jobs made for this day alone, because the job `of` whose designs they press is not to be changed. */
  made: z
    .array(z.strictObject({ jobId: idSchema, of: idSchema }))
    .max(100)
    .default([]),
  note: z.string().max(4000).default(''),
  /** The stall day it was begun like, whose end says what was noted for this one; left out where there is none. */
  likeId: idSchema.exactOptional(),
  archivedOn: daySchema.nullable().default(null),
});

export type StallDay = z.infer<typeof stallDaySchema>;
export type StallGoods = z.infer<typeof stallGoodsSchema>;
export type StallRange = z.infer<typeof rangeSchema>;
export type RangeDesign = z.infer<typeof rangeDesignSchema>;
export type StallWeather = z.infer<typeof weatherSchema>;
export type StallCost = z.infer<typeof dayCostSchema>;
export type StallForecast = z.infer<typeof forecastSchema>;
export type SetOffer = z.infer<typeof setOfferSchema>;
export type DayPrice = z.infer<typeof dayPriceSchema>;
export type Coins = z.infer<typeof coinsSchema>;
