import type { Formatter } from '@/app/_words/formatter';
import type { Charge, ChargesAnswer } from '@/lib/studies/charges/chargesAnswer';

interface ChargeWords {
  readonly key: string;
  readonly name: string;
  readonly says: string;
}

/** A charge in words: what it is, and what it stands on. */
export function chargeWords(charge: Charge, formatter: Formatter): ChargeWords {
  const cost = formatter.money(charge.cost);
  switch (charge.id) {
    case 'minimumOrder':
      return {
        key: charge.id,
        name: 'Least order',
        says: `An order of one piece costs you ${cost}. ${charge.covers < 1 ? 'Your listed price of one piece is more than the charge.' : `The charge covers ${formatter.count(charge.covers, 'piece')} at your listed prices.`}`,
      };
    case 'design':
      return {
        key: `design ${charge.name}`,
        name: `Setting up ${charge.name}`,
        says: `Preparing and testing it costs ${cost}, once; a repeat does without. ${artWords(charge.art, formatter)}`,
      };
    case 'sample':
      return {
        key: charge.id,
        name: 'A pressed sample',
        says: `One piece by itself costs ${cost}. Take it off the order when that comes.`,
      };
    case 'placement':
      return {
        key: `placement ${charge.line} ${charge.name}`,
        name: `${charge.name}, a piece`,
        says: `It adds ${cost} to each ${charge.line}: its press, its paper and all that it spoils.`,
      };
    case 'name':
      return {
        key: charge.id,
        name: 'A name',
        says: `Typing and checking it, and a sheet of its own: ${cost} each.`,
      };
    case 'fold':
      return { key: charge.id, name: 'Folding and bagging, a piece', says: `The minutes cost ${cost} each.` };
    case 'split':
      return {
        key: charge.id,
        name: 'Splitting the order by name',
        says: `The minutes cost ${cost}, once an order.`,
      };
    case 'change':
      return {
        key: charge.id,
        name: 'A change after approval',
        says: `The minutes cost ${cost}; what has to be printed again comes on top.`,
      };
    case 'delivery':
      return {
        key: charge.id,
        name: 'Delivery',
        says: `The way there and back, and its minutes, cost ${cost}. The price of the pieces bears it already: charge it apart only if you take it out there.`,
      };
    default:
      return charge satisfies never;
  }
}

function artWords(art: Extract<Charge, { id: 'design' }>['art'], formatter: Formatter): string {
  switch (art.kind) {
    case 'included':
      return 'Its minutes are within those that the price includes.';
    case 'hourly':
      return `${formatter.count(art.chargedMinutes, 'minute')} of it are beyond what the price includes.`;
    case 'quoted':
      return 'A redraw is quoted before it is begun.';
    default:
      return art satisfies never;
  }
}

/** Whether an order is to bear a share for being wanted soon. */
export function rushWords(rush: ChargesAnswer['rush'], formatter: Formatter): string {
  if (rush === null) return 'Nobody has said when it is wanted.';
  const days = `${formatter.count(rush.wantedDays, 'working day')} are left; you usually take ${formatter.number(rush.normalDays, 0)}.`;
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
