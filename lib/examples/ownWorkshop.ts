import { newJob } from '@/lib/jobs/newJob';
import { typicalsOf } from '@/lib/jobs/typicalsOf';
import type { Channel, Press, Printer, Workshop } from '@/shared/schemas/workshop';
import { currencyDigits } from '@/shared/tables/currencies';
import { type RateName, rateDefinition, rateNames } from '@/shared/tables/rateCatalogue';
import { sheetSizes } from '@/shared/tables/sheetSizes';
import { channelTypicals, otherTypicals, pressTypicals, printerTypicals } from '@/shared/tables/typicalRates';
import { mmFromInches } from '@/shared/units';
import type { ExampleDocument } from './exampleDocuments';
import type { Home } from './homeOf';
import { startingBlank } from './startingBlanks';

/** Id of the job a new workshop begins with. */
export const OWN_JOB_ID = 'first-job';
/** Id of the shirt a new workshop begins with. */
export const OWN_BLANK_ID = 'first-shirt';
const OWN_ARTWORK_ID = 'first-picture';

/**
 * The documents of a maker's own workshop at its beginning: everything typical until touched, one printer, one
 * flat press, one sheet, two ways of selling, one shirt and one job to fill.
 *
 * @param day the day it begins, YYYY-MM-DD
 * @param home its money, its numbers and its units
 */
export function ownWorkshop(day: string, home: Home): readonly ExampleDocument[] {
  const workshop = firstWorkshop(day, home);
  const blank = startingBlank('shirt', day, home);
  const { job, artwork } = newJob({
    name: 'My first job',
    day,
    workshop,
    blank: { id: OWN_BLANK_ID, body: blank },
    artworkId: OWN_ARTWORK_ID,
  });
  return [
    { kind: 'workshop', id: 'workshop', body: workshop },
    { kind: 'blank', id: OWN_BLANK_ID, body: blank },
    { kind: 'artwork', id: OWN_ARTWORK_ID, body: artwork },
    { kind: 'job', id: OWN_JOB_ID, body: job },
  ];
}

function firstWorkshop(day: string, home: Home): Workshop {
  const typical = typicalsOf(day, home.currency);
  const isInch = home.units.length === 'in';
  const sheet = isInch ? sheetSizes.letter : sheetSizes.a4;
  /** A gap that clears every check, round in the maker's own unit. */
  const gap = isInch ? mmFromInches(0.25) : 7;
  return {
    name: 'My workshop',
    ...home,
    rates: catalogueRates(typical),
    printers: [firstPrinter(typical, isInch ? mmFromInches(0.125) : 3)],
    presses: [firstPress(typical, isInch ? mmFromInches(15) : 380)],
    sheets: [
      {
        id: 'sheet-1',
        name: `${sheet.name} sheet`,
        widthMm: sheet.widthMm,
        heightMm: sheet.heightMm,
        gramsPerSquareMetre: null,
        price: typical(otherTypicals.sheetPrice.typical, 'money/sheet'),
      },
    ],
    packagings: [
      {
        id: 'packaging-1',
        name: 'Bag and sticker',
        perPiece: typical(otherTypicals.packagingPerPiece.typical, 'money/piece'),
      },
    ],
    channels: [firstChannel(typical, 'order', 'Own orders'), firstChannel(typical, 'stall', 'Market stall')],
    freeHours: null,
    circuit: null,
    room: { ventilated: null, foodOvenUsed: false },
    policy: {
      breaks: [1, 6, 12, 24, 48],
      // Half a dollar, or the nearest to it a currency without cents has.
      priceStep: currencyDigits(home.currency) === 0 ? 10 : 0.5,
      gutterMm: gap,
      tapeMarginMm: gap,
      wearInOverhead: false,
    },
    ownRows: [],
  };
}

type Typical = ReturnType<typeof typicalsOf>;

function catalogueRates(typical: Typical): Workshop['rates'] {
  const rates = rateNames.map((name) => {
    const { units, typical: value } = rateDefinition(name);
    return [name, typical(value, units[0])] as const;
  });
  // One entry for each name of the catalogue, which the type of entries cannot say.
  return Object.fromEntries(rates) as Record<RateName, (typeof rates)[number][1]>;
}

function firstPrinter(typical: Typical, marginMm: number): Printer {
  const { powerKw, unattendedMinutesPerSheet, price, resale, lifeSheets } = printerTypicals;
  return {
    id: 'printer-1',
    name: 'Printer',
    powerKw: typical(powerKw.typical, 'kW'),
    unattendedMinutesPerSheet: typical(unattendedMinutesPerSheet.typical, 'min'),
    price: typical(price.typical, 'money'),
    resale: typical(resale.typical, 'money'),
    lifeSheets: typical(lifeSheets.typical, 'sheets'),
    lifeYears: null,
    sheetsPerYear: null,
    marginMm,
    borderless: false,
  };
}

function firstPress(typical: Typical, sideMm: number): Press {
  const of = pressTypicals.flat;
  return {
    id: 'press-1',
    name: 'Flat press',
    kind: 'flat',
    platen: { widthMm: sideMm, heightMm: sideMm },
    powerKw: typical(of.powerKw.typical, 'kW'),
    warmUpMinutes: typical(of.warmUpMinutes.typical, 'min'),
    holdingShare: typical(of.holdingShare.typical, 'share'),
    price: typical(of.price.typical, 'money'),
    resale: typical(of.resale.typical, 'money'),
    lifePresses: typical(of.lifePresses.typical, 'presses'),
    lifeYears: null,
    pressesPerYear: null,
    partsPrice: typical(of.partsPrice.typical, 'money'),
    partsInterval: typical(of.partsInterval.typical, 'presses'),
    protectivePaper: typical(of.protectivePaper.typical, 'money/press'),
    tape: typical(of.tape.typical, 'money/press'),
  };
}

function firstChannel(typical: Typical, kind: Channel['kind'], name: string): Channel {
  const of = channelTypicals[kind];
  return {
    id: kind,
    name,
    kind,
    // Nobody but the maker can say whether their prices hold tax.
    taxMode: null,
    tax: null,
    // Nobody stands between: own orders and an own stall pay no commission.
    commission: typical(0, 'share'),
    commissionBase: 'withoutTax',
    cardFee: typical(of.cardFee.typical, 'share'),
    cardFixedFee: typical(of.cardFixedFee.typical, 'money/ticket'),
    cardShare: typical(of.cardShare.typical, 'share'),
    piecesPerTicket: kind === 'stall' ? typical(of.piecesPerTicket.typical, 'pieces') : null,
  };
}
