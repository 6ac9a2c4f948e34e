/** The one way a finding is put, with the numbers and names its sentence needs. */
export interface Plain<Facts> {
  readonly variant?: undefined;
  readonly facts: Facts;
}

/**
 * One of several ways a finding is put; its facts are those that this sentence needs, and no others. Several names
 * make as many types, so that ruling out one by one leaves what remains.
 */
export type Variant<Name extends string, Facts> = Name extends string
  ? { readonly variant: Name; readonly facts: Facts }
  : never;

/** Of a finding or button that is always put in the same words. */
export type NoFacts = Readonly<Record<never, never>>;
