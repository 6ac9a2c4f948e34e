import { fieldWords } from '@/app/_words/fieldWords';
import type { NameOf } from '@/app/_words/formatter';
import type { DocumentFacts, ReferenceKind } from '@/shared/facts/documentFacts';
import type { Where } from '@/shared/finding';
import { schemaWords } from './schemaWords';
import { type Wording, type WordingsOf, wording } from './wording';

const kinds: Readonly<Record<ReferenceKind, string>> = {
  printer: 'printer',
  sheet: 'sheet',
  channel: 'sales channel',
  blank: 'blank',
  packaging: 'packaging',
  artwork: 'artwork',
  press: 'press',
};

/** Words of the findings about documents and what they name. */
export const documentWords = {
  'DOC-01': (finding, formatter, nameOf) =>
    finding.variant === 'repeated'
      ? repeated(finding.where, finding.facts.name, nameOf)
      : schemaWords(finding, formatter, nameOf),
  'DOC-02': ({ facts, fix }, _, nameOf) => {
    const kind = kinds[facts.kind];
    const one = `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`;
    const known = nameOf(facts.kind, facts.id);
    const by = placeOf(facts.line, facts.placement);
    return wording(
      known === null
        ? `${by} names ${one} that was removed or cannot be read.`
        : `${by} names the ${kind} “${known}”, which was removed or cannot be read.`,
      `Without it nothing can be checked or costed. Choose another ${kind} there${fix === null ? '' : ' by the button'}, or bring this one back.`,
    );
  },
} satisfies WordingsOf<DocumentFacts>;

// Helpers

/** Ids are made by the app and seen by nobody, so two alike are told of by their places. */
function repeated(where: Where, name: string, nameOf: NameOf): Wording {
  if (where.path.at(-1) === 'id') {
    const place = fieldWords({ ...where, path: where.path.slice(0, -1) }, nameOf);
    return wording(
      `${place} cannot be told from another that stands before it: both have one id.`,
      'Nobody could say which of the two is meant. Take it out, and put it in anew.',
    );
  }
  return wording(
    `“${name}” stands twice: at ${fieldWords(where, nameOf)}.`,
    'Nobody could say which of the two is meant. Rename one, or take it out.',
  );
}

function placeOf(line: string | null, placement: string | null): string {
  if (line === null) return 'The job';
  return placement === null ? `The line “${line}”` : `“${placement}” of the line “${line}”`;
}
