declare const brand: unique symbol;

/** A plain value that carries the name of its meaning, so that two meanings cannot be mixed up. */
export type Brand<Value, Name extends string> = Value & { readonly [brand]: Name };
