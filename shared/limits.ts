import {
  type core,
  type output,
  ZodArray,
  ZodDefault,
  ZodExactOptional,
  ZodNullable,
  ZodNumber,
  ZodObject,
  ZodOptional,
  ZodString,
  ZodTuple,
  type ZodType,
  ZodUnion,
} from 'zod';
import {
  $ZodCheckGreaterThan,
  $ZodCheckLessThan,
  $ZodCheckMaxLength,
  $ZodCheckNumberFormat,
  $ZodCheckOverwrite,
} from 'zod/v4/core';

/** What a number may be, as its schema says; a field that is given these takes what the document takes. */
export interface NumberLimits {
  /** Least and greatest value. */
  readonly min?: number;
  readonly max?: number;
  /** The value must be more than this. */
  readonly above?: number;
  /** 0 for whole numbers. */
  readonly decimals?: 0;
}

/** How long a text may be, in letters as JavaScript counts them. */
export interface TextLimits {
  readonly shortest: number;
  readonly longest: number;
  /** True where the document drops spaces at both ends before it counts. */
  readonly isTrimmed: boolean;
}

type Path = readonly (string | number)[];

/**
 * @param path from the schema to a number in it, through lists by any index; what may be missing is passed through
 * @returns the limits of that number in the unit the document keeps
 * @throws {UnreadLimit} where the schema asks for more than a field can tell
 * @example numberLimits(recipeSchema, ['dwellSeconds']) // => { above: 0, max: 7200 }
 */
export function numberLimits<Schema extends ZodType, const To extends Path>(
  schema: Schema,
  path: To & PathTo<output<Schema>, To, number>,
): NumberLimits {
  const found = schemaAt(schema, path);
  if (!(found instanceof ZodNumber)) throw new UnreadLimit(path, 'no number');
  let limits: NumberLimits = found.isInt ? { decimals: 0 } : {};
  for (const check of checksOf(found)) {
    if (check instanceof $ZodCheckGreaterThan && check._zod.def.inclusive)
      limits = { ...limits, min: Math.max(limits.min ?? -Infinity, Number(check._zod.def.value)) };
    else if (check instanceof $ZodCheckGreaterThan)
      limits = { ...limits, above: Math.max(limits.above ?? -Infinity, Number(check._zod.def.value)) };
    else if (check instanceof $ZodCheckLessThan && check._zod.def.inclusive)
      limits = { ...limits, max: Math.min(limits.max ?? Infinity, Number(check._zod.def.value)) };
    else if (!(check instanceof $ZodCheckNumberFormat)) throw new UnreadLimit(path, 'an open end or a step');
  }
  return limits;
}

/**
 * @param path from the schema to a text in it
 * @throws {UnreadLimit} where nothing ends the text
 * @example textLimits(jobSchema, ['customer']) // => { shortest: 0, longest: 200, isTrimmed: false }
 */
export function textLimits<Schema extends ZodType, const To extends Path>(
  schema: Schema,
  path: To & PathTo<output<Schema>, To, string>,
): TextLimits {
  const found = schemaAt(schema, path);
  if (!(found instanceof ZodString) || found.maxLength === null)
    throw new UnreadLimit(path, 'no text that ends');
  const isTrimmed = checksOf(found).some((check) => check instanceof $ZodCheckOverwrite);
  return { shortest: found.minLength ?? 0, longest: found.maxLength, isTrimmed };
}

/**
 * @param path from the schema to a list in it
 * @returns how many entries it may have
 * @throws {UnreadLimit} where nothing ends the list
 * @example mostEntries(jobSchema, ['lines']) // => 12
 */
export function mostEntries<Schema extends ZodType, const To extends Path>(
  schema: Schema,
  path: To & PathTo<output<Schema>, To, readonly unknown[]>,
): number {
  const ends = checksOf(schemaAt(schema, path)).flatMap((check) =>
    check instanceof $ZodCheckMaxLength ? [check._zod.def.maximum] : [],
  );
  if (ends.length === 0) throw new UnreadLimit(path, 'no list that ends');
  return Math.min(...ends);
}

/** A limit was asked for that the schema does not have, or has in a way that no field can tell. */
export class UnreadLimit extends Error {
  override readonly name = 'UnreadLimit';
  constructor(path: Path, found: string) {
    super(`limits were asked for at “${path.join('.')}”, where there is ${found}`);
  }
}

// Helpers

/** The path itself where it leads to such a value, else nothing: then the call does not compile. */
type PathTo<Value, To extends Path, Leaf> = [ValueAt<Value, To>] extends [never]
  ? never
  : [ValueAt<Value, To>] extends [Leaf]
    ? To
    : never;

type ValueAt<Value, To extends Path> = To extends readonly [infer Key, ...infer Rest extends Path]
  ? ValueAt<PartOf<NonNullable<Value>, Key>, Rest>
  : NonNullable<Value>;

type PartOf<Value, Key> = Value extends unknown ? (Key extends keyof Value ? Value[Key] : never) : never;

const checksOf = (schema: core.$ZodType): readonly core.$ZodCheck<never>[] => schema._zod.def.checks ?? [];

function schemaAt(schema: core.$ZodType, path: Path): core.$ZodType {
  const [key, ...rest] = path;
  const bare = unwrapped(schema);
  if (key === undefined) return bare;
  const part = partOf(bare, key);
  if (part === undefined) throw new UnreadLimit(path, 'nothing');
  return schemaAt(part, rest);
}

const unwrapped = (schema: core.$ZodType): core.$ZodType =>
  schema instanceof ZodNullable ||
  schema instanceof ZodOptional ||
  schema instanceof ZodExactOptional ||
  schema instanceof ZodDefault
    ? unwrapped(schema.unwrap())
    : schema;

function partOf(schema: core.$ZodType, key: string | number): core.$ZodType | undefined {
  if (schema instanceof ZodObject) return schema.shape[key];
  if (schema instanceof ZodArray) return schema.element;
  if (schema instanceof ZodTuple) return schema.def.items[Number(key)];
  if (!(schema instanceof ZodUnion)) return undefined;
  return schema.options.map((option) => partOf(unwrapped(option), key)).find((part) => part !== undefined);
}
