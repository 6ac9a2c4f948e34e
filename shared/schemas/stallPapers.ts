import { currencyCodes } from '@/shared/tables/currencies';
import { idSchema, nameSchema } from './basics';
import { sizeNameSchema } from './blank';
import { closedWeatherSchema, weatherSaidSchema } from './closedWeather';
import { cashReasons, stockReasons } from './eveningReasons';
import { goneGoodsSchema } from './goneGoods';
import { paperNumberSchema } from './happened';
import { daySchema } from './rate';
import { coinsSchema, stallGoodsSchema } from './stallDay';
import { stallPayWays } from './stallEvents';
import { z } from './z';

/** Money of a paper: whole minor units, which nothing rounds again. */
const minorSchema = z.int().min(-1e12).max(1e12);
/** Money that lies somewhere, which is never less than none. */
const heldSchema = z.int().min(0).max(1e12);
/** Currency units, unrounded. */
const amountSchema = z.number().min(-1e9).max(1e9);
const piecesSchema = z.int().min(0).max(100_000);
const minuteSchema = z.int().min(0).max(1439);
const shareSchema = z.number().min(0).max(1);
const currencySchema = z.string().refine((code) => currencyCodes.includes(code), {
  error: 'is not a currency code of ISO 4217 with a minor unit',
});

/** What a piece sold of some goods brings and costs, as reckoned when the plan was fixed. */
const plannedGoodsSchema = stallGoodsSchema.extend({
  rangeId: idSchema,
  /** As told to a customer; the size of goods of one size is not shown. */
  design: nameSchema,
  bring: piecesSchema,
  /** Finished before and not made for the day: come along first, refills too, so it may be more than is brought. */
  fromHome: piecesSchema,
  /** Seconds kept from before that come along beside these; left out where there are none. */
  seconds: piecesSchema.exactOptional(),
  price: minorSchema,
  /** From the last hour on; null where it stays. */
  lastHourPrice: minorSchema.nullable(),
  /** One more piece made: material, minutes, wear, power; without packaging and overhead. Null where it is not known. */
  cost: amountSchema.nullable(),
  packaging: amountSchema,
  leftoverShare: shareSchema,
  /** Pieces asked for over all days if all are dry; null where nothing was forecast. */
  expected: z.number().min(0).max(1e12).nullable(),
});

const outcomeSchema = z.strictObject({
  weather: z.string().max(1000),
  /** Of each day of selling, as they follow one another. */
  weatherIds: z.array(idSchema).min(1).max(7),
  chance: shareSchema,
  sold: z.number(),
  netRevenue: amountSchema,
  profit: amountSchema,
  payPerHour: amountSchema.nullable(),
});

/** What goes along to a stall day: it is fixed here, and counted against. */
export const stallPlanSchema = z.strictObject({
  number: paperNumberSchema,
  issuedOn: daySchema,
  stallDayId: idSchema,
  title: nameSchema,
  place: z.string().max(200),
  days: z
    .array(
      z.strictObject({
        day: daySchema,
        fromMinute: minuteSchema,
        toMinute: minuteSchema,
        weight: z.number(),
      }),
    )
    .min(1)
    .max(7),
  currency: currencySchema,
  /** How prices stand to tax, and its share. */
  taxMode: z.enum(['added', 'inside', 'none']),
  tax: shareSchema,
  taxRounding: z.enum(['document', 'line']),
  cardFee: shareSchema,
  /** On each ticket that is paid by card, currency units. */
  cardFixedFee: amountSchema,
  cardShare: shareSchema,
  commission: shareSchema,
  commissionBase: z.enum(['withTax', 'withoutTax']),
  piecesPerTicket: z.number().min(1).max(1000),
  ranges: z.array(z.strictObject({ id: idSchema, name: nameSchema, hasSizes: z.boolean() })).max(20),
  goods: z.array(plannedGoodsSchema).min(1).max(1500),
  sets: z
    .array(
      z.strictObject({
        id: idSchema,
        name: nameSchema,
        pieces: z.int().min(2).max(20),
        price: minorSchema,
        rangeIds: z.array(idSchema).max(20),
        sizes: z.array(sizeNameSchema).max(30).nullable(),
      }),
    )
    .max(10),
  lastHourFrom: minuteSchema.nullable(),
  /** What seconds cost, share of the price of the hour; left out where they have no price of their own. */
  secondsShare: shareSchema.exactOptional(),
  float: coinsSchema,
  weathers: z
    .array(z.strictObject({ id: idSchema, name: nameSchema, chance: shareSchema, factor: z.number() }))
    .max(6),
  costs: z.strictObject({
    /** Spent for the day, and what of it staying at home would save; without own pay. Currency units. */
    cash: amountSchema,
    avoidable: amountSchema,
    stallFee: amountSchema,
    hours: z.number().min(0).max(10_000),
    wage: amountSchema,
    overheadPerHour: amountSchema,
    /** Of making everything once: sessions, files, heating up and the overhead of the bench. */
    batch: amountSchema,
    benchHours: z.number().min(0).max(1e6),
  }),
  /** Pieces at which each sum is earned; null where no piece earns anything. */
  breakEven: z
    .strictObject({
      cash: z.number(),
      withPay: z.number(),
      everything: z.number(),
      withWriteDown: z.number().nullable(),
    })
    .nullable(),
  outcomes: z.array(outcomeSchema).max(64),
  weightedProfit: amountSchema.nullable(),
});

/** A stall day as it ended. A later close of the same day takes the place of the one before. */
export const dayCloseSchema = z.strictObject({
  number: paperNumberSchema,
  issuedOn: daySchema,
  stallDayId: idSchema,
  title: nameSchema,
  /** The plan it was counted by; null where there was none. */
  planId: idSchema.nullable(),
  /** Whether each sale was tapped, or what was sold is what did not come home. */
  soldFrom: z.enum(['taps', 'count']),
  /** How many taps it rests on, so that those that come later are seen. */
  taps: z.int().min(0).max(1e6),
  /** Which they are, so that others in their place are seen; left out where some were not kept yet. */
  tapsDigest: z
    .string()
    .regex(/^[0-9a-f]{16}$/)
    .exactOptional(),
  days: z.array(daySchema).min(1).max(7),
  currency: currencySchema,
  goods: z
    .array(
      goneGoodsSchema.extend({
        design: nameSchema,
        /** Counted in the evening; null where nobody counted. */
        counted: piecesSchema.nullable(),
        reason: z.enum(stockReasons).nullable(),
        /** Counted less what was left by the taps, of which the reason was said; left out where there is none. */
        reasonFor: z.int().min(-200_000).max(200_000).exactOptional(),
        /** How sales were paid that the count told and no tap; left out where there are none. */
        untappedPay: z.enum(stallPayWays).exactOptional(),
        /** Wanted after the last was gone: as told, and what more as reckoned from how fast they went. */
        asked: piecesSchema,
        lost: z.number().min(0).max(1e10),
        /** The maker left out what was reckoned, as more than he believes; `lost` is 0 then. */
        isLostLeftOut: z.literal(true).exactOptional(),
        /** The maker took all of it, though it rests on few pieces or minutes and would have been left out. */
        isLostTaken: z.literal(true).exactOptional(),
        revenue: minorSchema,
        /** Currency units; null where the cost is not known. */
        cost: amountSchema.nullable(),
      }),
    )
    .max(1500),
  /** Tapped, but in no plan: without a price or a cost, yet they left the stock. Left out where there are none. */
  strays: z
    .array(goneGoodsSchema.extend({ counted: piecesSchema }))
    .max(1500)
    .exactOptional(),
  reductions: minorSchema,
  money: z.strictObject({
    gross: minorSchema,
    net: minorSchema,
    tax: minorSchema,
    cash: minorSchema,
    card: minorSchema,
    /** Whether that is as tapped, or as the reader says. */
    cardIs: z.enum(['tapped', 'typed']),
    /** Tickets paid by card, and whether they were counted or told in the evening. */
    cardTickets: piecesSchema,
    ticketsAre: z.enum(['counted', 'typed', 'estimated']),
    /** Of cards. */
    fees: minorSchema,
    payoutDue: minorSchema,
    /** What reached the bank, once it did. */
    payout: z.strictObject({ minor: heldSchema, day: daySchema }).nullable(),
    /** What the place keeps of the takings. */
    commission: minorSchema,
    /** What paying in coins added to the takings; below 0 it took. */
    cashRounding: minorSchema,
    float: minorSchema,
    /** Into the tin and out of it beside sales. */
    tinMoves: minorSchema,
    /** Of what went out, what was spent: a cost of the day. */
    spent: minorSchema,
    expectedCash: minorSchema,
    countedCash: heldSchema.nullable(),
    difference: minorSchema.nullable(),
    reason: z.enum(cashReasons).nullable(),
    coins: coinsSchema.nullable(),
  }),
  /** The weather that held longest on every day; null where nobody said, or days had different ones. */
  weatherId: idSchema.nullable(),
  /** Null where nobody said. */
  weather: closedWeatherSchema.nullable(),
  /** Of the other days it is as tapped. Left out of closes from before it was kept. */
  weatherSaid: weatherSaidSchema.exactOptional(),
  result: z.strictObject({
    /** Currency units, unrounded. */
    contribution: amountSchema.nullable(),
    fixed: amountSchema,
    leftoverCost: amountSchema.nullable(),
    profit: amountSchema.nullable(),
    /** Of the day as it was. */
    hours: z.number().min(0).max(10_000),
    /** At the bench, as planned. */
    benchHours: z.number().min(0).max(1e6),
    /** For all of these hours. */
    payPerHour: amountSchema.nullable(),
  }),
  sellingHours: z.number().min(0).max(200),
  /** Pieces sold by hour of the clock, each with the day it is of; a clock that jumps may name many. */
  hours: z
    .array(z.strictObject({ day: daySchema, hour: z.int().min(0).max(47), pieces: piecesSchema }))
    .max(10_000),
  askedFor: z.array(z.strictObject({ words: z.string().max(500), count: piecesSchema })).max(1000),
  putBack: piecesSchema,
  decision: z.enum(['again', 'notAgain', 'later']).nullable(),
  note: z.string().max(2000),
});

export type StallPlan = z.infer<typeof stallPlanSchema>;
export type PlannedGoods = z.infer<typeof plannedGoodsSchema>;
export type DayClose = z.infer<typeof dayCloseSchema>;
