import { makeFinding } from '@/lib/findings/makeFinding';
import { orderFindings } from '@/lib/findings/orderFindings';
import { daysBetween } from '@/shared/days';
import type { Finding } from '@/shared/finding';
import type { OrderScene } from './orderScene';

/** @returns TIM-03 and LAW-09 of an order. */
export const checkOrder = (scene: OrderScene): readonly Finding[] =>
  orderFindings([...answersLate(scene), ...personalData(scene)]);

/** TIM-03: approval or deposit still outstanding after the last day on which the wanted day can be kept. */
function answersLate(scene: OrderScene): readonly Finding[] {
  const { orderId, asOf, stage, wantedOn, approveBy, ready, isApproved, isDepositPaid } = scene;
  if (stage !== 'waiting' || wantedOn === null || approveBy === null) return [];
  if ((isApproved && isDepositPaid) || daysBetween(approveBy, asOf) <= 0) return [];
  return [
    makeFinding({
      id: 'TIM-03',
      severity: 'caution',
      variant: isApproved ? 'deposit' : isDepositPaid ? 'approval' : 'both',
      where: { document: 'order', id: orderId, path: ['wantedOn'] },
      found: asOf,
      limit: approveBy,
      facts: { approveBy, wantedOn, ready: ready ?? '' },
    }),
  ];
}

/** LAW-09: names of children and addresses lie on the device, which nobody may keep longer than they are needed. */
function personalData({ orderId, stage, childRows, addresses }: OrderScene): readonly Finding[] {
  if (childRows === 0 && addresses === 0) return [];
  return [
    makeFinding({
      id: 'LAW-09',
      severity: 'note',
      variant: stage === 'over' ? 'over' : 'needed',
      where: { document: 'order', id: orderId, path: ['lines'] },
      facts: { childRows, addresses },
    }),
  ];
}
