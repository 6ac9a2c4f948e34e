import { type RateKey, type RateSpec, rateSpec } from '@/app/_workshop/rateSpec';
import { isPriceOfForm } from '@/lib/job/isPriceOfForm';
import { customaryTerms } from '@/lib/studies/channels/channelOffer';
import { numberLimits } from '@/shared/limits';
import {
  type Channel,
  channelSchema,
  type Packaging,
  type Press,
  type Printer,
  packagingSchema,
  pressSchema,
  printerSchema,
  type Sheet,
  sheetSchema,
} from '@/shared/schemas/workshop';
import {
  channelTypicals,
  otherTypicals,
  pressTypicals,
  printerTypicals,
  sellingTypicals,
} from '@/shared/tables/typicalRates';

const byAge = 'Leave it empty where use wears it out before age does.';

/** The rates of a printer. */
export const printerRates: readonly RateSpec<Printer>[] = [
  rateSpec(ofPrinter('powerKw'), printerTypicals.powerKw),
  rateSpec(ofPrinter('unattendedMinutesPerSheet'), printerTypicals.unattendedMinutesPerSheet),
  rateSpec(ofPrinter('blackShare'), printerTypicals.blackShare, {
    hint: '0 where it has no black ink. The less of it, the more ink dark pictures take. Prints noted before keep the ink of then.',
  }),
  rateSpec(ofPrinter('price'), printerTypicals.price),
  rateSpec(ofPrinter('resale'), printerTypicals.resale),
  rateSpec(ofPrinter('lifeSheets'), printerTypicals.lifeSheets),
  rateSpec(ofPrinter('lifeYears'), printerTypicals.lifeYears, {
    isOptional: true,
    hint: byAge,
  }),
  rateSpec(ofPrinter('sheetsPerYear'), printerTypicals.sheetsPerYear, {
    isOptional: true,
    hint: 'Counts only together with its years.',
  }),
];

/** The rates of a press of its kind. */
export function pressRates(kind: Press['kind']): readonly RateSpec<Press>[] {
  const typical = pressTypicals[kind];
  return [
    rateSpec(ofPress('powerKw'), typical.powerKw),
    rateSpec(ofPress('warmUpMinutes'), typical.warmUpMinutes),
    rateSpec(ofPress('holdingShare'), typical.holdingShare),
    rateSpec(ofPress('protectivePaper'), typical.protectivePaper),
    rateSpec(ofPress('tape'), typical.tape),
    rateSpec(ofPress('price'), typical.price),
    rateSpec(ofPress('resale'), typical.resale),
    rateSpec(ofPress('lifePresses'), typical.lifePresses),
    rateSpec(ofPress('lifeYears'), typical.lifeYears, { isOptional: true, hint: byAge }),
    rateSpec(ofPress('pressesPerYear'), typical.pressesPerYear, {
      isOptional: true,
      hint: 'Counts only together with its years.',
    }),
    rateSpec(ofPress('partsPrice'), typical.partsPrice, {
      isOptional: true,
      hint: 'Leave it empty where nothing is changed.',
    }),
    rateSpec(ofPress('partsInterval'), typical.partsInterval, {
      isOptional: true,
    }),
  ];
}

/** The price of a sheet. */
export const sheetRates = (form: Sheet['form']): readonly RateSpec<Sheet>[] => [
  rateSpec(
    // A price for the other form of paper is no price of this one.
    { ...ofSheet('price'), of: (sheet) => (isPriceOfForm(sheet) ? sheet.price : null) },
    form === 'roll' ? otherTypicals.rollPrice : otherTypicals.sheetPrice,
  ),
];

/** The price of packing one piece. */
export const packagingRates: readonly RateSpec<Packaging>[] = [
  rateSpec(ofPackaging('perPiece'), otherTypicals.packagingPerPiece),
];

/** The tax and fees of a channel that have a meaning for its kind and tax mode. */
export function channelRates({ kind, taxMode }: Channel): readonly RateSpec<Channel>[] {
  const typical = channelTypicals[kind];
  // Nobody stands between at one's own stall and for one's own orders.
  const isOwn = kind === 'order' || kind === 'stall';
  const isTaxed = taxMode === 'added' || taxMode === 'inside';
  return [
    // No rate of tax is typical of all places, so none is offered.
    ...(isTaxed ? [rateSpec(ofChannel('tax'), { ...typical.tax, typical: null })] : []),
    rateSpec(ofChannel('commission'), isOwn ? { ...typical.commission, typical: 0 } : typical.commission, {
      hint: '0 where nobody stands between.',
    }),
    rateSpec(ofChannel('cardShare'), typical.cardShare),
    rateSpec(ofChannel('cardFee'), typical.cardFee),
    rateSpec(ofChannel('cardFixedFee'), typical.cardFixedFee),
    ...(kind === 'stall' ? [rateSpec(ofChannel('piecesPerTicket'), typical.piecesPerTicket)] : []),
    ...(kind === 'wholesale'
      ? [
          rateSpec(ofChannel('shareOfRetail'), sellingTypicals.shareOfRetail, {
            isOptional: true,
            hint: 'Half of what the last buyer pays is customary.',
          }),
        ]
      : []),
    rateSpec(
      ofChannel('sellingMinutesPerPiece'),
      { ...sellingTypicals.sellingMinutesPerPiece, typical: customaryTerms[kind].sellingMinutesPerPiece },
      {
        isOptional: true,
        hint: 'On top of making it; at a stall the hours of a day over the pieces it sells. Every job sold this way bears them.',
      },
    ),
    ...(kind === 'order'
      ? []
      : [
          rateSpec(ofChannel('dayCost'), sellingTypicals.dayCost, {
            isOptional: true,
            hint: 'Stall, drive, parking, insurance. Leave it empty where there are no such days.',
          }),
          rateSpec(ofChannel('dayPieces'), sellingTypicals.dayPieces, {
            isOptional: true,
            hint: 'Each of them bears its share of the day.',
          }),
        ]),
  ];
}

// Helpers

function ofPrinter(key: RateKey<Printer>) {
  return { key, of: (part: Printer) => part[key], limits: numberLimits(printerSchema, [key, 'value']) };
}

function ofPress(key: RateKey<Press>) {
  return { key, of: (part: Press) => part[key], limits: numberLimits(pressSchema, [key, 'value']) };
}

function ofSheet(key: RateKey<Sheet>) {
  return { key, of: (part: Sheet) => part[key], limits: numberLimits(sheetSchema, [key, 'value']) };
}

function ofPackaging(key: RateKey<Packaging>) {
  return { key, of: (part: Packaging) => part[key], limits: numberLimits(packagingSchema, [key, 'value']) };
}

function ofChannel(key: RateKey<Channel>) {
  return { key, of: (part: Channel) => part[key], limits: numberLimits(channelSchema, [key, 'value']) };
}
