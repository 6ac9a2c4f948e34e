import type { BenchWork } from '@/lib/calendar/benchWork';
import type { CostFacts } from '@/lib/check/costFacts';

/** @returns all work of a job with what is done at the desk before it: enquiry, artwork, proof. */
export function paidWork({ attendedMinutes, benchMinutes, work }: CostFacts): BenchWork {
  const desk = Math.max(0, attendedMinutes - benchMinutes);
  return { ...work, before: [{ what: 'desk', minutes: desk }, ...work.before] };
}
