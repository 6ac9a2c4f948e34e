import type { Blank } from '@/shared/schemas/blank';
import type { Channel, Press } from '@/shared/schemas/workshop';
import type { RateDefinition, RateUnit } from './rateCatalogue';

/** A rate that hangs on a machine, a placement, a blank or a channel; the workshop's own are in the catalogue. */
export interface TypicalRate {
  /** What the maker calls it. */
  readonly label: string;
  /** Unit of `typical` and `plausible`. */
  readonly unit: RateUnit;
  /** Taken while the maker has no figure, and marked as typical; null where nothing can be called typical. */
  readonly typical: number | null;
  /** Values outside are questioned (RATE-03). */
  readonly plausible: readonly [number, number];
  /** Sold by the pack, so that a pack price may slip in as the price of one (RATE-04). */
  readonly packed?: true;
}

/*
 * Starting values: common practice, from memory, for a bench at home with a letter-size printer. Money is in
 * units of the size of a dollar, a euro or a pound; see `typicalMoneyCurrencies`.
 */

const rate = (
  label: string,
  unit: RateUnit,
  typical: number | null,
  plausible: readonly [number, number],
): TypicalRate => ({ label, unit, typical, plausible });

const packedRate = (
  label: string,
  unit: RateUnit,
  typical: number,
  plausible: readonly [number, number],
): TypicalRate => ({ label, unit, typical, plausible, packed: true });

/** Currencies whose unit is worth about as much as a dollar, so that typical amounts mean something in them. */
export const typicalMoneyCurrencies: readonly string[] = [
  'USD',
  'EUR',
  'GBP',
  'CHF',
  'CAD',
  'AUD',
  'NZD',
  'SGD',
  'BND',
  'FJD',
  'BAM',
  'BGN',
  'AZN',
  'BBD',
  'BMD',
  'BSD',
  'BZD',
  'KYD',
  'XCD',
  'PAB',
  'FKP',
  'GIP',
  'SHP',
];

/** From memory: drivers keep much of the colour under black. Printers without black have 0. */
export const TYPICAL_BLACK_SHARE = 0.5;

export const printerTypicals = {
  powerKw: rate('Power of the printer while printing', 'kW', 0.015, [0.003, 2]),
  unattendedMinutesPerSheet: rate('Minutes the printer works on a sheet', 'min', 2.5, [0.05, 30]),
  price: rate('Price of the printer', 'money', 420, [30, 20_000]),
  resale: rate('What the printer will sell for when done', 'money', 40, [0, 10_000]),
  lifeSheets: rate('Sheets in the life of the printer', 'sheets', 12_000, [500, 500_000]),
  lifeYears: rate('Years in the life of the printer', 'years', 4, [0.5, 25]),
  sheetsPerYear: rate('Sheets printed in a year', 'sheets/year', 1500, [1, 200_000]),
  blackShare: rate('Share of the grey printed with black', 'share', TYPICAL_BLACK_SHARE, [0, 1]),
} as const satisfies Record<string, TypicalRate>;

type PressRateName =
  | 'powerKw'
  | 'warmUpMinutes'
  | 'holdingShare'
  | 'price'
  | 'resale'
  | 'lifePresses'
  | 'lifeYears'
  | 'pressesPerYear'
  | 'partsPrice'
  | 'partsInterval'
  | 'protectivePaper'
  | 'tape';

const pressRates = (values: {
  readonly kw: number;
  /** Weaker than any of its kind. */
  readonly leastKw: number;
  readonly warmUp: number;
  readonly holding: number;
  readonly price: number;
  readonly resale: number;
  readonly life: number;
  readonly parts: number;
  readonly tape: number;
}): Record<PressRateName, TypicalRate> => ({
  powerKw: rate('Power of the press', 'kW', values.kw, [values.leastKw, 12]),
  warmUpMinutes: rate('Minutes to warm up', 'min', values.warmUp, [1, 90]),
  holdingShare: rate('Share of full power while held hot', 'share', values.holding, [0.05, 1]),
  price: rate('Price of the press', 'money', values.price, [30, 20_000]),
  resale: rate('What the press will sell for when done', 'money', values.resale, [0, 10_000]),
  lifePresses: rate('Presses in the life of the press', 'presses', values.life, [500, 1_000_000]),
  lifeYears: rate('Years in the life of the press', 'years', 8, [0.5, 40]),
  pressesPerYear: rate('Presses in a year', 'presses/year', 2000, [1, 200_000]),
  partsPrice: rate('Price of pads and other wearing parts', 'money', 40, [1, 2000]),
  partsInterval: rate('Presses between changes of wearing parts', 'presses', values.parts, [50, 500_000]),
  protectivePaper: packedRate('Protective paper for a press', 'money/press', 0.035, [0.002, 1]),
  tape: packedRate('Tape or sleeve for a press', 'money/press', values.tape, [0.002, 2]),
});

export const pressTypicals: Record<Press['kind'], Record<PressRateName, TypicalRate>> = {
  flat: pressRates({
    kw: 1.4,
    leastKw: 0.4,
    warmUp: 15,
    holding: 0.4,
    price: 480,
    resale: 60,
    life: 30_000,
    parts: 10_000,
    tape: 0.03,
  }),
  mug: pressRates({
    kw: 0.35,
    leastKw: 0.15,
    warmUp: 8,
    holding: 0.5,
    price: 160,
    resale: 10,
    life: 6000,
    parts: 2000,
    tape: 0.05,
  }),
  tumbler: pressRates({
    kw: 0.45,
    leastKw: 0.2,
    warmUp: 10,
    holding: 0.5,
    price: 220,
    resale: 20,
    life: 6000,
    parts: 2000,
    tape: 0.06,
  }),
  oven: pressRates({
    kw: 1.5,
    leastKw: 0.5,
    warmUp: 15,
    holding: 0.4,
    price: 180,
    resale: 20,
    life: 5000,
    parts: 5000,
    tape: 0.4,
  }),
};

type PlacementRateName = 'scrap' | 'handMinutes' | 'aloneMinutes' | 'hotMinutes';

const placementRates = (
  scrap: number,
  hand: number,
  alone: number,
  hot: number,
): Record<PlacementRateName, TypicalRate> => ({
  scrap: rate('Share of presses that spoil the piece', 'share', scrap, [0, 0.4]),
  handMinutes: rate('Minutes of hands for a press', 'min', hand, [0.1, 60]),
  aloneMinutes: rate('Minutes the press works alone', 'min', alone, [0, 120]),
  hotMinutes: rate('Minutes the press is held hot for a piece', 'min', hot, [0.2, 120]),
});

export const placementTypicals: Record<Press['kind'], Record<PlacementRateName, TypicalRate>> = {
  flat: placementRates(0.03, 2.3, 0.2, 2.3),
  mug: placementRates(0.05, 2.8, 2.6, 4),
  tumbler: placementRates(0.08, 3, 2, 4),
  oven: placementRates(0.08, 3, 6, 8),
};

type BlankRateName = 'price' | 'blankFault' | 'finishMinutes';

const blankRates = (price: number, fault: number, finish: number): Record<BlankRateName, TypicalRate> => ({
  price: packedRate('Blank price', 'money/piece', price, [price / 15, price * 15]),
  blankFault: rate('Share of blanks faulty on arrival', 'share', fault, [0, 0.2]),
  finishMinutes: rate('Minutes to inspect, fold and bag a piece', 'min', finish, [0.05, 30]),
});

export const blankTypicals: Record<Blank['kind'], Record<BlankRateName, TypicalRate>> = {
  garment: blankRates(4.6, 0.01, 1.2),
  bag: blankRates(3, 0.01, 1),
  cushion: blankRates(4, 0.01, 1.2),
  drinkware: blankRates(2.1, 0.015, 1.5),
  panel: blankRates(5, 0.02, 1.5),
  mat: blankRates(1.5, 0.01, 0.8),
  tile: blankRates(2, 0.03, 1.5),
  small: blankRates(1, 0.02, 0.6),
};

type ChannelRateName = 'tax' | 'commission' | 'cardFee' | 'cardFixedFee' | 'cardShare' | 'piecesPerTicket';

const channelRates = (values: {
  readonly commission: number;
  readonly fixed: number;
  readonly cardShare: number;
  readonly pieces: number;
}): Record<ChannelRateName, TypicalRate> => ({
  // No rate of tax is typical of all places; this stands in between until the maker's own is known.
  tax: rate('Tax rate', 'share', 0.08, [0.005, 0.3]),
  commission: rate('Commission of the channel', 'share', values.commission, [0, 0.6]),
  cardFee: rate('Card fee', 'share', 0.029, [0, 0.08]),
  cardFixedFee: rate('Fixed card fee', 'money/ticket', values.fixed, [0, 2]),
  cardShare: rate('Share of the money paid by card', 'share', values.cardShare, [0, 1]),
  piecesPerTicket: rate('Pieces on a ticket', 'pieces', values.pieces, [1, 20]),
});

/** Commission is a market place's cut where none is known: 0 is a figure to be typed, not to be assumed. */
export const channelTypicals: Record<Channel['kind'], Record<ChannelRateName, TypicalRate>> = {
  order: channelRates({ commission: 0.05, fixed: 0.3, cardShare: 0.5, pieces: 1 }),
  stall: channelRates({ commission: 0.05, fixed: 0.1, cardShare: 0.75, pieces: 1.35 }),
  wholesale: channelRates({ commission: 0.05, fixed: 0.3, cardShare: 0.2, pieces: 10 }),
  consignment: channelRates({ commission: 0.4, fixed: 0.1, cardShare: 0.75, pieces: 1.35 }),
};

/** Terms of selling. From memory: sixty pieces go on a fair day of seven hours. */
export const sellingTypicals = {
  shareOfRetail: rate('Share of the last buyer’s price that a shop pays you', 'share', 0.5, [0.2, 1]),
  sellingMinutesPerPiece: rate('Minutes of selling that a piece takes', 'min', null, [0, 60]),
  dayCost: rate('Cost of a selling day', 'money', null, [0, 3000]),
  dayPieces: rate('Pieces sold on a selling day', 'pieces', 60, [1, 2000]),
} as const satisfies Record<string, TypicalRate>;

export const otherTypicals = {
  sheetPrice: packedRate('Price of a sheet of transfer paper', 'money/sheet', 0.14, [0.01, 8]),
  rollPrice: rate('Price of a metre of transfer paper from the roll', 'money/m', 1.2, [0.1, 60]),
  packagingPerPiece: packedRate('Packaging of a piece', 'money/piece', 0.2, [0.005, 10]),
  prepMinutes: rate('Minutes to check and prepare the artwork', 'min', 15, [0, 2400]),
  freightIn: rate('Freight in', 'money/order', 9.5, [0, 500]),
  ownRowAmount: rate('Amount of your own cost row', 'money', null, [0, 1e9]),
} as const satisfies Record<string, TypicalRate>;

/** Mean ink of a picture whose coverage is not known, all channels together; 1 = one channel covering fully. */
export const TYPICAL_TOTAL_COVERAGE = 1;

/** @returns a catalogue entry in the form of this table. */
export const typicalOfDefinition = (definition: RateDefinition): TypicalRate => ({
  label: definition.label,
  unit: definition.units[0],
  typical: definition.typical,
  plausible: definition.plausible,
});
