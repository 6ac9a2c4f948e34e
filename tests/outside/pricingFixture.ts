import type { CostedJob } from '@/lib/grid/costJob';
import type { Press, Printer } from '@/shared/schemas/workshop';
import type { RateUnit } from '@/shared/tables/rateCatalogue';
import { changed, club } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

const day = '2026-11-25';
const none = <const Unit extends RateUnit>(unit: Unit) =>
  ({ value: 0, unit, date: day, origin: 'yours' }) as const;

/** One thing of a textbook that is sold: what a piece costs, what it sells for, and its part of the mix. */
export interface Thing {
  readonly variable: number;
  readonly price: number;
  readonly perSet: number;
}

/**
 * A textbook’s business as a job: variable cost as the price of the blank, fixed cost as a row of the maker's own,
 * everything else free.
 */
export function business(fixed: number, things: readonly Thing[]): CostedJob {
  const input = club();
  const { workshop, job } = input;
  const [line] = job.lines;
  const shirt = input.blanks['white-shirt'];
  const size = shirt?.sizes[0];
  const placement = line?.placements[0];
  const own = workshop.channels.find(({ id }) => id === job.channelId);
  if (line === undefined || shirt === undefined || size === undefined || placement === undefined || !own)
    throw new Error('the example lacks a part');
  const free = {
    ...input,
    blanks: Object.fromEntries(
      things.map(({ variable }, index) => [
        `thing-${index}`,
        {
          ...shirt,
          blankFault: none('share'),
          finishMinutes: none('min'),
          sizes: [{ ...size, price: { value: variable, unit: 'money/piece', date: day, origin: 'yours' } }],
        },
      ]),
    ),
    workshop: {
      ...workshop,
      rates: Object.fromEntries(
        Object.entries(workshop.rates).map(([name, rate]) => [
          name,
          // Hours divide the yearly cost and may not be none; a minute of enquiry keeps pay an hour a number.
          name === 'overheadHours' || name === 'enquiryMinutes' ? rate : rate && { ...rate, value: 0 },
        ]),
      ) as typeof workshop.rates,
      printers: workshop.printers.map((printer): Printer => ({ ...printer, price: printer.resale })),
      presses: workshop.presses.map(
        (press): Press => ({
          ...press,
          price: press.resale,
          partsPrice: null,
          partsInterval: null,
          protectivePaper: none('money/press'),
          tape: none('money/press'),
        }),
      ),
      sheets: workshop.sheets.map((sheet) => ({ ...sheet, price: none('money/sheet') })),
      channels: [{ ...own, cardShare: none('share'), cardFixedFee: none('money/ticket') }],
    },
    job: {
      ...job,
      freightIn: null,
      deliveryKm: null,
      lines: things.map(({ price, perSet }, index) => ({
        ...line,
        id: `thing-${index}`,
        blankId: `thing-${index}`,
        packagingId: null,
        quantities: [{ size: size.name, quantity: perSet }],
        orderedQuantity: null,
        askedPrice: price,
        upCharges: [],
        placements: [{ ...placement, id: `print-${index}`, scrap: none('share'), testPresses: 0 }],
      })),
      ownRows: [
        {
          id: 'own_fixed',
          label: 'Fixed cost',
          outOfPocket: true,
          cost: {
            kind: 'driver',
            driver: 'order',
            amount: { value: fixed, unit: 'money', date: day, origin: 'yours' },
          },
        },
      ],
    },
  };
  return costed(changed(free as unknown as typeof input, {}));
}
