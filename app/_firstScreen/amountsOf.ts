import { z } from 'zod';
import type { BarAmounts } from '@/app/_docket/head/barAmounts';
import type { Region } from '@/lib/examples/regionOf';
import { amountsKey } from './amountsKey';
import worked from './exampleAmounts.json';

const amount = z.number();
const selling = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('withOrder') }),
  z.strictObject({ kind: z.literal('notSaid') }),
  z.strictObject({
    kind: z.literal('counted'),
    minutesEach: amount.nullable(),
    day: z.strictObject({ cost: amount, pieces: amount, each: amount, daysOfJob: amount }).nullable(),
    lacksDay: z.boolean(),
  }),
]);
const amounts: z.ZodType<BarAmounts> = z.strictObject({
  taxMode: z.enum(['added', 'inside', 'none']).nullable(),
  tax: amount,
  pieces: amount,
  margin: amount,
  payPerHour: amount,
  selling,
  currency: z.string(),
  each: amount,
  start: amount,
  startShare: amount,
  eachWithoutTax: amount,
  hasTaxInside: z.boolean(),
  isDecided: z.boolean(),
  flag: amount,
  total: z.strictObject({ without: amount, tax: amount, with: amount }).nullable(),
  targetMargin: amount,
  marks: z.array(
    z.strictObject({
      id: z.enum(['outOfPocketFloor', 'variableFloor', 'fullCost', 'target', 'ceiling']),
      value: amount,
    }),
  ),
  rates: amount,
  typical: amount,
});
const byKey = z.record(z.string(), amounts).parse(worked);

/** @returns the example's figures in the money and paper of a place; null where nobody has worked them. */
export const amountsOf = (region: Region): BarAmounts | null => byKey[amountsKey(region)] ?? null;
