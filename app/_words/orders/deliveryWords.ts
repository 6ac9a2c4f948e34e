import type { DeliveryWay } from '@/shared/schemas/order';

export const deliveryWords: Readonly<Record<DeliveryWay, string>> = {
  fetched: 'They fetch it',
  brought: 'You bring it',
  sent: 'It is sent',
};
