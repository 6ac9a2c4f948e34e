import { isPlainObject } from '@/lib/merging/sameValue';
import { eachEntry } from '@/lib/stored/eachEntry';

/** Breaks asked for beside a request: so many by the sums from an order on, or first quantities. */
export type AskedBreaks =
  | { readonly by: 'sums'; readonly count: number; readonly from: number }
  | { readonly by: 'hand'; readonly starts: readonly number[] };

/** The largest order that breaks asked from the sums are judged by. */
const JUDGED_TO = 150;

/**
 * A request with other breaks than its documents have. The sums are asked for a capped list of their own: what lines say
 * of their selling, breaks and prices is left out.
 *
 * @param request anything at all; what is no request is given back as it is, for its schema to refuse
 */
export function withBreaks(request: unknown, asked: AskedBreaks): unknown {
  if (!isPlainObject(request) || !isPlainObject(request.workshop) || !isPlainObject(request.job))
    return request;
  const { workshop, job } = request;
  if (!isPlainObject(workshop.policy)) return request;
  const policy =
    asked.by === 'sums'
      ? {
          ...workshop.policy,
          breaks: null,
          chosenBreaks: { count: asked.count, from: asked.from, judgedTo: JUDGED_TO },
        }
      : { ...workshop.policy, breaks: asked.starts };
  return {
    ...request,
    workshop: { ...workshop, policy },
    job: {
      ...job,
      lines: eachEntry(job.lines, (line) => ({
        ...line,
        breaks: null,
        ...(asked.by === 'sums' ? { selling: 'capped', ownPrices: [] } : {}),
      })),
    },
  };
}
