import { type DocumentKind, draftFacts } from './draftFacts';
import { rareSchemas } from './rareSchemas';
import { withSchemas } from './withSchemas';

/** Every kind of document that is kept, under the name its records bear. */
export const kinds = withSchemas(draftFacts, rareSchemas.drafts);

/** The body of a kind. */
type Body<Kind extends DocumentKind> = ReturnType<(typeof kinds)[Kind]['schema']['parse']>;

export type DocumentBodies = { readonly [Kind in DocumentKind]: Body<Kind> };
