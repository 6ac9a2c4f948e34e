import { formMemory, type OrderForm } from '@/app/_fields/formMemory';

/** Goods are counted at the door and may take long: kept on the device until they are noted or left. */
export const goodsForm = (place: string): OrderForm => ({
  ...{ orderId: 'goods-in', name: place, isErased: false },
  outlivesTab: true,
});

/** What is added on an order to a supplier before it goes out. */
export const orderDeskForm = (listId: string | null, supplierId: string): OrderForm => ({
  ...{ orderId: 'supply-order', name: `${listId ?? ''} ${supplierId}`, isErased: false },
});

/** @returns whether something was typed in a form and neither noted nor left. */
export const isBegun = ({ orderId, name }: OrderForm): boolean =>
  formMemory.begun(orderId, name).includes('');
