import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { Bench } from '@/app/_orderBook/useBench';
import { childRows } from '@/lib/check/order/childRows';
import type { OrderScene } from '@/lib/check/order/orderScene';
import { dayToKeep } from '@/lib/orders/dayToKeep';

/** @returns what the checks of an order look at. */
export function orderScene(
  on: OrderOnScreen,
  { latestOf, plannedOf }: Pick<Bench, 'latestOf' | 'plannedOf'>,
): OrderScene {
  const { orderId, order, standing, customer, jobs, workspace, today } = on;
  const [latest, planned] = [latestOf(orderId), plannedOf(orderId)];
  const { approval, deposit } = standing.gates;
  return {
    orderId,
    asOf: today,
    stage: stageOf(standing),
    wantedOn: dayToKeep(order, standing.agreed),
    approveBy: latest?.kind === 'latest' ? latest.dates.approveBy : null,
    ready: planned?.kind === 'planned' ? planned.plan.ready : null,
    isApproved: approval !== 'shut',
    isDepositPaid: deposit !== 'shut',
    childRows: order.lines.reduce((sum, { jobId, lineId, names }) => {
      const line = jobs.find(({ id }) => id === jobId)?.job.lines.find(({ id }) => id === lineId);
      const blank = workspace.blanks[line?.blankId ?? ''];
      return blank === undefined ? sum : sum + childRows(names, blank);
    }, 0),
    addresses: customer?.addresses.length ?? 0,
  };
}

function stageOf({ side, state }: OrderOnScreen['standing']): OrderScene['stage'] {
  if (side.side === 'lost' || side.side === 'cancelled') return 'over';
  switch (state) {
    case 'enquiry':
    case 'quoted':
    case 'accepted':
      return 'waiting';
    case 'delivered':
    case 'paid':
    case 'closed':
      return 'over';
    default:
      return 'making';
  }
}
