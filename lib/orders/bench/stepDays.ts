import type { Latest } from '@/lib/calendar/orderDates';
import type { OrderTurn } from '@/lib/orders/board/turnOf';

type WaitsFor = OrderTurn['waits'][number]['why'];

const benchSteps = ['print', 'press', 'check', 'pack'] as const satisfies readonly WaitsFor[];
type BenchStep = (typeof benchSteps)[number];

/** Whether an order waits for work at the bench, of which the calendar knows the last day. */
export const isBenchStep = (why: WaitsFor): why is BenchStep => benchSteps.some((step) => step === why);

/**
 * @param latest of what is left of an order; null where it has no wanted day
 * @returns the last day on which work at the bench can begin; null where nobody knows, or nothing of it is left
 */
export function lastDayOf(why: BenchStep, latest: Latest | null): string | null {
  if (latest?.kind !== 'latest') return null;
  const { printBy, plan } = latest.dates;
  const dayOf = (what: 'finish' | 'pack') => plan.loose.find((one) => one.what === what)?.day ?? null;
  switch (why) {
    case 'print':
      return printBy;
    case 'press':
      return plan.sessions[0]?.day ?? null;
    case 'check':
      return dayOf('finish') ?? dayOf('pack');
    case 'pack':
      return dayOf('pack');
    default:
      return why satisfies never;
  }
}
