/**
 * The rows that tables and curves read of a case; nothing else is worked out for them. One list for both, so that
 * a job of one line has one narrow workbook for all of them.
 */
export const pricedRows = [
  'fullCost',
  'target',
  'price',
  'fees',
  'profit',
  'margin',
  'markup',
  'payPerHour',
  'attended',
] as const;
