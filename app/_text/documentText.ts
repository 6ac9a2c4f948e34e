import type { DocumentFacts, ReferenceKind } from '@/shared/facts/documentFacts';
import { fieldWords } from './fieldWords';
import { type SayingsOf, saying } from './sayings';
import { schemaText } from './schemaText';

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
export const documentText = {
  'DOC-01': schemaText,
  'DOC-02': ({ facts, where }) => {
    const kind = kinds[facts.kind];
    return saying(
      `The job names a ${kind} “${facts.id}” that is not there, or that cannot be read.`,
      `Without it nothing can be checked or costed. Choose another ${kind} at ${fieldWords(where)}, or bring this one back.`,
    );
  },
} satisfies SayingsOf<DocumentFacts>;
