import {
  array,
  boolean,
  config,
  discriminatedUnion,
  int,
  iso,
  literal,
  number,
  record,
  strictObject,
  string,
  tuple,
  union,
  unknown,
  type infer as ZodInfer,
  type ZodType,
  enum as zodEnum,
  instanceof as zodInstanceOf,
} from 'zod';

/*
 * Schemas are interpreted, never compiled: compiling needs eval, which the content policy forbids, and even
 * asking whether it is allowed is a refusal on the record.
 */
config({ jitless: true });

/** What the documents need of the schema library; taken whole, it brings its messages in every language along. */
export const z = {
  array,
  boolean,
  discriminatedUnion,
  enum: zodEnum,
  instanceof: zodInstanceOf,
  int,
  iso,
  literal,
  number,
  record,
  strictObject,
  string,
  tuple,
  union,
  unknown,
} as const;

export declare namespace z {
  type infer<Schema extends ZodType> = ZodInfer<Schema>;
}
