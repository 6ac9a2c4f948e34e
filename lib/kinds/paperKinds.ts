import { paperFacts } from './paperFacts';
import { rareSchemas } from './rareSchemas';
import { withSchemas } from './withSchemas';

/** Every kind of paper that goes out, under the name its records bear. */
export const paperKinds = withSchemas(paperFacts, rareSchemas.papers);

type PaperKind = keyof typeof paperKinds;

/** What a paper of each kind says. */
export type PaperBodies = {
  readonly [Kind in PaperKind]: ReturnType<(typeof paperKinds)[Kind]['schema']['parse']>;
};
