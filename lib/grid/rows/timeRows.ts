import type { RowDefinition } from '@/lib/grid/rowTypes';

const power = { family: 'running', table: 'case', total: 'adds', unit: 'kWh' } as const;
const time = { family: 'time', table: 'case', total: 'adds', unit: 'min' } as const;

/** Kilowatt-hours and minutes of one good piece; minutes are paid (attended) or not (unattended). */
export const timeRows: readonly RowDefinition[] = [
  {
    ...power,
    id: 'holdKwhRun',
    label: 'Holding the presses hot, the run',
    formula: 'SUM#(pressPowerKw_# * holdingShare_# * hotMinutes_# / 60 * entering_#)',
    says: 'Press power × holding share × press minutes.',
  },
  {
    ...power,
    id: 'holdKwhTests',
    label: 'Holding the presses hot, the tests',
    formula: 'SUM#(pressPowerKw_# * holdingShare_# * hotMinutes_# / 60 * testsShared_#)',
    says: 'Press power × holding share × press minutes.',
  },
  {
    ...power,
    id: 'holdKwhBase',
    label: 'Holding the presses hot, nothing spoiled',
    formula: 'SUM#(pressPowerKw_# * holdingShare_# * hotMinutes_# / 60 * (used_# + testsShared_#))',
    says: 'Press power × holding share × press minutes, for good pieces and planned tests.',
  },
  {
    ...power,
    id: 'warmKwh',
    label: 'Warming up',
    formula: 'sessions * warmUpKwh / jobPieces',
    says: 'Once a session, shared by all pieces.',
  },
  {
    ...power,
    id: 'kwh',
    label: 'Electricity used',
    formula: 'holdKwhRun + holdKwhTests + warmKwh + printerPowerKw * printerMinutesPerSheet / 60 * sheets',
    says: 'Presses held hot, warm-up and printer.',
  },
  {
    ...power,
    id: 'kwhBase',
    label: 'Electricity, nothing spoiled',
    formula: 'holdKwhBase + warmKwh + printerPowerKw * printerMinutesPerSheet / 60 * sheetsBase',
    says: 'For good pieces and planned tests only.',
  },
  {
    ...time,
    id: 'orderTime',
    label: 'Time for the order',
    formula: '(enquiryMinutes + proofMinutes + packMinutes + deliverMinutes) / jobPieces',
    says: 'Enquiry, proof, packing and delivery, shared by all pieces.',
  },
  {
    ...time,
    id: 'designs',
    unit: 'designs',
    label: 'Designs',
    formula: 'SUM#(newDesign_# / designPieces_#)',
    says: 'Artworks prepared, shared by the pieces that carry them.',
  },
  {
    ...time,
    id: 'designTime',
    label: 'Time for the artwork',
    formula: 'SUM#(newDesign_# * prepMinutes_# / designPieces_#)',
    says: 'Once for each artwork, shared by the pieces that carry it.',
  },
  {
    ...time,
    id: 'sessionTime',
    label: 'Time for the session',
    formula: 'sessions * (setUpMinutes + cleanDownMinutes) / jobPieces',
    says: 'Setting up and cleaning down, shared by all pieces.',
  },
  {
    ...time,
    id: 'sellingTime',
    label: 'Time to sell it',
    formula: 'sellingMinutes',
    says: 'What the way of selling takes for a piece: its share of a stall day, or of the visits to a shop.',
  },
  {
    ...time,
    id: 'sheetTime',
    label: 'Time for sheets',
    formula: 'sheets * sheetMinutes',
    says: 'Each printed sheet.',
  },
  {
    ...time,
    id: 'pressTime',
    label: 'Time at the press',
    formula: 'SUM#(presses_# * handMinutes_#)',
    says: 'Each press, tests and spoiled pieces included.',
  },
  {
    ...time,
    id: 'runTime',
    label: 'Time for sheets, presses and finishing',
    formula: '(sheetTime + pressTime + finishMinutes) * (1 + restAllowance)',
    says: 'The paid minutes that grow with the pieces.',
  },
  {
    ...time,
    id: 'attended',
    label: 'Paid time',
    formula: '(orderTime + designTime + sessionTime + sellingTime) * (1 + restAllowance) + runTime',
    says: 'All minutes in which you are needed.',
  },
  {
    ...time,
    id: 'attendedBase',
    label: 'Paid time, nothing spoiled',
    formula:
      '(orderTime + designTime + sessionTime + sellingTime + sheetsBase * sheetMinutes + SUM#((used_# + testsShared_#) * handMinutes_#) + finishMinutes) * (1 + restAllowance)',
    says: 'For good pieces and planned tests only.',
  },
  {
    ...time,
    id: 'benchTime',
    label: 'Paid time at the bench and on the road',
    formula:
      'attended - (designTime + sellingTime + (enquiryMinutes + proofMinutes) / jobPieces) * (1 + restAllowance)',
    says: 'All paid time but enquiry, artwork, proof and selling: what must fit between blanks and delivery.',
  },
  {
    ...time,
    id: 'unattended',
    label: 'Unattended time',
    formula:
      'sheets * printerMinutesPerSheet + SUM#(presses_# * aloneMinutes_#) + sessions * warmUpMinutes / jobPieces',
    says: 'Printing, presses working alone and warm-up: nobody is paid for it.',
  },
  {
    ...time,
    id: 'elapsed',
    label: 'Elapsed time, nothing overlapped',
    formula: 'attended + unattended',
    says: 'Paid and unattended time one after the other.',
  },
];
