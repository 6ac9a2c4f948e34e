/** What stands on the papers that go to a supplier, in English. */
export const supplyLabels = {
  supplyOrder: 'Order',
  supplyTo: 'to',
  customerNumber: 'our customer number',
  articleNumber: 'article',
  quantity: 'quantity',
  quantityOf: '{count} {unit}',
  packsOf: '{packs} × {size} {unit}',
  goodsTotal: 'goods',
  freight: 'freight',
  freightFree: 'free',
  supplyTotal: 'Total by your prices, {currency}',
  pleaseConfirm: 'Please confirm prices and the day of delivery.',
  pleaseTell: 'Please tell us your prices and the day of delivery.',
} as const;
