import type { WordingOf, WordingsOf } from '@/app/_words/findings/wording';
import { wording } from '@/app/_words/findings/wording';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { ArtworkFacts } from '@/shared/facts/artworkFacts';
import type { CaseOf } from '@/shared/facts/findingCases';
import type { Finding, FindingDraft, Fix } from '@/shared/finding';

declare const at: Pick<FindingDraft, 'severity' | 'where'>;
declare const finding: Finding;

makeFinding({ ...at, id: 'ART-03', facts: { artwork: 'Crest', edgePx: 4 } });

// @ts-expect-error a fact of a mistyped name
makeFinding({ ...at, id: 'ART-03', facts: { artwork: 'Crest', edgePixels: 4 } });

// @ts-expect-error a fact that is missing
makeFinding({ ...at, id: 'ART-03', facts: { artwork: 'Crest' } });

// @ts-expect-error a figure is no name
makeFinding({ ...at, id: 'ART-03', facts: { artwork: 3, edgePx: 4 } });

// @ts-expect-error no facts at all
makeFinding({ ...at, id: 'ART-03' });

// @ts-expect-error a fact that no sentence of this id needs
makeFinding({ ...at, id: 'ART-09', facts: { artwork: 'Crest', edgePx: 4 } });

// @ts-expect-error a way of putting it that this id has not
makeFinding({ ...at, id: 'ART-11', variant: 'thrice', facts: { placement: 'Chest' } });

// @ts-expect-error the facts of another way of putting it
makeFinding({ ...at, id: 'ART-15', variant: 'short', facts: { placement: 'Chest', wantedMm: 3 } });

// @ts-expect-error an id that is not in the table
makeFinding({ ...at, id: 'ART-99', facts: {} });

// @ts-expect-error a table without a row of this id
type Stray = CaseOf<'ART-99'>;

const reading: WordingOf<'ART-08'> = ({ facts }) => wording(facts.artwork, '');

// @ts-expect-error a sentence may read no fact that its id has not
const misreading: WordingOf<'ART-08'> = ({ facts }) => wording(`${facts.artwork} ${facts.edgePx}`, '');

// @ts-expect-error nor one of another way of putting it
const hasty: WordingOf<'ART-15'> = ({ facts }) => wording(`${facts.placement} ${facts.mm}`, '');

const careful: WordingOf<'ART-15'> = ({ variant, facts }) =>
  wording(variant === 'unmeasured' ? facts.placement : `${facts.placement} ${facts.mm}`, '');

const wordless = {
  'ART-08': reading,
  // @ts-expect-error every id of a table needs words
} satisfies WordingsOf<Pick<ArtworkFacts, 'ART-08' | 'ART-09'>>;

// @ts-expect-error before one looks which finding it is, nothing is known of its facts
finding.facts.artwork;

if (finding.id === 'ART-03') finding.facts.edgePx satisfies number;

const button: Fix = { label: 'setDwell', facts: { seconds: 50 }, changes: [] };

// @ts-expect-error a button needs the facts of its label
const bare: Fix = { label: 'setDwell', facts: {}, changes: [] };

// @ts-expect-error a button without words
const nameless: Fix = { label: 'setFire', facts: {}, changes: [] };

export type { Stray };
export { bare, button, careful, hasty, misreading, nameless, wordless };
