import type { RowDefinition, RowTable, RowUnit } from '@/lib/grid/rowTypes';
import { rateDefinition, rateNames } from '@/shared/tables/rateCatalogue';

/** Values that are filled in once for a job. Rates stand under their own names. */
export const jobInputRows: readonly RowDefinition[] = [
  ...rateNames.map((name): RowDefinition => {
    const { label, changes } = rateDefinition(name);
    return row('job', name, label, gridUnitOf(name), changes);
  }),
  row('job', 'printerPowerKw', 'Printer power', 'kW', 'While printing.'),
  row('job', 'printerMinutesPerSheet', 'Printing a sheet', 'min', 'The printer works alone.'),
  row('job', 'printerPrice', 'Printer price', 'money', 'As bought.'),
  row('job', 'printerResale', 'Printer resale', 'money', 'What it will still fetch.'),
  row('job', 'printerLifeSheets', 'Sheets in the printer’s life', 'sheets', 'Until it is worn out.'),
  row('job', 'printerLifeYears', 'Years in the printer’s life', 'years', '0 where age does not matter.'),
  row('job', 'printerSheetsPerYear', 'Sheets printed in a year', 'sheets', '0 where age does not matter.'),
  row('job', 'sheetPrice', 'A sheet of transfer paper', 'money/sheet', 'As bought.'),
  row('job', 'freightIn', 'Freight of the blanks', 'money', 'Once an order.'),
  row('job', 'deliveryKm', 'Delivery, there and back', 'km', '0 where nobody drives.'),
  row('job', 'tax', 'Tax', 'share', 'On the price without tax.'),
  row('job', 'taxInside', 'Tax is inside typed prices', 'yes or no', '1 where typed prices include it.'),
  row('job', 'commission', 'Commission of the channel', 'share', 'Of the price.'),
  row('job', 'commissionOnTax', 'Commission is taken on tax too', 'yes or no', '1 where it is.'),
  row('job', 'cardFee', 'Card fee', 'share', 'Of what is paid by card, tax included.'),
  row('job', 'cardFixedFee', 'Card fee, fixed part', 'money', 'Each payment or ticket.'),
  row('job', 'cardShare', 'Share paid by card', 'share', 'Of the money.'),
  row('job', 'cardPayments', 'Card payments for the order', 'payments', '0 at a stall.'),
  row('job', 'isStall', 'Sold by the ticket', 'yes or no', '1 at a stall.'),
  row('job', 'piecesPerTicket', 'Pieces on a ticket', 'pieces', 'At a stall.'),
  row('job', 'sellingMinutes', 'Selling a piece', 'min', 'On top of making it; 0 where nobody has said.'),
  row('job', 'dayCost', 'A selling day', 'money', 'Stall, drive, parking; 0 where there are no such days.'),
  row('job', 'dayPieces', 'Pieces sold on a selling day', 'pieces', 'They share its cost.'),
  row('job', 'piecesPerSession', 'Pieces a session can carry', 'pieces', '0 where one session carries all.'),
  {
    ...row('job', 'warmPowerKw_#', 'Power of press # while warming', 'kW', 'At full power.'),
    repeat: 'press',
  },
  { ...row('job', 'warmMinutes_#', 'Warm-up of press #', 'min', 'Once a session.'), repeat: 'press' },
];

/** Values that are filled in once for a line of the job. */
export const lineInputRows: readonly RowDefinition[] = [
  row('line', 'blankFault', 'Blanks found faulty', 'share', 'Found before pressing.'),
  row('line', 'finishMinutes', 'Inspecting, folding, bagging', 'min', 'Each good piece.'),
  row('line', 'packagingPerPiece', 'Packaging of a piece', 'money', 'Bag, card, sticker or box.'),
  slot('used_#', 'Placement # is pressed', 'yes or no', '0 where this line has fewer placements.'),
  slot('scrap_#', 'Pieces spoiled at press #', 'share', 'The blank is lost.'),
  slot('replaceAlone_#', 'Replacements of print # take a sheet alone', 'yes or no', '0 where ganged.'),
  slot('tests_#', 'Test presses of placement #', 'presses', 'On scrap cloth, each with a sheet.'),
  slot('handMinutes_#', 'Hands-on minutes of press #', 'min', 'Lint, align, tape, press, peel.'),
  slot('aloneMinutes_#', 'Press # works alone', 'min', 'Nobody is paid for these.'),
  slot('hotMinutes_#', 'Press # held hot', 'min', 'For one piece.'),
  slot('prepMinutes_#', 'Preparing the artwork of print #', 'min', 'Once.'),
  {
    ...slot('newDesign_#', 'Artwork of print # is counted here', 'yes or no', '0 where already counted.'),
    silentAtOne: true,
  },
  slot('pressPowerKw_#', 'Power of press #', 'kW', 'At full power.'),
  slot('holdingShare_#', 'Holding share of press #', 'share', 'Of full power, to stay hot.'),
  slot('pressPrice_#', 'Price of press #', 'money', 'As bought.'),
  slot('pressResale_#', 'Resale of press #', 'money', 'What it will still fetch.'),
  slot('pressLife_#', 'Presses in the life of press #', 'presses', 'Until it is worn out.'),
  slot('pressLifeYears_#', 'Years in the life of press #', 'years', '0 where age does not matter.'),
  slot('pressesPerYear_#', 'Presses in a year on press #', 'presses', '0 where age does not matter.'),
  slot('partsPrice_#', 'Spare parts of press #', 'money', 'Pads and the like.'),
  slot('partsInterval_#', 'Presses a set of parts lasts', 'presses', 'Between changes.'),
  slot('protectivePaper_#', 'Protective paper at press #', 'money', 'Each press.'),
  slot('tape_#', 'Tape at press #', 'money', 'Each press.'),
];

/** Values that are filled in for every case. */
export const caseInputRows: readonly RowDefinition[] = [
  row('case', 'quantity', 'Pieces of this size in the job', 'pieces', 'As ordered.'),
  row('case', 'pieces', 'Good pieces of this line in the batch', 'pieces', 'All sizes.'),
  { ...row('case', 'jobPieces', 'Good pieces in the job', 'pieces', 'All lines.'), total: 'first' },
  row('case', 'blankPrice', 'Price of the blank', 'money', 'In this size.'),
  row('case', 'askedPrice', 'Asked price as typed', 'money', '0 where none is decided.'),
  row(
    'case',
    'askedStart',
    'Asked once an order, as typed',
    'money',
    '0 where nothing is asked beside the pieces.',
  ),
  {
    ...row('case', 'group_#', 'Pieces sharing print size #', 'pieces', 'Of this line.'),
    repeat: 'placement',
  },
  { ...row('case', 'ups_#', 'Prints # on a sheet', 'pieces', 'From the layout.'), repeat: 'placement' },
  {
    ...row(
      'case',
      'sheetWorth_#',
      'What a sheet of print # counts for',
      'sheets',
      '1 for a cut sheet; a strip of roll counts by its area, as letter sheets.',
    ),
    repeat: 'placement',
    silentAtOne: true,
  },
  { ...row('case', 'areaM2_#', 'Area of print #', 'm2', 'Width × height.'), repeat: 'placement' },
  {
    ...row(
      'case',
      'coverage_#',
      'Ink coverage of print #',
      'share',
      'Sum of the channels over the print’s box.',
    ),
    repeat: 'placement',
  },
  {
    ...row('case', 'designPieces_#', 'Pieces that share the artwork of print #', 'pieces', 'In the job.'),
    repeat: 'placement',
  },
];

function row(table: RowTable, id: string, label: string, unit: RowUnit, says: string): RowDefinition {
  return { id, table, label, unit, family: 'quantity', formula: null, says };
}

function slot(id: string, label: string, unit: RowUnit, says: string): RowDefinition {
  return { ...row('line', id, label, unit, says), repeat: 'placement' };
}

/** Rates typed in one of several units are filled in in one: laydown per square metre, driving per kilometre. */
function gridUnitOf(name: (typeof rateNames)[number]): RowUnit {
  if (name === 'laydown') return 'mL/m2';
  if (name === 'travelRate') return 'money/km';
  return rateDefinition(name).units[0];
}
