import type { z } from 'zod';
import type { CaseOf } from '@/shared/facts/findingCases';
import type { Finding, Where } from '@/shared/finding';
import { makeFinding } from './makeFinding';

/** Beyond this many the rest is counted, not listed: the first ones mended, most of the others go too. */
const MOST_TOLD = 100;

type Located = CaseOf<'DOC-01'> & { readonly path: readonly (string | number)[] };

/**
 * DOC-01: what a schema refused, as findings.
 *
 * @param error of a schema's safeParse
 * @param document what was read; its path is the way inside it
 * @param options `id` of a blank or artwork; `value` is what was read, so that a sentence can repeat it
 * @returns one stop for each problem, in the order of the document, a hundred of them; those after are counted
 */
export function documentFindings(
  error: { readonly issues: readonly z.core.$ZodIssue[] },
  document: Where['document'],
  options: { readonly id?: string; readonly value?: unknown } = {},
): readonly Finding[] {
  // Only what is listed is put together: a file can hold a hundred thousand problems.
  const listed = error.issues
    .slice(0, MOST_TOLD)
    .flatMap((issue) => tell(issue, options.value))
    .slice(0, MOST_TOLD);
  const rest = error.issues.reduce((sum, issue) => sum + problemsIn(issue), 0) - listed.length;
  const all: readonly Located[] =
    rest > 0 ? [...listed, { variant: 'more', facts: { count: rest }, path: [] }] : listed;
  return all.map(({ path, ...problem }) =>
    makeFinding({
      id: 'DOC-01',
      severity: 'stop',
      ...problem,
      where: { document, ...(options.id === undefined ? {} : { id: options.id }), path },
    }),
  );
}

/** A schema names all unknown fields of one object in one issue. */
const problemsIn = (issue: z.core.$ZodIssue): number =>
  issue.code === 'unrecognized_keys' ? issue.keys.length : 1;

function tell(issue: z.core.$ZodIssue, document: unknown): readonly Located[] {
  const path = issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step));
  const named = path.map(shortStep);
  const one = (problem: CaseOf<'DOC-01'>): readonly Located[] => [{ ...problem, path: named }];
  const found = shown(valueAt(document, path));
  switch (issue.code) {
    case 'invalid_type':
      if (isMissing(issue.message, document, path)) {
        return one({ variant: 'missing', facts: { expected: issue.expected } });
      }
      return issue.expected === 'int'
        ? one({ variant: 'notWhole', facts: { found } })
        : one({
            variant: 'wrongType',
            facts: { expected: issue.expected, received: received(issue.message), found },
          });
    case 'too_small':
      return one(tooSmall(issue.origin, Number(issue.minimum), issue.inclusive === false, found));
    case 'too_big':
      return one(tooLarge(issue.origin, Number(issue.maximum), found));
    case 'unrecognized_keys':
      return issue.keys.slice(0, MOST_TOLD).map((key): Located => {
        const at = [...named, shortStep(key)];
        const to = movedTo([...path, key], document);
        return to === null
          ? { variant: 'unknownKey', facts: { key: clipped(key) }, path: at }
          : { variant: 'movedKey', facts: { key, to }, path: at };
      });
    case 'invalid_value':
      return one({
        variant: 'badChoice',
        facts: { allowed: issue.values.map(String).join(', '), found },
      });
    case 'invalid_union':
      return one({ variant: 'badChoice', facts: { allowed: choices(issue), found } });
    case 'invalid_format':
      return one({ variant: 'badForm', facts: { form: issue.format, found } });
    case 'invalid_key':
      return one({ variant: 'badKey', facts: { key: clipped(String(path.at(-1) ?? '')) } });
    case 'not_multiple_of':
    case 'invalid_element':
    case 'custom':
      return one({ variant: 'refused', facts: { found, reason: issue.message } });
    default:
      return issue satisfies never;
  }
}

/** Where the file holds now what files of earlier builds had in a blank or an artwork; null for any other field. */
function movedTo([list, id, ...rest]: readonly (string | number)[], document: unknown): string | null {
  if (list === 'artworks' && rest[0] === 'approvedVersion') return clipped(`approvedVersions.${id}`, 100);
  if (list !== 'blanks' || rest[0] !== 'sizes' || rest[2] !== 'onHand') return null;
  const size = valueAt(document, [list, id ?? '', ...rest.slice(0, 2), 'name']);
  return clipped(`onHand.${id}.${typeof size === 'string' ? size : rest[1]}`, 100);
}

function tooSmall(origin: string, limit: number, isOpen: boolean, found: string): CaseOf<'DOC-01'> {
  if (origin === 'string') return { variant: 'tooShort', facts: { limit } };
  if (isList(origin)) return { variant: 'tooFew', facts: { limit } };
  return { variant: 'tooSmall', facts: { limit, open: isOpen ? 1 : 0, found } };
}

function tooLarge(origin: string, limit: number, found: string): CaseOf<'DOC-01'> {
  if (origin === 'string') return { variant: 'tooLong', facts: { limit } };
  return isList(origin)
    ? { variant: 'tooMany', facts: { limit } }
    : { variant: 'tooLarge', facts: { limit, found } };
}

const isList = (origin: string): boolean => origin === 'array' || origin === 'set';

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
        ? Reflect.get(value, step)
        : undefined,
    document,
  );
}

/** A value short enough to repeat in a sentence; empty for what has no short form. */
function shown(value: unknown): string {
  if (typeof value === 'string') return clipped(value);
  return typeof value === 'number' || typeof value === 'boolean' || value === null ? String(value) : '';
}

/** No name of ours is that long, so that only what is wrong anyway is cut. */
const shortStep = (step: string | number): string | number =>
  typeof step === 'string' ? clipped(step, 100) : step;

const clipped = (text: string, most = 60): string => (text.length > most ? `${text.slice(0, most)}…` : text);
