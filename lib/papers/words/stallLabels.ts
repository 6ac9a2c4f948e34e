/** What stands on the papers of a stall day, in English: prices on the table, cards beside the goods, what goes into the car. */
export const stallLabels = {
  tableList: 'Prices',
  priceCards: 'Price cards',
  lastHour: 'From {time}',
  pricedSizes: '{name}, {sizes}',
  sameDesigns: 'the same {count} designs',
  setOfDesigns: 'any {count} designs',
  setOfOneDesign: 'any {count}',
  setOfGoods: 'any {count} of {goods}',
  underOf: '{goods}, {what}',
  pricedLine: '{of}: {price}',
  cashOrCard: 'Cash or card.',
  plusTax: 'plus tax',
  notYourSize: 'Not your size? Order it here, we post it.',

  carList: 'For the car',
  broughtOf: '{range}: {count}',
  oneSize: 'pieces',
  inAll: 'in all',
  takeAlong: 'Take along',
  tin: 'In the tin',
} as const;
