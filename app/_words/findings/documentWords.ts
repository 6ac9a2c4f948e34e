import { fieldWords } from '@/app/_words/fieldWords';
import type { DocumentFacts, ReferenceKind } from '@/shared/facts/documentFacts';
import { type SayingsOf, saying } from './sayings';
import { schemaWords } from './schemaWords';

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
  'DOC-01': schemaWords,
  'DOC-02': ({ facts, where }) => {
    const kind = kinds[facts.kind];
    return saying(
      `The job names a ${kind} “${facts.id}” that is not there, or that cannot be read.`,
      `Without it nothing can be checked or costed. Choose another ${kind} at ${fieldWords(where)}, or bring this one back.`,
    );
  },
} satisfies SayingsOf<DocumentFacts>;
