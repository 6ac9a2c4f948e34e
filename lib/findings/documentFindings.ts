import type { z } from 'zod';
import type { Facts, Finding, Where } from '@/shared/finding';
import { makeFinding } from './makeFinding';

/** Beyond this many the rest is counted, not listed: the first ones mended, most of the others go too. */
const MOST_TOLD = 100;

export type DocumentProblem =
  | 'missing'
  | 'wrongType'
  | 'notWhole'
  | 'tooSmall'
  | 'tooLarge'
  | 'tooShort'
  | 'tooLong'
  | 'tooFew'
  | 'tooMany'
  | 'badChoice'
  | 'badForm'
  | 'unknownKey'
  | 'badKey'
  | 'refused'
  | 'more';

interface Told {
  readonly variant: DocumentProblem;
  readonly facts: Facts;
  readonly path: readonly (string | number)[];
}

/**
 * DOC-01: what a schema refused, as findings.
 *
 * @param error of a schema's safeParse
 * @param document what was read; its path is the way inside it
 * @param options `id` of a blank or artwork; `value` is what was read, so that a sentence can repeat it
 * @returns one stop for each trouble, in the order of the document, the hundredth and later ones counted
 */
export function documentFindings(
  error: { readonly issues: readonly z.core.$ZodIssue[] },
  document: Where['document'],
  options: { readonly id?: string; readonly value?: unknown } = {},
): readonly Finding[] {
  const told = error.issues.flatMap((issue) => tell(issue, options.value));
  const listed = told.slice(0, MOST_TOLD);
  const rest = told.length - listed.length;
  const all: readonly Told[] =
    rest > 0 ? [...listed, { variant: 'more', facts: { count: rest }, path: [] }] : listed;
  return all.map(({ variant, facts, path }) =>
    makeFinding({
      id: 'DOC-01',
      severity: 'stop',
      variant,
      where: { document, ...(options.id === undefined ? {} : { id: options.id }), path },
      facts,
    }),
  );
}

function tell(issue: z.core.$ZodIssue, document: unknown): readonly Told[] {
  const path = issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step));
  const one = (variant: DocumentProblem, facts: Facts = {}): readonly Told[] => [{ variant, facts, path }];
  const found = shown(valueAt(document, path));
  switch (issue.code) {
    case 'invalid_type':
      if (isMissing(issue.message, document, path)) return one('missing', { expected: issue.expected });
      return issue.expected === 'int'
        ? one('notWhole', { found })
        : one('wrongType', { expected: issue.expected, received: received(issue.message), found });
    case 'too_small':
      return one(smallVariant(issue.origin), {
        limit: Number(issue.minimum),
        open: issue.inclusive === false ? 1 : 0,
        found,
      });
    case 'too_big':
      return one(largeVariant(issue.origin), { limit: Number(issue.maximum), found });
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        variant: 'unknownKey',
        facts: { key: clipped(key) },
        path: [...path, key],
      }));
    case 'invalid_value':
      return one('badChoice', { allowed: issue.values.map(String).join(', '), found });
    case 'invalid_union':
      return one('badChoice', { allowed: choices(issue), found });
    case 'invalid_format':
      return one('badForm', { form: issue.format, found });
    case 'invalid_key':
      return one('badKey', { key: clipped(String(path.at(-1) ?? '')) });
    case 'not_multiple_of':
    case 'invalid_element':
    case 'custom':
      return one('refused', { found, reason: issue.message });
    default:
      return issue satisfies never;
  }
}

const smallVariant = (origin: string): DocumentProblem =>
  origin === 'string' ? 'tooShort' : origin === 'array' || origin === 'set' ? 'tooFew' : 'tooSmall';

const largeVariant = (origin: string): DocumentProblem =>
  origin === 'string' ? 'tooLong' : origin === 'array' || origin === 'set' ? 'tooMany' : 'tooLarge';

/** A union told apart by a field lists the values of that field. */
const choices = (issue: z.core.$ZodIssueInvalidUnion): string =>
  'options' in issue && Array.isArray(issue.options) ? issue.options.map(String).join(', ') : '';

/** The library's own sentence is the only place where it says what it was given, unless we hold the document. */
const isMissing = (message: string, document: unknown, path: readonly (string | number)[]): boolean =>
  document === undefined ? received(message) === 'undefined' : valueAt(document, path) === undefined;

const received = (message: string): string => / received (\w+)/.exec(message)?.[1] ?? '';

function valueAt(document: unknown, path: readonly (string | number)[]): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, step)
        ? Object.entries(value).find(([key]) => key === String(step))?.[1]
        : undefined,
    document,
  );
}

/** A value short enough to repeat in a sentence; empty for what has no short form. */
function shown(value: unknown): string {
  if (typeof value === 'string') return clipped(value);
  return typeof value === 'number' || typeof value === 'boolean' || value === null ? String(value) : '';
}

const clipped = (text: string): string => (text.length > 60 ? `${text.slice(0, 60)}…` : text);
