import { cashReasons, stockReasons } from '@/shared/schemas/eveningReasons';
import { daySchema } from '@/shared/schemas/rate';
import { coinsSchema } from '@/shared/schemas/stallDay';
import { stallPayWays } from '@/shared/schemas/stallEvents';
import { z } from '@/shared/schemas/z';

const minorSchema = z.int().min(0).max(1e12);

/** What the maker says in the evening, as far as it is said. Whole minor units. */
export const eveningAnswersSchema = z.strictObject({
  cash: z.strictObject({
    /** All that is in the tin, the float too; null until it is counted. */
    counted: minorSchema.nullable(),
    /** Where it was counted by notes and coins; they are what counts then. */
    coins: coinsSchema.nullable(),
    reason: z.enum(cashReasons).nullable(),
    /** The difference it was said of, whole minor units: of another one it is asked again. Null where nobody counted. */
    reasonFor: z.int().nullable(),
  }),
  card: z.strictObject({
    /** What the reader says it took; null where its taps stand. */
    total: minorSchema.nullable(),
    /** Where nobody tapped *next customer*. */
    tickets: z.int().min(0).max(100_000).nullable(),
    payout: z.strictObject({ minor: minorSchema, day: daySchema }).nullable(),
    /** The total stands although it is more than all goods come to. */
    isRight: z.boolean().default(false),
  }),
  stock: z.strictObject({
    /** By `goodsKey`. */
    counted: z.record(
      z.string(),
      z.strictObject({
        pieces: z.int().min(0).max(100_000).nullable(),
        reason: z.enum(stockReasons).nullable(),
        /** The difference it was said of, pieces: of another one it is asked again. Null where none was said. */
        reasonFor: z.int().nullable(),
        /** How a sale that was not tapped was paid, or one tapped twice; left out it was cash. */
        pay: z.enum(stallPayWays).exactOptional(),
      }),
    ),
    /** Whoever looked found all others as they should be. */
    isRestAsReckoned: z.boolean(),
    /** Nobody will count the others. */
    isRestUnknown: z.boolean(),
  }),
  /** Of the day; null as planned. */
  hours: z.number().min(0).max(1000).nullable(),
  /** Of all days; null as tapped. */
  weatherId: z.string().nullable(),
  /** Of single days, by the day; it goes before that of all days. */
  weatherOfDays: z.record(daySchema, z.string()),
  /** Goods, by `goodsKey`, whose reckoned lost sales the next plans are not to learn from. */
  notLost: z.array(z.string()).max(1500),
  /** Goods of which they are to learn all that is reckoned, however few pieces or minutes it rests on. */
  lostAfterAll: z.array(z.string()).max(1500).default([]),
  decision: z.enum(['again', 'notAgain', 'later']).nullable(),
  note: z.string().max(2000),
});

export type EveningAnswers = Readonly<z.infer<typeof eveningAnswersSchema>>;
export type CashReason = (typeof cashReasons)[number];
export type StockReason = (typeof stockReasons)[number];

export const noAnswers: EveningAnswers = {
  cash: { counted: null, coins: null, reason: null, reasonFor: null },
  card: { total: null, tickets: null, payout: null, isRight: false },
  stock: { counted: {}, isRestAsReckoned: false, isRestUnknown: false },
  hours: null,
  weatherId: null,
  weatherOfDays: {},
  notLost: [],
  lostAfterAll: [],
  decision: null,
  note: '',
};
