/** Every rule of the check that this version knows, in the order in which findings are told. */
export const findingIds = [
  // documents and their references
  'DOC-01', // a document or request does not have the form it must have
  'DOC-02', // something is named that is not there
  // what is printed on
  'SUB-01',
  'SUB-02',
  'SUB-04',
  'SUB-05',
  'SUB-06',
  'SUB-09',
  'SUB-12',
  // artwork
  'ART-01',
  'ART-02',
  'ART-03',
  'ART-04',
  'ART-05',
  'ART-06',
  'ART-07',
  'ART-08',
  'ART-09',
  'ART-10',
  'ART-11',
  'ART-12',
  'ART-13',
  'ART-14',
  'ART-15',
  'ART-16',
  // sheets
  'LAY-01',
  'LAY-02',
  'LAY-03',
  'LAY-04',
  'LAY-05',
  'LAY-06',
  'LAY-07',
  'LAY-08',
  'LAY-09',
  'LAY-10',
  'LAY-11',
  'LAY-12',
  'LAY-13',
  'LAY-14',
  // placement and press
  'PLC-01',
  'PLC-02',
  'PLC-05',
  'PLC-07',
  'PLC-08',
  // recipe
  'REC-01',
  'REC-02',
  'REC-03',
  'REC-04',
  'REC-05',
  'REC-06',
  'REC-12',
  // quantities
  'QTY-01',
  'QTY-02',
  'QTY-04',
  'QTY-08',
  // rates
  'RATE-01',
  'RATE-02',
  'RATE-03',
  'RATE-04',
  'RATE-05',
  'RATE-06',
  'RATE-07',
  'RATE-08',
  // the maker's own rows
  'ROW-01', // a formula cannot be read
  'ROW-02', // formulas go round in a circle
  'ROW-03', // a row came out as an error
  // time
  'TIM-01',
  'TIM-02',
  // safety and law
  'ELE-01',
  'SAF-01',
  'LAW-01',
  'LAW-02',
  'LAW-05',
] as const;

export type FindingId = (typeof findingIds)[number];
