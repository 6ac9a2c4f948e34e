import { fieldWords } from '@/app/_words/fieldWords';
import { type Say, saying } from './sayings';
import { schemaWords } from './schemaWords';

const kinds: Readonly<Record<string, string>> = {
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
  'DOC-01': (told) => {
    const { finding, name } = told;
    if (finding.variant !== 'repeated') return schemaWords(told);
    return saying(
      `“${name('name')}” stands twice: at ${fieldWords(finding.where)}.`,
      'Nobody could say which of the two is meant. Rename one, or take it out.',
    );
  },
  'DOC-02': ({ finding, name }) => {
    const kind = kinds[name('kind')] ?? name('kind');
    return saying(
      `The job names a ${kind} “${name('id')}” that is not there, or that cannot be read.`,
      `Without it nothing can be checked or costed. Choose another ${kind} at ${fieldWords(finding.where)}, or bring this one back.`,
    );
  },
} satisfies Record<string, Say>;
