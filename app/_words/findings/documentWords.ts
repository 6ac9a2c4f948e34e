import { fieldWords } from '@/app/_words/fieldWords';
import { type Say, type Saying, saying, type Told } from './sayings';
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
  'DOC-01': (told) => (told.finding.variant === 'repeated' ? repeated(told) : schemaWords(told)),
  'DOC-02': ({ finding, name, nameOf }) => {
    const kind = kinds[name('kind')] ?? 'part';
    const one = `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`;
    const known = nameOf(name('kind'), name('id'));
    const of = (fact: string) => (Object.hasOwn(finding.facts, fact) ? name(fact) : '');
    const by = placeOf(of('line'), of('placement'));
    return saying(
      known === null
        ? `${by} names ${one} that was removed or cannot be read.`
        : `${by} names the ${kind} “${known}”, which was removed or cannot be read.`,
      `Without it nothing can be checked or costed. Choose another ${kind} there${finding.fix === null ? '' : ' by the button'}, or bring this one back.`,
    );
  },
} satisfies Record<string, Say>;

// Helpers

/** Ids are made by the app and seen by nobody, so two alike are told of by their places. */
function repeated({ finding: { where }, name, nameOf }: Told): Saying {
  if (where.path.at(-1) === 'id') {
    const place = fieldWords({ ...where, path: where.path.slice(0, -1) }, nameOf);
    return saying(
      `${place} cannot be told from another that stands before it: both have one id.`,
      'Nobody could say which of the two is meant. Take it out, and put it in anew.',
    );
  }
  return saying(
    `“${name('name')}” stands twice: at ${fieldWords(where, nameOf)}.`,
    'Nobody could say which of the two is meant. Rename one, or take it out.',
  );
}

function placeOf(line: string, placement: string): string {
  if (line === '') return 'The job';
  return placement === '' ? `The line “${line}”` : `“${placement}” of the line “${line}”`;
}
