/** The facts of every kind, each with the schema that was apart. */
type WithSchemas<Facts, Schemas> = {
  readonly [Kind in keyof Facts]: Kind extends keyof Schemas
    ? Facts[Kind] & { readonly schema: Schemas[Kind] }
    : Facts[Kind];
};

/**
 * @param facts of every kind, with the schema where it is not among those given
 * @param schemas by the kind they read
 */
export function withSchemas<
  Facts extends Readonly<Record<string, object>>,
  Schemas extends Readonly<Record<string, unknown>>,
>(facts: Facts, schemas: Schemas): WithSchemas<Facts, Schemas> {
  const all = Object.entries(facts).map(([kind, known]) => [
    kind,
    Object.hasOwn(schemas, kind) ? { ...known, schema: schemas[kind] } : known,
  ]);
  // Kind by kind, which the type of entries cannot say.
  return Object.fromEntries(all) as WithSchemas<Facts, Schemas>;
}
