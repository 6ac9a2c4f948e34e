import { fieldWords } from '@/app/_words/fieldWords';
import type { Formatter, NameOf } from '@/app/_words/formatter';
import { renamedRule } from '@/lib/kinds/renamedRule';
import type { FindingsById } from '@/shared/finding';
import { type Wording, wording } from './wording';

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

/** What a schema refuses; two of one name are told elsewhere. */
type Refused = Exclude<FindingsById['DOC-01'], { readonly variant: 'repeated' }>;

/** @returns the sentence for one thing that is wrong with a document: what, in which field, and how to mend it. */
export function schemaWords(finding: Refused, formatter: Formatter, nameOf: NameOf): Wording {
  const field = fieldWords(finding.where, nameOf);
  const Field = field.slice(0, 1).toUpperCase() + field.slice(1);
  // An id says nothing to anybody.
  const isId = /^(id|[a-z]+Id)$/.test(String(finding.where.path.at(-1) ?? ''));
  const found = (facts: { readonly found: string }) =>
    facts.found === '' || isId ? '' : ` It holds “${facts.found}”.`;
  const limited = (limit: number) => formatter.number(limit, 6);
  const { variant, facts } = finding;
  switch (variant) {
    case 'missing':
      return wording(
        `${Field} is missing.`,
        `The document cannot be read without it. Add ${kindWords(facts.expected)}.`,
      );
    case 'wrongType':
      return wording(
        `${Field} must be ${kindWords(facts.expected)}, and is ${kindWords(facts.received)}.`,
        facts.expected === 'number'
          ? `Write numbers bare, without quotation marks, with a point before the decimals.${found(facts)}`
          : `Replace it by ${kindWords(facts.expected)}.${found(facts)}`,
      );
    case 'notWhole':
      return wording(
        `${Field} must be a whole number.`,
        `Leave out what stands after the point.${found(facts)}`,
      );
    case 'tooSmall':
      return wording(
        `${Field} must be ${facts.open === 1 ? 'more than' : 'at least'} ${limited(facts.limit)}.`,
        `Less has no meaning there. Check the sign and the figure.${found(facts)}`,
      );
    case 'tooLarge':
      return wording(
        `${Field} must be at most ${limited(facts.limit)}.`,
        `More than that can only be a slip. Check the figure and its unit.${found(facts)}`,
      );
    case 'tooShort':
      return wording(
        `${Field} needs at least ${formatter.count(facts.limit, 'character')}.`,
        'Left empty, it could not be told from others. Write something in.',
      );
    case 'tooLong':
      return wording(
        `${Field} may have ${limited(facts.limit)} characters at most.`,
        'Longer text would not fit on screens and papers. Shorten it.',
      );
    case 'tooFew':
      return wording(
        `${Field} must hold at least ${limited(facts.limit)}.`,
        'With fewer there is nothing to work on. Add one.',
      );
    case 'tooMany':
      return wording(
        `${Field} may hold ${limited(facts.limit)} at most.`,
        'More are not counted. Take some out.',
      );
    case 'badChoice':
      return wording(
        `${Field} is none of the values it may have.`,
        `Nothing can be read from it. ${renamed(facts)}Choose one of: ${facts.allowed}.${found(facts)}`,
      );
    case 'badForm':
      return wording(
        `${Field} is not in the form it needs.`,
        `Write ${forms[facts.form] ?? `it as ${facts.form}`}.${found(facts)}`,
      );
    case 'unknownKey':
      return wording(
        `“${facts.key}” is no field known there: ${field}.`,
        'Read past, a misspelt field would count as missing, so nothing is read past. Correct the name, or take it out.',
      );
    case 'movedKey':
      return wording(
        `“${facts.key}” is not part of it any more: ${field}.`,
        `It stands beside the documents now. Take it out there, and where it says something write it at ${facts.to} of the file.`,
      );
    case 'badKey':
      return wording(
        `“${facts.key}” cannot be the name of an entry.`,
        `Names have letters, digits and hyphens, start with a letter or digit and are 64 characters at most. Rename it: ${field}.`,
      );
    case 'refused':
      return wording(
        `${Field} ${facts.reason}.`,
        `Nothing can be worked out with it. Replace it by one that is known.${found(facts)}`,
      );
    case 'more':
      return wording(
        `${formatter.count(facts.count, 'more thing')} in the document cannot be read.`,
        'They are not listed. Mend the ones above and read the document again.',
      );
    default:
      return variant satisfies never;
  }
}

const kindWords = (kind: string): string => kinds[kind] ?? kind;

/** A value that files had under an earlier name says what it is called now. */
function renamed({ found, allowed }: { readonly found: string; readonly allowed: string }): string {
  const now = renamedRule(found);
  return typeof now === 'string' && now !== found && allowed.split(', ').includes(now)
    ? `“${found}” is now called “${now}”: write that. `
    : '';
}
