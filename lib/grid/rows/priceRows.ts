import type { RowDefinition } from '@/lib/grid/rowTypes';

const price = { family: 'price', table: 'case', unit: 'money' } as const;

/** Floors, target and what the asked price leaves. All without tax. */
export const priceRows: readonly RowDefinition[] = [
  {
    ...price,
    total: 'adds',
    id: 'cash',
    label: 'Cash that leaves the pocket',
    formula:
      'blanksExpected + paperExpected + inkExpected + suppliesExpected + electricityExpected + packaging + delivery + ownCash',
    says: 'Materials, power, packaging and delivery; no pay, wear or overhead.',
  },
  {
    ...price,
    total: 'adds',
    id: 'cardFixed',
    label: 'Fixed card fees',
    formula: 'cardFixedFee * (cardPayments / jobPieces + cardTickets)',
    says: 'Each card payment of the order, or the piece’s share of a ticket.',
  },
  {
    ...price,
    total: 'formula',
    id: 'outOfPocketFloor',
    label: 'Out-of-pocket floor',
    formula: '(cash + reprintShare * reprintMaterials + cardFixed) / (1 - feeShare)',
    says: 'Below it you pay to work.',
  },
  {
    ...price,
    total: 'formula',
    id: 'variableFloor',
    label: 'Variable floor',
    formula: '(cash + runTime / 60 * wage + reprintShare * reprintMaterials + cardFixed) / (1 - feeShare)',
    says: 'Below it another piece makes you poorer in time.',
  },
  {
    ...price,
    total: 'formula',
    id: 'target',
    label: 'Target price',
    formula: '(fullCost + cardFixed) / keepShare',
    says: 'Full cost and fees at the margin aimed for.',
  },
  {
    ...price,
    total: 'adds',
    id: 'price',
    label: 'Price without tax',
    formula: 'IF(askedPrice > 0; askedPrice / (1 + taxInside * tax); target)',
    says: 'The asked price, or the target price where none is decided.',
  },
  {
    ...price,
    total: 'formula',
    id: 'fees',
    label: 'Fees',
    formula: 'price * feeShare + cardFixed',
    says: 'Commission and card fees at this price.',
  },
  {
    ...price,
    total: 'formula',
    id: 'profit',
    label: 'Profit',
    formula: 'price - fees - fullCost',
    says: 'What is left after fees, all cost and your own pay.',
  },
  {
    ...price,
    total: 'formula',
    unit: 'share',
    id: 'margin',
    label: 'Margin',
    formula: 'profit / price',
    says: 'Profit as a share of the price without tax.',
  },
  {
    ...price,
    total: 'formula',
    unit: 'share',
    id: 'markup',
    label: 'Markup',
    formula: 'profit / (fullCost + fees)',
    says: 'Profit as a share of full cost and fees.',
  },
  {
    ...price,
    total: 'formula',
    unit: 'money/h',
    id: 'payPerHour',
    label: 'What the job pays an hour',
    formula: '(profit + labourExpected) / (attended / 60)',
    says: 'Profit and your pay over all paid time.',
  },
  {
    ...price,
    unit: 'money',
    repeat: 'placement',
    id: 'pressCost_#',
    label: 'Cost of one more piece at press #',
    formula:
      'used_# * (IF(replaceAlone_# = 1; 1; 1 / ups_#) * sheetWorth_# / (1 - sheetReject) * (sheetPrice + printerWear + sheetMinutes * (1 + restAllowance) / 60 * (wage + overheadRate) + printerPowerKw * printerMinutesPerSheet / 60 * tariff) + inkPerPrint_# / (1 - sheetReject) * inkPrice + suppliesOfPress_# + pressWear_# + pressPowerKw_# * holdingShare_# * hotMinutes_# / 60 * tariff + handMinutes_# * (1 + restAllowance) / 60 * (wage + overheadRate))',
    says: 'Its sheet, ink, supplies, wear, power and minutes: decides which side is pressed first.',
  },
];
