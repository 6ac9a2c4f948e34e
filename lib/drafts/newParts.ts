import {
  type Channel,
  type Packaging,
  type Press,
  type Printer,
  type Sheet,
  unrated,
  type Workshop,
} from '@/shared/schemas/workshop';
import type { SheetSize } from '@/shared/tables/sheetSizes';
import { channelTypicals, otherTypicals, pressTypicals, printerTypicals } from '@/shared/tables/typicalRates';
import { mmFromInches } from '@/shared/units';
import { typicalsOf } from './typicalsOf';

/** Makes the parts a maker adds to a workshop; every figure is typical. */
interface NewParts {
  readonly printer: (id: string, name: string) => Printer;
  readonly press: (id: string, name: string, kind: Press['kind']) => Press;
  readonly sheet: (id: string, name: string, size: Pick<SheetSize, 'widthMm' | 'heightMm'>) => Sheet;
  readonly packaging: (id: string, name: string) => Packaging;
  readonly channel: (id: string, name: string, kind: Channel['kind']) => Channel;
}

/**
 * @param day the day their typical figures are set, YYYY-MM-DD
 * @param workshop its money and units
 */
export function newParts(day: string, { currency, units }: Pick<Workshop, 'currency' | 'units'>): NewParts {
  const typical = typicalsOf(day, currency);
  const isInch = units.length === 'in';
  const side = isInch ? mmFromInches(15) : 380;
  return {
    printer: (id, name) => ({
      id,
      name,
      powerKw: typical(printerTypicals.powerKw.typical, 'kW'),
      unattendedMinutesPerSheet: typical(printerTypicals.unattendedMinutesPerSheet.typical, 'min'),
      price: typical(printerTypicals.price.typical, 'money'),
      resale: typical(printerTypicals.resale.typical, 'money'),
      lifeSheets: typical(printerTypicals.lifeSheets.typical, 'sheets'),
      lifeYears: null,
      sheetsPerYear: null,
      marginMm: isInch ? mmFromInches(0.125) : 3,
      borderless: false,
      printedSide: null,
      ratedSheetsPerMonth: null,
      blackShare: typical(printerTypicals.blackShare.typical, 'share'),
      lightInks: null,
      longestPageMm: null,
      colourProfile: null,
    }),
    press: (id, name, kind) => {
      const of = pressTypicals[kind];
      return {
        id,
        name,
        kind,
        platen: kind === 'flat' ? { widthMm: side, heightMm: side } : null,
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
        rating: unrated,
      };
    },
    sheet: (id, name, { widthMm, heightMm }) => ({
      id,
      name,
      form: 'cut',
      widthMm,
      heightMm,
      rollLengthMm: null,
      paper: 'transfer',
      gramsPerSquareMetre: null,
      price: typical(otherTypicals.sheetPrice.typical, 'money/sheet'),
      mediaSetting: null,
    }),
    packaging: (id, name) => ({
      id,
      name,
      perPiece: typical(otherTypicals.packagingPerPiece.typical, 'money/piece'),
    }),
    channel: (id, name, kind) => {
      const of = channelTypicals[kind];
      const isOwn = kind === 'order' || kind === 'stall';
      return {
        id,
        name,
        kind,
        // Nobody but the maker can say whether their prices hold tax.
        taxMode: null,
        tax: null,
        // Nobody stands between at one's own stall and for one's own orders.
        commission: typical(isOwn ? 0 : of.commission.typical, 'share'),
        commissionBase: 'withoutTax',
        cardFee: typical(of.cardFee.typical, 'share'),
        cardFixedFee: typical(of.cardFixedFee.typical, 'money/ticket'),
        cardShare: typical(of.cardShare.typical, 'share'),
        piecesPerTicket: kind === 'stall' ? typical(of.piecesPerTicket.typical, 'pieces') : null,
        shareOfRetail: null,
        sellingMinutesPerPiece: null,
        dayCost: null,
        dayPieces: null,
        cashInDays: null,
      };
    },
  };
}
