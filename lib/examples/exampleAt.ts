import { renameSize } from '@/lib/drafts/renameSize';
import type { Blank } from '@/shared/schemas/blank';
import type { Job, Line, Placement } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import type { Workshop } from '@/shared/schemas/workshop';
import type { SheetSize } from '@/shared/tables/sheetSizes';
import { celsiusFromFahrenheit } from '@/shared/units';
import { blanksMm, channelTax, dropsMm, linePrices, printsMm } from './exampleMetric';
import { type Region, usualSheet } from './regionOf';
import { moneySize, scaleMoney, timesExact } from './scaleMoney';

/** Where the example was worked first. */
const home: Region = {
  locale: 'en-US',
  currency: 'USD',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
};

/**
 * One of the example jobs as a maker of another place would have it: money of the size usual there, and where
 * lengths are metric also sheets, sizes and prints that are customary in millimetres, and tax inside the prices.
 *
 * @param input the job as it was worked first, in dollars and inches
 * @returns the same job for that place
 */
export function exampleAt(input: JobInput, region: Region): JobInput {
  if (region.locale === home.locale && region.currency === home.currency) return input;
  const isMetric = region.units.length === 'mm';
  const times = moneySize(region.currency) ?? 1;
  const inUnits = isMetric ? metricInput(input, usualSheet(region)) : input;
  const scaled = scaleMoney(inUnits, times);
  return {
    ...scaled,
    workshop: {
      ...scaled.workshop,
      ...region,
      rates: ratesOf(scaled.workshop, region),
      policy: { ...scaled.workshop.policy, priceStep: timesExact(scaled.workshop.policy.priceStep, times) },
    },
    job: {
      ...scaled.job,
      lines: scaled.job.lines.map((line) => lineAt(line, region, times)),
    },
  };
}

function ratesOf({ rates }: Workshop, { units }: Region): Workshop['rates'] {
  const { travelRate } = rates;
  if (units.distance === 'mi' || travelRate === null) return rates;
  // 0.60 a mile is 0.37 a kilometre; what is customary there is a round 0.35.
  return {
    ...rates,
    travelRate: { ...travelRate, value: timesExact(travelRate.value, 0.35 / 0.6), unit: 'money/km' },
  };
}

function lineAt(line: Line, { units }: Region, times: number): Line {
  const money = (amount: number) => timesExact(amount, times);
  return {
    ...line,
    askedPrice: line.askedPrice === null ? null : money(line.askedPrice),
    askedStart: line.askedStart === null ? null : money(line.askedStart),
    upCharges: line.upCharges.map((charge) => ({ ...charge, amount: money(charge.amount) })),
    marketCeiling: line.marketCeiling === null ? null : money(line.marketCeiling),
    placements: line.placements.map(({ recipe, ...placement }) => ({
      ...placement,
      recipe: { ...recipe, temperature: inScale(recipe.temperature, units.temperature) },
    })),
  };
}

/** Dials in °C are set in steps of five. */
function inScale(
  { value, unit }: Placement['recipe']['temperature'],
  scale: 'F' | 'C',
): Placement['recipe']['temperature'] {
  return unit === scale || scale === 'F'
    ? { value, unit }
    : { value: Math.round(celsiusFromFahrenheit(value) / 5) * 5, unit: 'C' };
}

function metricInput(input: JobInput, sheet: SheetSize): JobInput {
  const mug = blanksMm['white-mug'];
  const blanks = Object.fromEntries(
    Object.entries(input.blanks).map(([id, blank]) => [id, metricBlank(id, blank)]),
  );
  const job = renameSize(input.job, {
    blankId: 'white-mug',
    from: '11 oz',
    to: mug?.sizes[0]?.name ?? '11 oz',
  });
  return {
    ...input,
    workshop: metricWorkshop(input.workshop, sheet),
    blanks,
    job: metricJob(job),
  };
}

function metricWorkshop(workshop: Workshop, { name, widthMm, heightMm }: SheetSize): Workshop {
  const gap = 7;
  const { laydown } = workshop.rates;
  return {
    ...workshop,
    // 0.0065 mL on a square inch, to the nearest whole on a square metre.
    rates: { ...workshop.rates, laydown: laydown && { ...laydown, value: 10, unit: 'mL/m2' } },
    printers: workshop.printers.map((printer) => ({ ...printer, marginMm: 3 })),
    presses: workshop.presses.map((press) =>
      press.platen === null
        ? press
        : { ...press, name: 'Flat press 38 × 38 cm', platen: { widthMm: 380, heightMm: 380 } },
    ),
    sheets: workshop.sheets.map((sheet) => ({
      ...sheet,
      name: `${name} sheet`,
      widthMm,
      heightMm,
    })),
    channels: workshop.channels.map((channel) => ({
      ...channel,
      taxMode: 'inside',
      tax: channel.tax && { ...channel.tax, value: channelTax },
    })),
    circuit: { volts: 230, amps: 16, otherWatts: 0 },
    policy: { ...workshop.policy, gutterMm: gap, tapeMarginMm: gap },
  };
}

function metricBlank(id: string, blank: Blank): Blank {
  const metric = blanksMm[id];
  if (metric === undefined) return blank;
  return {
    ...blank,
    name: metric.name ?? blank.name,
    sizes: blank.sizes.map((size, at) => {
      const own = metric.sizes[at];
      if (own === undefined) return size;
      const [widthMm, heightMm] = own.print;
      return {
        ...size,
        name: own.name ?? size.name,
        widthMm: own.widthMm,
        wrap: size.wrap && own.wrap ? { ...size.wrap, ...own.wrap } : size.wrap,
        maxPrints: size.maxPrints.map((most) =>
          most.position.endsWith('Chest')
            ? { ...most, widthMm: 115, heightMm: 115 }
            : { ...most, widthMm, heightMm },
        ),
      };
    }),
  };
}

function metricJob(job: Job): Job {
  return {
    ...job,
    // Twelve miles there and back, to the nearest ten kilometres.
    deliveryKm: job.deliveryKm === null ? null : 20,
    lines: job.lines.map((line) => ({
      ...line,
      ...(linePrices[line.id] ?? linePrices[line.blankId]),
      placements: line.placements.map((placement) => metricPlacement(placement)),
    })),
  };
}

function metricPlacement(placement: Placement): Placement {
  const size = printsMm[placement.artworkId];
  const { recipe, position, dropFromCollarMm } = placement;
  return {
    ...placement,
    prints: size
      ? placement.prints.map((print) => ({ ...print, widthMm: size[0], heightMm: size[1] }))
      : placement.prints,
    dropFromCollarMm: dropFromCollarMm === null ? null : (dropsMm[position] ?? dropFromCollarMm),
    // 40 psi on a gauge in bar: 2.8.
    recipe: { ...recipe, pressureKpa: recipe.pressureKpa === null ? null : 280 },
  };
}
