import { findingWords } from '@/app/_words/findings/findingWords';
import type { NameOf } from '@/app/_words/formatter';
import { thoroughInput } from '@/lib/costing/layoutQuestions';
import { type JobAnswer, priceJob } from '@/lib/costing/priceJob';
import { readJobInput } from '@/lib/findings/readJobInput';
import type { Finding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import { edgeGrid, edgeLayouts } from './edgeGrid';
import { plainContext } from './plainContext';

type SpokenFinding = Finding & {
  readonly message: string;
  readonly detail: string;
};

export type EdgeAnswer =
  | ({ readonly kind: 'answered' } & Omit<JobAnswer, 'findings'> & {
        readonly findings: readonly SpokenFinding[];
      })
  | { readonly kind: 'unusable'; readonly findings: readonly SpokenFinding[] };

/**
 * What the API and the command give for one request: parse, price, and put every finding into words.
 *
 * @param request anything at all
 * @param today used where the request does not name its day, YYYY-MM-DD
 */
export function answerRequest(request: unknown, today: string): EdgeAnswer {
  const read = readJobInput(dated(request, today));
  if (!read.ok) return { kind: 'unusable', findings: read.problem.map(inWords(plainContext)) };
  const { workshop } = read.value;
  // Nobody waits before a screen: what a screen shows first and what it shows in the end are one answer here.
  const answer = priceJob(thoroughInput(read.value, edgeLayouts), edgeGrid());
  const context = {
    locale: workshop.locale,
    units: workshop.units,
    currency: workshop.currency,
    nameOf: namesIn(read.value),
  };
  return { kind: 'answered', ...answer, findings: answer.findings.map(inWords(context)) };
}

/** A request carries its documents, and with them their names. */
const namesIn =
  ({ blanks, artworks }: JobInput): NameOf =>
  (kind, id) => {
    const found = kind === 'blank' ? blanks : kind === 'artwork' ? artworks : {};
    return Object.hasOwn(found, id) ? (found[id]?.name ?? null) : null;
  };

type Context = Parameters<typeof findingWords>[1];

const inWords =
  (context: Context) =>
  (finding: Finding): SpokenFinding => {
    const { sentence, detail } = findingWords(finding, context);
    return { ...finding, message: sentence, detail };
  };

/** @returns the request with its day: today, where it names none itself. */
export function dated(request: unknown, today: string): unknown {
  const isObject = typeof request === 'object' && request !== null && !Array.isArray(request);
  return isObject && !('asOf' in request) ? { ...request, asOf: today } : request;
}
