import { isPriceOfForm } from '@/lib/job/isPriceOfForm';
import { customaryTerms } from '@/lib/studies/channels/channelOffer';
import type { Channel, Packaging, Press, Printer, Sheet } from '@/shared/schemas/workshop';
import {
  channelTypicals,
  otherTypicals,
  pressTypicals,
  printerTypicals,
  sellingTypicals,
} from '@/shared/tables/typicalRates';
import { type RateSpec, rateSpec } from './rateSpec';

const byAge = 'Leave it empty where use wears it out before age does.';

/** The rates of a printer. */
export const printerRates: readonly RateSpec<Printer>[] = [
  rateSpec('powerKw', (printer) => printer.powerKw, printerTypicals.powerKw),
  rateSpec(
    'unattendedMinutesPerSheet',
    (printer) => printer.unattendedMinutesPerSheet,
    printerTypicals.unattendedMinutesPerSheet,
  ),
  rateSpec('price', (printer) => printer.price, printerTypicals.price),
  rateSpec('resale', (printer) => printer.resale, printerTypicals.resale),
  rateSpec('lifeSheets', (printer) => printer.lifeSheets, printerTypicals.lifeSheets, { min: 1 }),
  rateSpec('lifeYears', (printer) => printer.lifeYears, printerTypicals.lifeYears, {
    isOptional: true,
    hint: byAge,
  }),
  rateSpec('sheetsPerYear', (printer) => printer.sheetsPerYear, printerTypicals.sheetsPerYear, {
    isOptional: true,
    hint: 'Counts only together with its years.',
  }),
];

/** The rates of a press of its kind. */
export function pressRates(kind: Press['kind']): readonly RateSpec<Press>[] {
  const typical = pressTypicals[kind];
  return [
    rateSpec('powerKw', (press) => press.powerKw, typical.powerKw),
    rateSpec('warmUpMinutes', (press) => press.warmUpMinutes, typical.warmUpMinutes),
    rateSpec('holdingShare', (press) => press.holdingShare, typical.holdingShare, { max: 1 }),
    rateSpec('protectivePaper', (press) => press.protectivePaper, typical.protectivePaper),
    rateSpec('tape', (press) => press.tape, typical.tape),
    rateSpec('price', (press) => press.price, typical.price),
    rateSpec('resale', (press) => press.resale, typical.resale),
    rateSpec('lifePresses', (press) => press.lifePresses, typical.lifePresses, { min: 1 }),
    rateSpec('lifeYears', (press) => press.lifeYears, typical.lifeYears, { isOptional: true, hint: byAge }),
    rateSpec('pressesPerYear', (press) => press.pressesPerYear, typical.pressesPerYear, {
      isOptional: true,
      hint: 'Counts only together with its years.',
    }),
    rateSpec('partsPrice', (press) => press.partsPrice, typical.partsPrice, {
      isOptional: true,
      hint: 'Leave it empty where nothing is changed.',
    }),
    rateSpec('partsInterval', (press) => press.partsInterval, typical.partsInterval, {
      isOptional: true,
      min: 1,
    }),
  ];
}

/** The price of a sheet. */
export const sheetRates = (form: Sheet['form']): readonly RateSpec<Sheet>[] => [
  rateSpec(
    'price',
    // A price for the other form of paper is no price of this one.
    (sheet) => (isPriceOfForm(sheet) ? sheet.price : null),
    form === 'roll' ? otherTypicals.rollPrice : otherTypicals.sheetPrice,
  ),
];

/** The price of packing one piece. */
export const packagingRates: readonly RateSpec<Packaging>[] = [
  rateSpec('perPiece', (packaging) => packaging.perPiece, otherTypicals.packagingPerPiece),
];

/** The tax and fees of a channel that have a meaning for its kind and tax mode. */
export function channelRates({ kind, taxMode }: Channel): readonly RateSpec<Channel>[] {
  const typical = channelTypicals[kind];
  // Nobody stands between at one's own stall and for one's own orders.
  const isOwn = kind === 'order' || kind === 'stall';
  const isTaxed = taxMode === 'added' || taxMode === 'inside';
  return [
    // No rate of tax is typical of all places, so none is offered.
    ...(isTaxed
      ? [rateSpec<Channel>('tax', (channel) => channel.tax, { ...typical.tax, typical: null }, { max: 1 })]
      : []),
    rateSpec(
      'commission',
      (channel) => channel.commission,
      isOwn ? { ...typical.commission, typical: 0 } : typical.commission,
      {
        hint: '0 where nobody stands between.',
      },
    ),
    rateSpec('cardShare', (channel) => channel.cardShare, typical.cardShare, { max: 1 }),
    rateSpec('cardFee', (channel) => channel.cardFee, typical.cardFee),
    rateSpec('cardFixedFee', (channel) => channel.cardFixedFee, typical.cardFixedFee),
    ...(kind === 'stall'
      ? [
          rateSpec<Channel>(
            'piecesPerTicket',
            (channel) => channel.piecesPerTicket,
            typical.piecesPerTicket,
            { min: 1 },
          ),
        ]
      : []),
    ...(kind === 'wholesale'
      ? [
          rateSpec<Channel>(
            'shareOfRetail',
            (channel) => channel.shareOfRetail,
            sellingTypicals.shareOfRetail,
            { max: 1, isOptional: true, hint: 'Half of what the last buyer pays is customary.' },
          ),
        ]
      : []),
    rateSpec<Channel>(
      'sellingMinutesPerPiece',
      (channel) => channel.sellingMinutesPerPiece,
      { ...sellingTypicals.sellingMinutesPerPiece, typical: customaryTerms[kind].sellingMinutesPerPiece },
      { isOptional: true, hint: 'On top of making it. Counts where ways of selling are compared.' },
    ),
  ];
}
