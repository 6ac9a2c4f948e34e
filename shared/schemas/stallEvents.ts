import { currencyCodes } from '@/shared/tables/currencies';
import { idSchema } from './basics';
import { daySchema } from './rate';
import { stallGoodsSchema } from './stallDay';
import { stockGrades } from './stock';
import { z } from './z';

/** Of one tap or one price of a shop; a hundred millions of a currency with cents. */
const MOST_MINOR = 1e10;
const minorSchema = z.int().min(0).max(MOST_MINOR);
const signedMinorSchema = z.int().min(-MOST_MINOR).max(MOST_MINOR);
const currencySchema = z.string().refine((code) => currencyCodes.includes(code), {
  error: 'is not a currency code of ISO 4217 with a minor unit',
});
const wordsSchema = z.string().trim().max(500);

export const stallPayWays = ['cash', 'card'] as const;

/** Why money goes into the tin or out of it beside sales. */
const tinCauses = ['skimmed', 'added', 'spent'] as const;

/** One tap of the sales count. A tap is taken back by the entry that takes entries back, never changed. */
const tapSchema = z.discriminatedUnion('what', [
  z.strictObject({
    what: z.literal('sale'),
    goods: stallGoodsSchema,
    /** As prices write it: with tax where that is inside, without it where it is added to the ticket. */
    minor: minorSchema,
    /** Where it is not the price of the hour. */
    isOwnPrice: z.literal(true).exactOptional(),
    /** Part of a set although it has a price of its own. */
    joinsSet: z.literal(true).exactOptional(),
    /** A spoiled piece, sold as what it is: one kept as a second goes first, else one of the others was spoiled. */
    isSecond: z.literal(true).exactOptional(),
    pay: z.enum(stallPayWays),
  }),
  /** Taken off what the open ticket comes to, for a set of the plan. */
  z.strictObject({ what: z.literal('set'), setId: idSchema, minor: minorSchema, pay: z.enum(stallPayWays) }),
  /** How the open ticket is paid, what is on it already too, and what this device sells until it is told otherwise. */
  z.strictObject({ what: z.literal('pay'), pay: z.enum(stallPayWays) }),
  /** The customer goes: what this device sells next is on another ticket. */
  z.strictObject({ what: z.literal('next') }),
  /** A piece came back and another went; money the customer pays on top, or less than 0 gets back. */
  z.strictObject({
    what: z.literal('exchange'),
    back: stallGoodsSchema,
    out: stallGoodsSchema,
    minor: signedMinorSchema,
    pay: z.enum(stallPayWays),
  }),
  /** A piece that came back for its money. */
  z.strictObject({
    what: z.literal('refund'),
    goods: stallGoodsSchema,
    minor: minorSchema,
    pay: z.enum(stallPayWays),
  }),
  z.strictObject({ what: z.literal('given'), goods: stallGoodsSchema }),
  z.strictObject({ what: z.literal('damaged'), goods: stallGoodsSchema, isSecond: z.boolean() }),
  /** More pieces were put out, such as those pressed overnight; they stand beside those of the plan. */
  z.strictObject({ what: z.literal('refill'), goods: stallGoodsSchema, pieces: z.int().min(1).max(10_000) }),
  /** Asked for, not here: goods of the plan that are gone, or in words what there is none of. */
  z.strictObject({ what: z.literal('asked'), goods: stallGoodsSchema.nullable(), words: wordsSchema }),
  /** Picked up and put back because of the price. */
  z.strictObject({ what: z.literal('putBack'), goods: stallGoodsSchema.nullable() }),
  z.strictObject({ what: z.literal('visitors'), count: z.int().min(1).max(100_000) }),
  z.strictObject({ what: z.literal('weather'), weatherId: idSchema }),
  z.strictObject({ what: z.literal('note'), words: wordsSchema }),
  /** Somebody wants something made. */
  z.strictObject({ what: z.literal('lead'), words: wordsSchema }),
  z.strictObject({
    what: z.literal('tin'),
    cause: z.enum(tinCauses),
    minor: minorSchema,
    words: wordsSchema,
  }),
]);

/** What was tapped at a stall, stamped by the clock of the device; its order within a device is that of its count. */
export const stallTapSchema = z.strictObject({
  stallDayId: idSchema,
  /** The plan it was counted by. */
  planId: idSchema,
  currency: currencySchema,
  tap: tapSchema,
});

/** What was agreed with a shop that it asks for one, as the goods were brought there. */
export const shopPriceSchema = z.strictObject({
  shopId: idSchema,
  day: daySchema,
  goods: stallGoodsSchema,
  grade: z.enum(stockGrades),
  currency: currencySchema,
  /** As its way of selling writes prices; nothing is noted where none was agreed. */
  eachMinor: z.int().min(1).max(1e12),
});

/** What a shop says it sold. */
export const shopStatementSchema = z.strictObject({
  shopId: idSchema,
  day: daySchema,
  currency: currencySchema,
  rows: z
    .array(
      z.strictObject({
        goods: stallGoodsSchema,
        grade: z.enum(stockGrades).default('first'),
        sold: z.int().min(0).max(100_000),
        /** Gone without having been sold. */
        missing: z.int().min(0).max(100_000).default(0),
        /** The shop's price of a piece, as written. */
        eachMinor: minorSchema,
      }),
    )
    .min(1)
    .max(500),
  /** What it keeps, share of its price, on that day. */
  commissionShare: z.number().min(0).max(0.95),
  commissionBase: z.enum(['withTax', 'withoutTax']),
  /** What it owes for this, tax inside where the prices have it. */
  dueMinor: z.int().min(0).max(1e12),
});

/** A shop paid. */
export const shopPaymentSchema = z.strictObject({
  shopId: idSchema,
  statementId: idSchema,
  day: daySchema,
  amountMinor: z.int().min(1).max(1e12),
  currency: currencySchema,
});

export type StallTap = z.infer<typeof stallTapSchema>;
export type Tap = z.infer<typeof tapSchema>;
export type StallPay = (typeof stallPayWays)[number];
export type ShopPrice = z.infer<typeof shopPriceSchema>;
export type ShopStatement = z.infer<typeof shopStatementSchema>;
export type ShopPayment = z.infer<typeof shopPaymentSchema>;
