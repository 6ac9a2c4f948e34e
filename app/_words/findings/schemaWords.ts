import { fieldWords } from '@/app/_words/fieldWords';
import type { DocumentProblem } from '@/lib/findings/documentFindings';
import { type Saying, saying, type Told } from './sayings';

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

interface Refused extends Told {
  /** The field in words. */
  readonly field: string;
  /** The same to begin a sentence with. */
  readonly Field: string;
  /** What the field holds, as a sentence; empty where it has no short form. */
  readonly found: string;
  readonly limit: string;
  readonly kind: (fact: string) => string;
}

const problems: Readonly<Record<DocumentProblem, (refused: Refused) => Saying>> = {
  missing: ({ Field, kind }) =>
    saying(`${Field} is missing.`, `The document cannot be read without it. Add ${kind('expected')}.`),
  wrongType: ({ Field, kind, name, found }) =>
    saying(
      `${Field} must be ${kind('expected')}, and is ${kind('received')}.`,
      name('expected') === 'number'
        ? `Write numbers bare, without quotation marks, with a point before the decimals.${found}`
        : `Replace it by ${kind('expected')}.${found}`,
    ),
  notWhole: ({ Field, found }) =>
    saying(`${Field} must be a whole number.`, `Leave out what stands after the point.${found}`),
  tooSmall: ({ Field, figure, limit, found }) =>
    saying(
      `${Field} must be ${figure('open') === 1 ? 'more than' : 'at least'} ${limit}.`,
      `Less has no meaning there. Check the sign and the figure.${found}`,
    ),
  tooLarge: ({ Field, limit, found }) =>
    saying(
      `${Field} must be at most ${limit}.`,
      `More than that can only be a slip. Check the figure and its unit.${found}`,
    ),
  tooShort: ({ Field, figure, formatter }) =>
    saying(
      `${Field} needs at least ${formatter.count(figure('limit'), 'character')}.`,
      'Left empty, it could not be told from others. Write something in.',
    ),
  tooLong: ({ Field, limit }) =>
    saying(
      `${Field} may have ${limit} characters at most.`,
      'Longer text would not fit on screens and papers. Shorten it.',
    ),
  tooFew: ({ Field, limit }) =>
    saying(`${Field} must hold at least ${limit}.`, 'With fewer there is nothing to work on. Add one.'),
  tooMany: ({ Field, limit }) =>
    saying(`${Field} may hold ${limit} at most.`, 'More are not counted. Take some out.'),
  badChoice: ({ Field, name, found }) =>
    saying(
      `${Field} is none of the values it may have.`,
      `Nothing can be read from it. Choose one of: ${name('allowed')}.${found}`,
    ),
  badForm: ({ Field, name, found }) =>
    saying(
      `${Field} is not in the form it needs.`,
      `Write ${forms[name('form')] ?? `it as ${name('form')}`}.${found}`,
    ),
  unknownKey: ({ name, field }) =>
    saying(
      `“${name('key')}” is no field known there: ${field}.`,
      'Read past, a misspelt field would count as missing, so nothing is read past. Correct the name, or take it out.',
    ),
  badKey: ({ name, field }) =>
    saying(
      `“${name('key')}” cannot be the name of an entry.`,
      `Names have letters, digits and hyphens, start with a letter or digit and are 64 characters at most. Rename it: ${field}.`,
    ),
  refused: ({ Field, name, found }) =>
    saying(
      `${Field} ${name('reason')}.`,
      `Nothing can be worked out with it. Replace it by one that is known.${found}`,
    ),
  more: ({ formatter, figure }) =>
    saying(
      `${formatter.count(figure('count'), 'more thing')} in the document cannot be read.`,
      'They are not listed. Mend the ones above and read the document again.',
    ),
};

/** @returns the sentence for one thing a schema refused: what, in which field, and how to mend it. */
export function schemaWords(told: Told): Saying {
  const { finding, name, figure, formatter, nameOf } = told;
  const say = Object.entries(problems).find(([problem]) => problem === finding.variant)?.[1];
  const field = fieldWords(finding.where, nameOf);
  const isId = /^(id|[a-z]+Id)$/.test(String(finding.where.path.at(-1) ?? ''));
  return (say ?? problems.refused)({
    ...told,
    field,
    Field: field.slice(0, 1).toUpperCase() + field.slice(1),
    found: name('found') === '' || isId ? '' : ` It holds “${name('found')}”.`,
    limit: formatter.number(figure('limit'), 6),
    kind: (fact) => kinds[name(fact)] ?? name(fact),
  });
}
