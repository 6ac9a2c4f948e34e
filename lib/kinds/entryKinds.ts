import { entryFacts } from './entryFacts';
import { rareSchemas } from './rareSchemas';
import { withSchemas } from './withSchemas';

/** Every kind of entry, under the name its records bear. */
export const entryKinds = withSchemas(entryFacts, rareSchemas.entries);

export type EntryKind = keyof typeof entryKinds;

/** What an entry of each kind says. */
export type EntryBodies = {
  readonly [Kind in EntryKind]: ReturnType<(typeof entryKinds)[Kind]['schema']['parse']>;
};
