import { newParts } from '@/lib/drafts/newParts';
import { typicalsOf } from '@/lib/drafts/typicalsOf';
import { usualCharges } from '@/shared/schemas/charges';
import { untoldHabits } from '@/shared/schemas/habits';
import { untoldPapers, untoldSeller, usualQuoting } from '@/shared/schemas/seller';
import { usualChosenBreaks } from '@/shared/schemas/sellingRule';
import type { Workshop } from '@/shared/schemas/workshop';
import { currencyDigits } from '@/shared/tables/currencies';
import { type RateName, rateDefinition, rateNames } from '@/shared/tables/rateCatalogue';
import { mmFromInches } from '@/shared/units';
import { type Region, usualSheet } from './regionOf';

/**
 * A workshop with nothing but what is typical: one printer, one flat press, one sheet, two ways of selling.
 *
 * @param day the day it begins, YYYY-MM-DD
 * @param home its money, its numbers and its units
 */
export function freshWorkshop(day: string, region: Region): Workshop {
  const part = newParts(day, region);
  const isInch = region.units.length === 'in';
  const sheet = usualSheet(region);
  /** A gap that clears every check, round in the maker's own unit. */
  const gap = isInch ? mmFromInches(0.25) : 7;
  return {
    name: 'My workshop',
    ...region,
    rates: catalogueRates(typicalsOf(day, region.currency)),
    printers: [part.printer('printer-1', 'Printer')],
    presses: [part.press('press-1', 'Flat press', 'flat')],
    sheets: [part.sheet('sheet-1', `${sheet.name} sheet`, sheet)],
    packagings: [part.packaging('packaging-1', 'Bag and sticker')],
    channels: [
      part.channel('orders', 'Own orders', 'order'),
      part.channel('market-stall', 'Market stall', 'stall'),
    ],
    blocks: null,
    daysOff: [],
    seller: untoldSeller,
    papers: untoldPapers,
    quoting: usualQuoting,
    circuit: null,
    room: { ventilated: null, foodOvenUsed: false },
    habits: untoldHabits,
    policy: {
      listRule: 'capped',
      breaks: null,
      chosenBreaks: usualChosenBreaks,
      // Half a dollar, or the nearest to it a currency without cents has.
      priceStep: currencyDigits(region.currency) === 0 ? 10 : 0.5,
      gutterMm: gap,
      tapeMarginMm: gap,
      wearInOverhead: false,
      taxRounding: 'document',
      upChargeStep: null,
      charges: usualCharges,
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
