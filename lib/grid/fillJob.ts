import { ownAmountId } from '@/lib/grid/rows/ownRows';
import type { KnownPress, ResolvedJob } from '@/lib/job/checkedJob';
import { rollWorthMm } from '@/lib/layout/rollWorth';
import type { Rate } from '@/shared/schemas/rate';
import { type RateName, rateNames } from '@/shared/tables/rateCatalogue';
import { KM_PER_MILE, M2_PER_SQUARE_INCH } from '@/shared/units';
import type { GridColumn, GridInput } from './gridInput';

/** @returns the presses a job heats, each once, in the order of their first use. */
export function pressesOf(job: ResolvedJob): readonly KnownPress[] {
  const all = job.lines.flatMap((line) => line.placements.map((placement) => placement.press));
  return [...new Map(all.map((press) => [press.id, press])).values()];
}

/** The price of a sheet; of a roll, that of as much of it as counts for one. */
function paperPrice(sheet: ResolvedJob['sheet']): GridInput {
  const input = given(sheet.price);
  if (sheet.form === 'cut') return { ...input, about: sheet.name };
  const metres = rollWorthMm(sheet.widthMm) / 1000;
  return {
    ...input,
    value: sheet.price.value * metres,
    typed: { value: sheet.price.value, unit: sheet.price.unit },
    about: `${sheet.name}, as much of it as a letter sheet`,
  };
}

/**
 * @param presses that the grid has room for, where that is more than the job heats
 * @returns the values that stand once for the whole job, by row id
 */
export function fillJob(job: ResolvedJob, presses = 0): GridColumn {
  const { printer, channel, sheet } = job;
  const isStall = channel.kind === 'stall';
  const toOrder = job.job.madeFor === 'order';
  const travels = toOrder && job.job.deliveryKm !== null;
  const rates = Object.fromEntries(rateNames.map((name) => [name, rateInput(name, job)]));
  const none = (about: string): GridInput => ({ value: 0, origin: 'counted', about });
  const heated = pressesOf(job).map((press): readonly [GridInput, GridInput] => [
    { ...given(press.powerKw), about: press.name },
    { ...given(press.warmUpMinutes), about: press.name },
  ]);
  const cold = Array.from({ length: Math.max(0, presses - heated.length) }, () => {
    const unheated = none('not heated for this line');
    return [unheated, unheated] as const;
  });
  const warm = [...heated, ...cold].flatMap(([power, minutes], index): [string, GridInput][] => [
    [`warmPowerKw_${index + 1}`, power],
    [`warmMinutes_${index + 1}`, minutes],
  ]);
  const stock = 'made to stock: no order to serve';
  return {
    ...rates,
    ...(toOrder
      ? {}
      : {
          enquiryMinutes: none(stock),
          proofMinutes: none(stock),
          packMinutes: none(stock),
          packagingPerOrder: none(stock),
        }),
    ...(travels ? {} : { deliverMinutes: none('nothing is delivered') }),
    printerPowerKw: given(printer.powerKw),
    printerMinutesPerSheet: given(printer.unattendedMinutesPerSheet),
    printerPrice: given(printer.price),
    printerResale: given(printer.resale),
    printerLifeSheets: given(printer.lifeSheets),
    printerLifeYears: givenOr(printer.lifeYears, 0),
    printerSheetsPerYear: givenOr(printer.sheetsPerYear, 0),
    sheetPrice: paperPrice(sheet),
    freightIn: job.freightIn === null ? none('no freight') : given(job.freightIn),
    deliveryKm: travels ? typed(job.job.deliveryKm ?? 0) : none('nothing is delivered'),
    tax: taxOf(channel),
    taxInside: typed(channel.taxMode === 'inside' ? 1 : 0),
    commission: given(channel.commission),
    commissionOnTax: typed(channel.commissionBase === 'withTax' ? 1 : 0),
    cardFee: given(channel.cardFee),
    cardFixedFee: given(channel.cardFixedFee),
    cardShare: given(channel.cardShare),
    cardPayments: isStall ? none('counted by ticket') : typed(job.job.cardPayments),
    isStall: typed(isStall ? 1 : 0),
    piecesPerTicket: isStall
      ? given(channel.piecesPerTicket)
      : { value: 1, origin: 'counted', about: 'no tickets' },
    sellingMinutes:
      channel.sellingMinutesPerPiece === null
        ? none('no selling time is set for this way of selling')
        : { ...given(channel.sellingMinutesPerPiece), about: channel.name },
    ...dayOf(channel),
    piecesPerSession: typed(job.job.piecesPerSession ?? 0),
    ...Object.fromEntries(warm),
    ...Object.fromEntries(
      job.ownRows.flatMap((row) =>
        row.cost.kind === 'driver' && row.cost.amount !== null
          ? [[ownAmountId(row), given(row.cost.amount)] as const]
          : [],
      ),
    ),
  };
}

/** A rate as an input of the grid, in the unit it was typed in. */
export const given = (rate: Rate): GridInput => ({
  value: rate.value,
  origin: rate.origin,
  date: rate.date,
  ...(rate.count === undefined ? {} : { count: rate.count }),
});

/** A rate that may be unknown because nothing depends on it then. */
export const givenOr = (rate: Rate | null, neutral: number): GridInput =>
  rate === null ? { value: neutral, origin: 'counted', about: 'not used' } : given(rate);

/** A value that stands in a document without a date. */
export const typed = (value: number): GridInput => ({ value, origin: 'typed' });

function rateInput(name: RateName, job: ResolvedJob): GridInput {
  const rate: Rate = job.rates[name];
  if (rate.unit === 'mL/in2') return converted(rate, rate.value / M2_PER_SQUARE_INCH);
  if (rate.unit === 'money/mi') return converted(rate, rate.value / KM_PER_MILE);
  return given(rate);
}

function converted(rate: Rate, value: number): GridInput {
  return { ...given(rate), value, typed: { value: rate.value, unit: rate.unit } };
}

/** No tax is counted where the channel takes none, and none while it is not yet set: the check tells of that. */
function taxOf({ taxMode, tax }: ResolvedJob['channel']): GridInput {
  if (taxMode === null) return { value: 0, origin: 'counted', about: 'tax is not set yet' };
  return taxMode === 'none' ? { value: 0, origin: 'counted', about: 'no tax on this channel' } : given(tax);
}

/** A stall day is shared by the pieces it sells, not by those that are made in one go. */
function dayOf({ dayCost, dayPieces, name }: ResolvedJob['channel']): GridColumn {
  if (dayCost === null || dayPieces === null) {
    const none = { origin: 'counted', about: 'no selling day is set for this way of selling' } as const;
    return { dayCost: { ...none, value: 0 }, dayPieces: { ...none, value: 1 } };
  }
  return { dayCost: { ...given(dayCost), about: name }, dayPieces: { ...given(dayPieces), about: name } };
}
