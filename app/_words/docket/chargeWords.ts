import type { Formatter } from '@/app/_words/formatter';
import type { Borne, Charge, ChargesAnswer } from '@/lib/studies/charges/chargesAnswer';
import { formatMinor, fromMinor, type MinorUnits } from '@/shared/money';

interface ChargeWords {
  readonly key: string;
  readonly name: string;
  readonly says: string;
  /** What to write; null where nothing is to be charged. */
  readonly amount: MinorUnits | null;
}

/** A charge in words: what it is, what it stands on, and whether the price of the job pays for it already. */
export function chargeWords(charge: Charge, currency: string, formatter: Formatter): ChargeWords {
  const cost = formatter.money(charge.cost);
  const amount = charge.written;
  switch (charge.id) {
    case 'minimumOrder': {
      const { covers, paidByList } = charge;
      return {
        key: charge.id,
        name: 'Least order',
        says:
          paidByList === null
            ? `An order of one piece costs you ${cost}. ${covers < 1 ? 'One piece is listed for more than that.' : `The charge covers ${formatter.count(covers, 'piece')} at your listed prices.`}`
            : `Your list pays this already: its first order, ${formatter.count(paidByList.from, 'piece')}, comes to ${formatter.money(fromMinor(paidByList.total, currency))}. Nothing to charge beside it.`,
        amount: paidByList === null ? amount : null,
      };
    }
    case 'design':
      return {
        key: `design ${charge.name}`,
        name: `Setting up ${charge.name}`,
        says: `Preparing and testing it costs ${cost}, once; a repeat does without. ${artWords(charge.art, formatter)}${borneWords(charge.borne, formatter)}`,
        amount,
      };
    case 'sample':
      return {
        key: `sample ${charge.line ?? ''}`,
        name: charge.line === null ? 'A pressed sample' : `A pressed sample of ${charge.line}`,
        says: `One ${charge.size} pressed before the order costs ${cost}: the piece, a session for it and a carton. Artwork, tests, freight and the drive stay with the order. Take it off when the order comes.`,
        amount,
      };
    case 'placement':
      return {
        key: `placement ${charge.line} ${charge.name}`,
        name: `${charge.name}, a piece`,
        says: `It adds ${cost} to each ${charge.line}: its press, its paper and all that it spoils.${borneWords(charge.borne, formatter)}`,
        amount,
      };
    case 'name':
      return {
        key: charge.id,
        name: 'A name',
        says: `Typing and checking it, and a sheet of its own: ${cost} each.`,
        amount,
      };
    case 'fold':
      return {
        key: charge.id,
        name: 'Folding and bagging, a piece',
        says: `The minutes cost ${cost} each. The price bears ${formatter.count(charge.finishing, 'minute')} of finishing already; this is for more than that.`,
        amount,
      };
    case 'split':
      return {
        key: charge.id,
        name: 'Splitting the order by name',
        says: `The minutes cost ${cost}, once an order.`,
        amount,
      };
    case 'change':
      return {
        key: charge.id,
        name: 'A late change, after approval',
        says: `The minutes cost ${cost}; what has to be printed again comes on top.`,
        amount,
      };
    case 'delivery':
      return {
        key: charge.id,
        name: 'Delivery',
        says: `The way there and back, and its minutes, cost ${cost}.${borneWords(charge.borne, formatter)}`,
        amount,
      };
    default:
      return charge satisfies never;
  }
}

function borneWords(borne: Borne, formatter: Formatter): string {
  if (borne.kind === 'apart') return '';
  const each = borne.per === 'piece' ? 'a piece' : 'the order';
  return ` The target price of ${formatter.money(borne.withIt)} ${each} bears it; charged apart, it would be ${formatter.money(borne.withoutIt)}.`;
}

function artWords(art: Extract<Charge, { id: 'design' }>['art'], formatter: Formatter): string {
  switch (art.kind) {
    case 'included':
      return 'An art fee by the hour would count none of it.';
    case 'hourly':
      return `An art fee by the hour would count ${formatter.count(art.chargedMinutes, 'minute')} of it.`;
    case 'quoted':
      return 'A redraw is quoted before it is begun.';
    default:
      return art satisfies never;
  }
}

/** The charges that most orders meet, for one line: rush where it applies, a name, a late change. */
export function likelyCharges(
  { charges, rush, currency }: ChargesAnswer,
  formatter: Formatter,
  locale: string,
): readonly { readonly name: string; readonly amount: string }[] {
  const names = { name: 'a name', change: 'a late change' } as const;
  const each = charges.flatMap((charge) =>
    charge.id === 'name' || charge.id === 'change'
      ? [{ name: names[charge.id], amount: formatMinor(charge.written, currency, locale) }]
      : [],
  );
  return rush?.outcome.kind === 'rush'
    ? [{ name: 'rush', amount: `+ ${formatter.share(rush.outcome.share)}` }, ...each].slice(0, 2)
    : each;
}

/** Whether an order is to bear a share for being wanted soon. */
export function rushWords(rush: ChargesAnswer['rush'], formatter: Formatter): string {
  if (rush === null) return 'Nobody has said when it is wanted.';
  const days = `${formatter.count(rush.wantedDays, 'working day')} ${rush.wantedDays === 1 ? 'is' : 'are'} left; you usually take ${formatter.number(rush.normalDays, 0)}.`;
  switch (rush.outcome.kind) {
    case 'none':
      return `${days} Nothing to charge.`;
    case 'noCapacity':
      return `${days} Your free hours do not suffice: no share buys hours that are not there. Agree on another day.`;
    case 'rush':
      return `${days} Customary shares are from memory; set your own in the workshop.`;
    default:
      return rush.outcome satisfies never;
  }
}
