import type { RowDefinition } from '@/lib/grid/rowTypes';

const base = { family: 'quantity' } as const;
const perPlacement = { ...base, repeat: 'placement' } as const;

/** What a job or a line uses, before any case: rates of wear, entering shares, warm-up, fees. */
export const sharedRows: readonly RowDefinition[] = [
  {
    ...base,
    id: 'printerWear',
    table: 'job',
    label: 'Printer wear of a sheet',
    unit: 'money/sheet',
    formula:
      'MAX((printerPrice - printerResale) / printerLifeSheets; IF(printerLifeYears * printerSheetsPerYear > 0; (printerPrice - printerResale) / (printerLifeYears * printerSheetsPerYear); 0))',
    says: 'Price less resale over the sheets of its life; by age instead where age wears it out first.',
  },
  {
    ...base,
    id: 'overheadRate',
    table: 'job',
    label: 'Overhead of an hour',
    unit: 'money/h',
    formula: 'overheadPerYear / overheadHours',
    says: 'The year’s running cost spread over the hours worked on jobs.',
  },
  {
    ...base,
    id: 'warmUpKwh',
    table: 'job',
    label: 'Warm-up of all presses used',
    unit: 'kWh',
    formula: 'SUM#(warmPowerKw_# * warmMinutes_# / 60)',
    says: 'Full power for the warm-up minutes, once a session.',
  },
  {
    ...base,
    id: 'warmUpMinutes',
    table: 'job',
    label: 'Warm-up minutes of all presses used',
    unit: 'min',
    formula: 'SUM#(warmMinutes_#)',
    says: 'Nobody is paid for them.',
  },
  {
    ...base,
    id: 'feeShare',
    table: 'job',
    label: 'Fees as a share of the price',
    unit: 'share',
    formula: 'commission * (1 + commissionOnTax * tax) + cardFee * cardShare * (1 + tax)',
    says: 'Commission, and the card fee on the part paid by card with its tax.',
  },
  {
    ...base,
    id: 'keepShare',
    table: 'job',
    label: 'What of the price is left for cost',
    unit: 'share',
    formula: '1 - targetMargin - feeShare',
    says: 'After the margin aimed for and the fees.',
  },
  {
    ...base,
    id: 'cardTickets',
    table: 'job',
    label: 'Card tickets for a piece',
    unit: 'payments',
    formula: 'isStall * cardShare / piecesPerTicket',
    says: 'At a stall, where one ticket carries several pieces.',
  },
  {
    ...perPlacement,
    id: 'enter_#',
    table: 'line',
    label: 'Pieces entering press # for a good one',
    unit: 'pieces',
    formula: 'NEXT#(enter_#) / (1 - scrap_#)',
    says: 'Enough for the pieces this press and the later ones spoil.',
  },
  {
    ...base,
    id: 'blanksPerPiece',
    table: 'line',
    label: 'Blanks drawn for a good piece',
    unit: 'pieces',
    formula: 'enter_1 / (1 - blankFault)',
    says: 'Pieces entering the first press, and the faulty blanks found before it.',
  },
  {
    ...perPlacement,
    id: 'pressWear_#',
    table: 'line',
    label: 'Wear of press # in one press',
    unit: 'money/press',
    formula:
      'MAX((pressPrice_# - pressResale_#) / pressLife_#; IF(pressLifeYears_# * pressesPerYear_# > 0; (pressPrice_# - pressResale_#) / (pressLifeYears_# * pressesPerYear_#); 0)) + partsPrice_# / partsInterval_#',
    says: 'Price less resale over the presses of its life, or by age where that is more, and its spare parts.',
  },
  {
    ...perPlacement,
    id: 'suppliesOfPress_#',
    table: 'line',
    label: 'Tape and protective paper of press #',
    unit: 'money/press',
    formula: 'protectivePaper_# + tape_#',
    says: 'Used up at each press.',
  },
];
