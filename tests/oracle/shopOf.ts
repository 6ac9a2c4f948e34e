import type { Decimal } from 'decimal.js';
import type { Rate } from '@/shared/schemas/rate';
import type { JobInput } from '@/shared/schemas/request';
import type { Press, Printer } from '@/shared/schemas/workshop';
import type { RateName } from '@/shared/tables/rateCatalogue';
import { exact, greater, known, ONE, sum, ZERO } from './exact';
import { metresOfLetter } from './stripOf';

/* NIST SP 811 (2008), Appendix B.8, both exact: 1 in² = 6.4516 × 10⁻⁴ m², 1 mile = 1.609 344 km. */
const SQUARE_METRES_IN_SQUARE_INCH = exact('0.00064516');
const KILOMETRES_IN_MILE = exact('1.609344');

/** Everything that is the same for every piece of a job, in decimals. Minutes are those paid once an order etc. */
export type Shop = ReturnType<typeof shopOf>;

/** Reads what holds for the whole job: the job's own rate, else the workshop's. */
export function shopOf(input: JobInput) {
  const { job, workshop } = input;
  const rateOf = (name: RateName): Rate => known(job.rates[name] ?? workshop.rates[name], name);
  const rate = (name: RateName) => exact(rateOf(name).value);
  const printer = known(
    workshop.printers.find(({ id }) => id === job.printerId),
    'printer',
  );
  const sheet = known(
    workshop.sheets.find(({ id }) => id === job.sheetId),
    'sheet',
  );
  const presses = heatedPresses(input);
  const toOrder = job.madeFor === 'order';
  const delivered = toOrder && job.deliveryKm !== null;
  const laydown = rateOf('laydown');
  const once = (name: RateName) => (toOrder ? rate(name) : ZERO);
  const enquiryAndProof = once('enquiryMinutes').plus(once('proofMinutes'));
  return {
    ...feesOf(input),
    wage: rate('wage'),
    /** Rest lengthens every paid minute. */
    restFactor: ONE.plus(rate('restAllowance')),
    overheadRate: rate('overheadPerYear').div(rate('overheadHours')),
    tariff: rate('tariff'),
    inkPrice: rate('inkPrice'),
    /** Null where nobody said it, which matters to pictures that were read alone. */
    blackShare: printer.blackShare === null ? null : exact(printer.blackShare.value),
    inkFactor: ONE.plus(rate('inkLoss')),
    /** Millilitres on a square metre where one channel covers fully. */
    laydown:
      laydown.unit === 'mL/in2'
        ? exact(laydown.value).div(SQUARE_METRES_IN_SQUARE_INCH)
        : exact(laydown.value),
    sessionInk: rate('sessionInk'),
    kept: ONE.minus(rate('sheetReject')),
    reprintShare: rate('reprintShare'),
    sheetMinutes: rate('sheetMinutes'),
    sheetPrice:
      sheet.form === 'roll'
        ? exact(known(sheet.price, 'price of a metre').value).times(metresOfLetter(sheet.widthMm))
        : exact(known(sheet.price, 'sheet price').value),
    printerWear: wear(printer.price, printer.resale, printer.lifeSheets, ...byAge(printer)),
    printerMinutes: exact(known(printer.unattendedMinutesPerSheet, 'printer minutes').value),
    printerKwh: kwh(printer.powerKw, exact(known(printer.unattendedMinutesPerSheet, 'minutes').value)),
    enquiryAndProof,
    orderMinutes: enquiryAndProof.plus(once('packMinutes')).plus(delivered ? rate('deliverMinutes') : ZERO),
    sessionMinutes: rate('setUpMinutes').plus(rate('cleanDownMinutes')),
    orderPackaging: once('packagingPerOrder'),
    delivery: delivered ? exact(job.deliveryKm ?? 0).times(perKilometre(rateOf('travelRate'))) : ZERO,
    freight: job.freightIn === null ? ZERO : exact(job.freightIn.value),
    warmUpMinutes: sum(presses.map(({ warmUpMinutes }) => exact(known(warmUpMinutes, 'warm-up').value))),
    warmUpKwh: sum(
      presses.map((press) => kwh(press.powerKw, exact(known(press.warmUpMinutes, 'warm-up').value))),
    ),
    piecesPerSession: job.piecesPerSession,
    targetMargin: rate('targetMargin'),
  };
}

/** Wear of one press: by use or by age, whichever is more, and its share of a set of spare parts. */
export function pressWear(press: Press): Decimal {
  const age: readonly [Rate | null, Rate | null] = [press.lifeYears, press.pressesPerYear];
  const machine = wear(press.price, press.resale, press.lifePresses, ...age);
  if (press.partsPrice === null) return machine;
  return machine.plus(
    exact(press.partsPrice.value).div(exact(known(press.partsInterval, 'parts interval').value)),
  );
}

/** Kilowatt-hours of a power held for some minutes. */
export const kwh = (power: Rate | null, minutes: Decimal): Decimal =>
  exact(known(power, 'power').value).times(minutes).div(60);

function wear(
  price: Rate | null,
  resale: Rate | null,
  life: Rate | null,
  years: Rate | null,
  perYear: Rate | null,
): Decimal {
  const loss = exact(known(price, 'price').value).minus(exact(known(resale, 'resale').value));
  const byUse = loss.div(exact(known(life, 'life').value));
  if (years === null) return byUse;
  const usesInYears = exact(years.value).times(exact(known(perYear, 'uses in a year').value));
  return usesInYears.gt(0) ? greater(byUse, loss.div(usesInYears)) : byUse;
}

const byAge = (printer: Printer): readonly [Rate | null, Rate | null] => [
  printer.lifeYears,
  printer.sheetsPerYear,
];

const perKilometre = (travel: Rate): Decimal =>
  travel.unit === 'money/mi' ? exact(travel.value).div(KILOMETRES_IN_MILE) : exact(travel.value);

/** Each press that any placement uses, once: all of them are warmed up in every session. */
function heatedPresses({ job, workshop }: JobInput): readonly Press[] {
  const ids = new Set(job.lines.flatMap((line) => line.placements.map(({ pressId }) => pressId)));
  return workshop.presses.filter(({ id }) => ids.has(id));
}

/** What the way of selling takes. Fees on the price without tax: commission on either base, the card fee on what the buyer pays by card. */
function feesOf({ job, workshop }: JobInput) {
  const channel = known(
    workshop.channels.find(({ id }) => id === job.channelId),
    'channel',
  );
  const share = (rate: Rate | null) => (rate === null ? ZERO : exact(rate.value));
  const tax = channel.taxMode === 'none' ? ZERO : exact(known(channel.tax, 'tax').value);
  const withTax = ONE.plus(tax);
  const commission = share(channel.commission).times(channel.commissionBase === 'withTax' ? withTax : ONE);
  const card = share(channel.cardFee).times(share(channel.cardShare)).times(withTax);
  const isStall = channel.kind === 'stall';
  return {
    /** A typed price holds this many parts of the price without tax. */
    typedFactor: channel.taxMode === 'inside' ? withTax : ONE,
    feeShare: commission.plus(card),
    /** Selling a piece, where the way of selling says how long that takes. */
    sellingMinutes: share(channel.sellingMinutesPerPiece),
    /** A stall day costs the same whatever is made for it: each of the pieces it sells bears as much. */
    dayEach:
      channel.dayCost === null
        ? ZERO
        : exact(channel.dayCost.value).div(exact(known(channel.dayPieces, 'pieces of a day').value)),
    cardFixedFee: share(channel.cardFixedFee),
    cardPayments: isStall ? ZERO : exact(job.cardPayments),
    cardTicketsPerPiece:
      isStall && channel.piecesPerTicket !== null
        ? share(channel.cardShare).div(exact(channel.piecesPerTicket.value))
        : ZERO,
  };
}
