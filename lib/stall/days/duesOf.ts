import { lastDayOf } from '@/lib/stall/sellingDays';
import type { StallDay } from '@/shared/schemas/stallDay';

/** What is to be done or asked for a stall day before it comes. */
export type StallDue =
  | { readonly kind: 'day' }
  /** Until when to apply, or when the answer is due; YYYY-MM-DD. */
  | { readonly kind: 'apply' | 'answer'; readonly by: string }
  | { readonly kind: 'fee'; readonly what: string; readonly costId: string }
  /** Nobody has said whether one is asked for, or one is asked for and not there. */
  | { readonly kind: 'proof'; readonly of: ProofOf; readonly state: 'unset' | 'asked' }
  /** It ends before the last day of selling. */
  | { readonly kind: 'proofEnds'; readonly of: ProofOf; readonly on: string };

export type ProofOf = 'permit' | 'insurance';

/**
 * What waits to be done for a stall day, the most pressing first. Nothing for one that is over: whoever was refused has
 * nothing to pay any more.
 */
export function duesOf(stallDay: StallDay): readonly StallDue[] {
  const { stage, days, applyBy, answerBy, costs } = stallDay;
  if (stage === 'refused' || stage === 'calledOff') return [];
  const dues: StallDue[] = [];
  if (days.length === 0) dues.push({ kind: 'day' });
  if (stage === 'idea' && applyBy !== null) dues.push({ kind: 'apply', by: applyBy });
  if (stage === 'applied' && answerBy !== null) dues.push({ kind: 'answer', by: answerBy });
  if (stage === 'accepted') {
    for (const { id, what, isStallFee, paidOn } of costs)
      if (isStallFee && paidOn === null) dues.push({ kind: 'fee', what, costId: id });
  }
  return [...dues, ...proofDues(stallDay, 'permit'), ...proofDues(stallDay, 'insurance')];
}

// Helpers

function proofDues(stallDay: StallDay, of: ProofOf): readonly StallDue[] {
  const { state, until } = stallDay[of];
  if (state === 'unset' || state === 'asked') return [{ kind: 'proof', of, state }];
  const last = lastDayOf(stallDay);
  const ends = state === 'have' && until !== null && last !== null && until < last;
  return ends ? [{ kind: 'proofEnds', of, on: until }] : [];
}
