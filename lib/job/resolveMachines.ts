import type { Where } from '@/shared/finding';
import type { Job } from '@/shared/schemas/job';
import type { Rate } from '@/shared/schemas/rate';
import type { Channel, Packaging, Press, Printer, Sheet, Workshop } from '@/shared/schemas/workshop';
import type { TypicalRate } from '@/shared/tables/typicalRates';
import {
  channelTypicals,
  otherTypicals,
  pressTypicals,
  printerTypicals,
  sellingTypicals,
} from '@/shared/tables/typicalRates';
import type { Known, KnownChannel, KnownPress, KnownPrinter } from './checkedJob';
import { isPriceOfForm } from './isPriceOfForm';
import { neededChannelRates } from './neededRates';
import type { TakeRate, UsedRate } from './usedRate';

type WorkshopList = 'printers' | 'presses' | 'sheets' | 'packagings' | 'channels';

/**
 * @param needsBlackShare whether any ink of the job hangs on it
 * @returns the machine with every rate its costs need; years of life stay open where the maker gives none,
 *   because wear is then by use alone
 */
export function resolvePrinter(
  workshop: Workshop,
  printer: Printer,
  take: TakeRate,
  needsBlackShare: boolean,
): KnownPrinter {
  const of = fieldOf(workshop, 'printers', printer, take);
  const price = of('price', printer.price, printerTypicals.price);
  return {
    ...printer,
    powerKw: of('powerKw', printer.powerKw, printerTypicals.powerKw),
    unattendedMinutesPerSheet: of(
      'unattendedMinutesPerSheet',
      printer.unattendedMinutesPerSheet,
      printerTypicals.unattendedMinutesPerSheet,
    ),
    price,
    resale: of('resale', printer.resale, noMoreThan(price, printerTypicals.resale)),
    lifeSheets: of('lifeSheets', printer.lifeSheets, printerTypicals.lifeSheets),
    blackShare: of('blackShare', printer.blackShare, printerTypicals.blackShare, needsBlackShare),
    lifeYears: printer.lifeYears && of('lifeYears', printer.lifeYears, printerTypicals.lifeYears),
    // Years of life say nothing without the sheets of a year.
    sheetsPerYear:
      printer.lifeYears && of('sheetsPerYear', printer.sheetsPerYear, printerTypicals.sheetsPerYear),
  };
}

/** @returns the press with every rate its costs need; parts and years stay open where the maker gives none. */
export function resolvePress(workshop: Workshop, press: Press, take: TakeRate): KnownPress {
  const of = fieldOf(workshop, 'presses', press, take);
  const typical = pressTypicals[press.kind];
  const price = of('price', press.price, typical.price);
  return {
    ...press,
    powerKw: of('powerKw', press.powerKw, typical.powerKw),
    warmUpMinutes: of('warmUpMinutes', press.warmUpMinutes, typical.warmUpMinutes),
    holdingShare: of('holdingShare', press.holdingShare, typical.holdingShare),
    price,
    resale: of('resale', press.resale, noMoreThan(price, typical.resale)),
    lifePresses: of('lifePresses', press.lifePresses, typical.lifePresses),
    lifeYears: press.lifeYears && of('lifeYears', press.lifeYears, typical.lifeYears),
    pressesPerYear: press.lifeYears && of('pressesPerYear', press.pressesPerYear, typical.pressesPerYear),
    partsPrice: press.partsPrice && of('partsPrice', press.partsPrice, typical.partsPrice),
    partsInterval: press.partsPrice && of('partsInterval', press.partsInterval, typical.partsInterval),
    protectivePaper: of('protectivePaper', press.protectivePaper, typical.protectivePaper),
    tape: of('tape', press.tape, typical.tape),
  };
}

export function resolveSheet(workshop: Workshop, sheet: Sheet, take: TakeRate): Known<Sheet> {
  const of = fieldOf(workshop, 'sheets', sheet, take);
  const typical = sheet.form === 'roll' ? otherTypicals.rollPrice : otherTypicals.sheetPrice;
  // A price for the other form of paper is told of by a rule of its own.
  const isOfForm = isPriceOfForm(sheet);
  return { ...sheet, price: of('price', isOfForm ? sheet.price : null, typical, isOfForm) };
}

export function resolvePackaging(workshop: Workshop, packaging: Packaging, take: TakeRate): Known<Packaging> {
  const of = fieldOf(workshop, 'packagings', packaging, take);
  return { ...packaging, perPiece: of('perPiece', packaging.perPiece, otherTypicals.packagingPerPiece) };
}

export function resolveChannel(workshop: Workshop, job: Job, channel: Channel, take: TakeRate): KnownChannel {
  const of = fieldOf(workshop, 'channels', channel, take);
  const needed = neededChannelRates(channel, job);
  const typical = channelTypicals[channel.kind];
  return {
    ...channel,
    tax: of('tax', channel.tax, typical.tax, needed.has('tax')),
    commission: of('commission', channel.commission, typical.commission, needed.has('commission')),
    cardFee: of('cardFee', channel.cardFee, typical.cardFee, needed.has('cardFee')),
    cardFixedFee: of('cardFixedFee', channel.cardFixedFee, typical.cardFixedFee, needed.has('cardFixedFee')),
    cardShare: of('cardShare', channel.cardShare, typical.cardShare, needed.has('cardShare')),
    piecesPerTicket: of(
      'piecesPerTicket',
      channel.piecesPerTicket,
      typical.piecesPerTicket,
      needed.has('piecesPerTicket'),
    ),
    // Selling counts as soon as it is known; where nobody has said it the price says that it is not in it.
    sellingMinutesPerPiece:
      channel.sellingMinutesPerPiece &&
      of('sellingMinutesPerPiece', channel.sellingMinutesPerPiece, sellingTypicals.sellingMinutesPerPiece),
    dayCost: channel.dayCost && of('dayCost', channel.dayCost, sellingTypicals.dayCost),
    dayPieces: channel.dayCost && of('dayPieces', channel.dayPieces, sellingTypicals.dayPieces),
  };
}

/** What machines of a kind typically fetch is too much for one that cost less than that. */
const noMoreThan = (price: Rate, resale: TypicalRate): TypicalRate => ({
  ...resale,
  typical: resale.typical === null ? null : Math.min(resale.typical, price.value),
});

function fieldOf(
  workshop: Workshop,
  list: WorkshopList,
  part: { readonly id: string; readonly name: string },
  take: TakeRate,
) {
  const index = workshop[list].findIndex(({ id }) => id === part.id);
  return (field: string, rate: Rate | null, typical: TypicalRate, needed = true): Rate => {
    const where: Where = { document: 'workshop', path: [list, index, field] };
    const used: UsedRate = { rate, typical, where, of: part.name, needed, whenMissing: 'caution' };
    return take(used);
  };
}
