import type { Formatter } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { BuyingTrouble } from '@/lib/buying/buyingTrouble';
import type { SupplyItem } from '@/shared/schemas/making/supply';

/** @returns what is wrong with a list, what it would cause, how to mend it. */
export function buyingTroubleWords(
  trouble: BuyingTrouble,
  names: { readonly item: (item: SupplyItem) => string; readonly supplier: (id: string | null) => string },
  {
    currency,
    formatter,
    locale,
  }: { readonly currency: string; readonly formatter: Formatter; readonly locale: string },
): string {
  const number = (value: number) => formatter.number(value);
  switch (trouble.what) {
    case 'uncosted':
      return `Something stops ${trouble.name}, so nothing of it is in this list. Mend it on its own screen.`;
    case 'made':
      return `${trouble.name ?? 'A job that is not here any more'} is laid out or pressed already: nothing of it is in this list.`;
    case 'madeBefore':
      return `${trouble.name ?? 'A job that is not here any more'} was made, its run is closed: this list buys for it once more. Put the list away if that is not meant.`;
    case 'jobGone':
      return 'A job of this list is not here any more: it is left out. Bring it back, or take it off the list.';
    case 'negativeStock':
      return `More of ${names.item(trouble.item)} went out than came in (${number(trouble.onHand)}): none is reckoned with. Count what lies there.`;
    case 'reservedBeyond':
      return `${number(trouble.reserved)} of ${names.item(trouble.item)} are promised and ${number(trouble.onHand)} lie here: none is free for this list.`;
    case 'noPrice':
      return `Nobody has told what ${names.item(trouble.item)} costs: it is in no sum. Type its price, or an offer of it.`;
    case 'heldBelowNeed':
      return `You buy ${number(trouble.held)} of ${names.item(trouble.item)} where ${number(trouble.toBuy)} are needed: some pieces may be missing at the end.`;
    case 'heldNotPacks':
      return `${number(trouble.held)} of ${names.item(trouble.item)} fill no whole packs: ${number(trouble.buy)} would be bought.`;
    case 'heldUnneeded':
      return `Nothing here needs ${names.item(trouble.item)}, so your ${number(trouble.held)} of it are not bought. Empty the number.`;
    case 'chosenGone':
      return `The offer you chose for ${names.item(trouble.item)} from ${names.supplier(trouble.supplierId)} is not there any more: it is bought where it costs least.`;
    case 'late':
      return `${names.item(trouble.item)} had to be ordered by ${formatter.day(trouble.orderBy)}: it comes too late for the press. Look for another supplier or a later day.`;
    case 'freightUnknown':
      if (trouble.supplierId === null)
        return 'No supplier is named for some of it, so its freight is in no sum. Add an offer of it to a supplier.';
      return `Nobody has told the freight of ${names.supplier(trouble.supplierId)}: it is in no sum. Type it there, 0 where it comes free.`;
    case 'belowMinimum':
      return `The order to ${names.supplier(trouble.supplierId)} is ${minorMoney(trouble.shortMinor, currency, locale)} short of the least they take. Buy more there, or elsewhere.`;
    case 'tiersNotRising':
      return `Price steps of ${names.supplier(trouble.supplierId)} do not rise by quantity. They are read by quantity; put them in order.`;
    case 'tierDearer':
      return `From ${number(trouble.from)} on ${names.supplier(trouble.supplierId)} asks more each than for fewer. If that is a slip, the list costs too much.`;
    case 'tierTwice':
      return `${names.supplier(trouble.supplierId)} has two prices from ${number(trouble.from)}: the higher is reckoned with. Remove one.`;
    case 'offerUnknownSize':
      return `An offer of ${names.supplier(trouble.supplierId)} is of size ${trouble.size}, which its blank has not: it is passed over.`;
    default:
      return trouble satisfies never;
  }
}
