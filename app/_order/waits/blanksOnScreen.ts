import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { blanksNeeded, type OrderBlanks } from '@/lib/orders/bench/blanksNeeded';

/** @returns what the order on the screen is made on, the same wherever it is told. */
export const blanksOnScreen = ({
  jobs,
  workspace: { blanks, onHand },
  blanksOf,
}: Pick<OrderOnScreen, 'jobs' | 'workspace' | 'blanksOf'>): OrderBlanks =>
  blanksNeeded({ jobs, blanks, onHand, knownOf: blanksOf });
