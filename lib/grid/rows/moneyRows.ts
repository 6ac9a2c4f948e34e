import { everyLine, spoiledLines } from '@/lib/grid/costLines';
import type { RowDefinition } from '@/lib/grid/rowTypes';

const adds = { table: 'case', total: 'adds', unit: 'money' } as const;
const materials = { ...adds, family: 'materials' } as const;
const running = { ...adds, family: 'running' } as const;
const time = { ...adds, family: 'time' } as const;
const house = { ...adds, family: 'house' } as const;
const loss = { ...adds, family: 'loss' } as const;

/**
 * Money of one good piece. A cost line stands at its baseline (good pieces and planned tests); the row with
 * `Expected` adds what rejects, scrap and faulty blanks use up; normal spoilage is the sum of the gaps.
 */
export const moneyRows = [
  {
    ...materials,
    id: 'blanks',
    label: 'Blanks with freight',
    formula: 'blankPrice + freightIn / jobPieces',
    whole: 'SIZES(blankPrice) + freightIn',
    says: 'The blank of this size and its share of the freight.',
  },
  {
    ...materials,
    id: 'blanksExpected',
    label: 'Blanks with freight, expected use',
    formula: 'blankPrice * blanksPerPiece + freightIn / jobPieces',
    whole: 'SIZES(blankPrice) * blanksPerPiece + freightIn',
    says: 'Spoiled and faulty blanks included.',
  },
  {
    ...materials,
    id: 'paper',
    label: 'Sheets',
    formula: 'sheetsBase * sheetPrice',
    whole: 'itself',
    says: 'Transfer paper for good pieces and planned tests.',
  },
  {
    ...materials,
    id: 'paperExpected',
    label: 'Sheets, expected use',
    formula: 'sheets * sheetPrice',
    whole: 'itself',
    says: 'Replacements and rejects included.',
  },
  {
    ...materials,
    id: 'ink',
    label: 'Ink',
    formula: 'inkMlBase * inkPrice',
    whole: 'itself',
    says: 'Printed, lost while printing and lost to cleaning.',
  },
  {
    ...materials,
    id: 'inkExpected',
    label: 'Ink, expected use',
    formula: 'inkMl * inkPrice',
    whole: 'itself',
    says: 'Rejected and spoiled prints included.',
  },
  {
    ...materials,
    id: 'supplies',
    label: 'Tape and protective paper',
    formula: 'SUM#((used_# + testsShared_#) * suppliesOfPress_#)',
    whole: 'SUM#((goodPieces + testsShared_#) * suppliesOfPress_#)',
    says: 'Used up at each press.',
  },
  {
    ...materials,
    id: 'suppliesExpected',
    label: 'Tape and protective paper, expected use',
    formula: 'SUM#(presses_# * suppliesOfPress_#)',
    whole: 'itself',
    says: 'Presses of spoiled pieces included.',
  },
  {
    ...running,
    id: 'electricity',
    label: 'Electricity',
    formula: 'kwhBase * tariff',
    whole: 'itself',
    says: 'Press minutes, warm-up and printer.',
  },
  {
    ...running,
    id: 'electricityExpected',
    label: 'Electricity, expected use',
    formula: 'kwh * tariff',
    whole: 'itself',
    says: 'Presses of spoiled pieces included.',
  },
  {
    ...running,
    id: 'wear',
    label: 'Equipment wear',
    formula: 'SUM#((used_# + testsShared_#) * pressWear_#) + sheetsBase * printerWear',
    whole: 'SUM#((goodPieces + testsShared_#) * pressWear_#) + sheetsBase * printerWear',
    says: 'Each press and each sheet uses up a little of the machine.',
  },
  {
    ...running,
    id: 'wearExpected',
    label: 'Equipment wear, expected use',
    formula: 'SUM#(presses_# * pressWear_#) + sheets * printerWear',
    whole: 'itself',
    says: 'Presses and sheets of spoiled pieces included.',
  },
  {
    ...time,
    id: 'labour',
    label: 'Your time',
    formula: 'attendedBase / 60 * wage',
    whole: 'wage * ((orderTime + designTime + sessionTime + sellingTime) * restFactor + runTimeBase) / 60',
    says: 'Paid minutes at your pay.',
  },
  {
    ...time,
    id: 'labourExpected',
    label: 'Your time, expected use',
    formula: 'attended / 60 * wage',
    whole: 'wage * ((orderTime + designTime + sessionTime + sellingTime) * restFactor + runTime) / 60',
    says: 'Minutes on spoiled pieces included.',
  },
  {
    ...house,
    id: 'overhead',
    label: 'Overhead',
    formula: 'attendedBase / 60 * overheadRate',
    whole: 'itself',
    says: 'Paid minutes at the overhead of an hour.',
  },
  {
    ...house,
    id: 'overheadExpected',
    label: 'Overhead, expected use',
    formula: 'attended / 60 * overheadRate',
    whole: 'itself',
    says: 'Minutes on spoiled pieces included.',
  },
  {
    ...house,
    id: 'packaging',
    label: 'Packaging',
    formula: 'packagingPerPiece + packagingPerOrder / jobPieces',
    whole: 'goodPieces * packagingPerPiece + packagingPerOrder',
    says: 'For the piece, and its share of the carton.',
  },
  {
    ...house,
    id: 'delivery',
    label: 'Delivery, selling day',
    formula: 'deliveryKm * travelRate / jobPieces + dayCost / dayPieces',
    whole: 'deliveryKm * travelRate + goodPieces * dayCost / dayPieces',
    says: 'The drive, shared by all pieces, and the piece’s share of a selling day.',
  },
  {
    ...loss,
    id: 'spoilage',
    label: 'Normal spoilage',
    formula: spoiledLines,
    whole: 'itself',
    says: 'What rejects, scrap and faulty blanks add to the lines above in good running.',
  },
  {
    ...materials,
    id: 'reprintMaterials',
    label: 'Materials a reprint needs',
    formula: 'blankPrice * blanksPerPiece + paperExpected + suppliesExpected + inkExpected',
    whole: 'SIZES(blankPrice) * blanksPerPiece + paperExpected + suppliesExpected + inkExpected',
    says: 'Without freight.',
  },
  {
    ...loss,
    id: 'reprints',
    label: 'Reprint allowance',
    formula: 'reprintShare * (reprintMaterials + runTime / 60 * (wage + overheadRate))',
    whole: 'itself',
    says: 'Set aside for pieces made again for nothing: their materials and run minutes.',
  },
  {
    ...adds,
    family: 'price',
    id: 'fullCost',
    label: 'Full cost',
    formula: everyLine,
    whole: 'itself',
    says: 'Everything a good piece costs, your own pay included, fees not.',
  },
  {
    ...adds,
    family: 'price',
    id: 'incrementalCost',
    label: 'Cost of one more',
    formula:
      'blankPrice * blanksPerPiece + SUM#(sheetsRun_#) * (sheetPrice + printerWear) + SUM#(entering_# * (suppliesOfPress_# + pressWear_#)) + inkRun * inkPrice + (SUM#(sheetsRun_#) * sheetMinutes + SUM#(entering_# * handMinutes_#) + finishMinutes) * (1 + restAllowance) / 60 * wage + holdKwhRun * tariff',
    says: 'Materials, run minutes, wear and holding power: no order, artwork, session or overhead.',
  },
] as const satisfies readonly RowDefinition[];
