import { idSchema, nameSchema } from './basics';
import { attachmentSchema } from './keptFile';
import { daySchema } from './rate';
import { z } from './z';

/** A tag of BCP 47, such as en or he. */
export const languageSchema = z.string().regex(/^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$/);

export const personSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  /** What they do there. */
  part: z.string().max(120).default(''),
  email: z.string().max(200).default(''),
  phone: z.string().max(60).default(''),
});

export const addressSchema = z.strictObject({
  id: idSchema,
  /** Where bills go, or goods. */
  purpose: z.enum(['bills', 'goods', 'both']).default('both'),
  /** As it stands on an envelope, a line of text for each of its lines. */
  text: z.string().trim().min(1).max(500),
});

/** Whoever orders: a club, a shop, one person. */
export const customerSchema = z.strictObject({
  name: nameSchema,
  /** The first is written to unless an order says otherwise. */
  people: z.array(personSchema).max(20).default([]),
  addresses: z.array(addressSchema).max(10).default([]),
  /** Of their papers; null for the workshop's own. */
  language: languageSchema.nullable().default(null),
  /** Their number where papers name it; empty where they have none. */
  taxNumber: z.string().max(60).default(''),
  /** Why no tax is taken of them; null where it is. What counts as proof, the local authority says. */
  exemption: z
    .strictObject({
      /** Of the certificate. */
      number: z.string().trim().min(1).max(80),
      validUntil: daySchema.nullable().default(null),
      proof: attachmentSchema.nullable().default(null),
    })
    .nullable()
    .default(null),
  note: z.string().max(4000).default(''),
  /** The day everything personal was taken out on request; null while it is kept. */
  erasedOn: daySchema.nullable().default(null),
});

export type Customer = z.infer<typeof customerSchema>;
export type Person = z.infer<typeof personSchema>;
export type CustomerAddress = z.infer<typeof addressSchema>;
