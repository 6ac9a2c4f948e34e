import { fieldWords } from '@/app/_words/fieldWords';
import type { Formatter } from '@/app/_words/formatter';
import type { FindingsById } from '@/shared/finding';
import { type Saying, saying } from './sayings';

const kinds: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  object: 'a group of fields in { }',
  array: 'a list in [ ]',
  record: 'a group of named entries in { }',
  null: 'null',
  undefined: 'nothing',
  NaN: 'no number',
  tuple: 'a list in [ ]',
};

const forms: Readonly<Record<string, string>> = {
  date: 'a day of the calendar as YYYY-MM-DD, such as 2026-03-14',
  regex: 'letters, digits and hyphens in the form this field has',
};

/** @returns the sentence for one thing that is wrong with a document: what, in which field, and how to mend it. */
export function schemaWords(finding: FindingsById['DOC-01'], formatter: Formatter): Saying {
  const field = fieldWords(finding.where);
  const Field = field.slice(0, 1).toUpperCase() + field.slice(1);
  const limited = (limit: number) => formatter.number(limit, 6);
  const { variant, facts } = finding;
  switch (variant) {
    case 'missing':
      return saying(
        `${Field} is missing.`,
        `The document cannot be read without it. Add ${kindWords(facts.expected)}.`,
      );
    case 'wrongType':
      return saying(
        `${Field} must be ${kindWords(facts.expected)}, and is ${kindWords(facts.received)}.`,
        facts.expected === 'number'
          ? `Write numbers bare, without quotation marks, with a point before the decimals.${tabState(facts)}`
          : `Replace it by ${kindWords(facts.expected)}.${tabState(facts)}`,
      );
    case 'notWhole':
      return saying(
        `${Field} must be a whole number.`,
        `Leave out what stands after the point.${tabState(facts)}`,
      );
    case 'tooSmall':
      return saying(
        `${Field} must be ${facts.open === 1 ? 'more than' : 'at least'} ${limited(facts.limit)}.`,
        `Less has no meaning there. Check the sign and the figure.${tabState(facts)}`,
      );
    case 'tooLarge':
      return saying(
        `${Field} must be at most ${limited(facts.limit)}.`,
        `More than that can only be a slip. Check the figure and its unit.${tabState(facts)}`,
      );
    case 'tooShort':
      return saying(
        `${Field} needs at least ${formatter.count(facts.limit, 'character')}.`,
        'Left empty, it could not be told from others. Write something in.',
      );
    case 'tooLong':
      return saying(
        `${Field} may have ${limited(facts.limit)} characters at most.`,
        'Longer text would not fit on screens and papers. Shorten it.',
      );
    case 'tooFew':
      return saying(
        `${Field} must hold at least ${limited(facts.limit)}.`,
        'With fewer there is nothing to work on. Add one.',
      );
    case 'tooMany':
      return saying(
        `${Field} may hold ${limited(facts.limit)} at most.`,
        'More are not counted. Take some out.',
      );
    case 'badChoice':
      return saying(
        `${Field} is none of the values it may have.`,
        `Nothing can be read from it. Choose one of: ${facts.allowed}.${tabState(facts)}`,
      );
    case 'badForm':
      return saying(
        `${Field} is not in the form it needs.`,
        `Write ${forms[facts.form] ?? `it as ${facts.form}`}.${tabState(facts)}`,
      );
    case 'unknownKey':
      return saying(
        `“${facts.key}” is no field known there: ${field}.`,
        'Read past, a misspelt field would count as missing, so nothing is read past. Correct the name, or take it out.',
      );
    case 'badKey':
      return saying(
        `“${facts.key}” cannot be the name of an entry.`,
        `Names have letters, digits and hyphens, start with a letter or digit and are 64 characters at most. Rename it: ${field}.`,
      );
    case 'refused':
      return saying(
        `${Field} ${facts.reason}.`,
        `Nothing can be worked out with it. Replace it by one that is known.${tabState(facts)}`,
      );
    case 'more':
      return saying(
        `${formatter.count(facts.count, 'more thing')} in the document cannot be read.`,
        'They are not listed. Mend the ones above and read the document again.',
      );
    case 'repeated':
      return saying(
        `“${facts.name}” stands twice: at ${field}.`,
        'Nobody could say which of the two is meant. Rename one, or take it out.',
      );
    default:
      return variant satisfies never;
  }
}

/** What the field holds, as a sentence; empty where it has no short form. */
const tabState = ({ found }: { readonly found: string }): string =>
  found === '' ? '' : ` It holds “${found}”.`;

const kindWords = (kind: string): string => kinds[kind] ?? kind;
