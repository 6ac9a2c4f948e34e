/** Rows of the grid that a document sets, by the field of the document they come from. */
type Fields = Readonly<Record<string, string>>;

/** Fields of the job's printer. */
export const printerFields: Fields = {
  printerPowerKw: 'powerKw',
  printerMinutesPerSheet: 'unattendedMinutesPerSheet',
  printerPrice: 'price',
  printerResale: 'resale',
  printerLifeSheets: 'lifeSheets',
  printerLifeYears: 'lifeYears',
  printerSheetsPerYear: 'sheetsPerYear',
};

/** Fields of a press, without the number of the placement or press they stand for. */
export const pressFields: Fields = {
  warmPowerKw: 'powerKw',
  warmMinutes: 'warmUpMinutes',
  pressPowerKw: 'powerKw',
  holdingShare: 'holdingShare',
  pressPrice: 'price',
  pressResale: 'resale',
  pressLife: 'lifePresses',
  pressLifeYears: 'lifeYears',
  pressesPerYear: 'pressesPerYear',
  partsPrice: 'partsPrice',
  partsInterval: 'partsInterval',
  protectivePaper: 'protectivePaper',
  tape: 'tape',
};

/** Fields of the way of selling. */
export const channelFields: Fields = {
  tax: 'tax',
  taxInside: 'taxMode',
  commission: 'commission',
  commissionOnTax: 'commissionBase',
  cardFee: 'cardFee',
  cardFixedFee: 'cardFixedFee',
  cardShare: 'cardShare',
  isStall: 'kind',
  piecesPerTicket: 'piecesPerTicket',
  sellingMinutes: 'sellingMinutesPerPiece',
  dayCost: 'dayCost',
  dayPieces: 'dayPieces',
};

/** Fields of a placement. */
export const placementFields: Fields = {
  scrap: 'scrap',
  replaceAlone: 'replacements',
  tests: 'testPresses',
  handMinutes: 'handMinutes',
  aloneMinutes: 'aloneMinutes',
  hotMinutes: 'hotMinutes',
  areaM2: 'prints',
};

/** Fields of an artwork. */
export const artworkFields: Fields = { coverage: 'coverage', prepMinutes: 'prepMinutes' };

/** Fields of the job itself. */
export const jobFields: Fields = {
  freightIn: 'freightIn',
  deliveryKm: 'deliveryKm',
  cardPayments: 'cardPayments',
  piecesPerSession: 'piecesPerSession',
};

/** Fields of a line of the job. */
export const lineFields: Fields = {
  quantity: 'quantities',
  pieces: 'quantities',
  jobPieces: 'quantities',
  group: 'quantities',
  designPieces: 'quantities',
  askedPrice: 'askedPrice',
  askedStart: 'askedStart',
};
