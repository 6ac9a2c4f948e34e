import type { PaperTab } from '@/app/_words/orders/papers/paperTabWords';
import type { BoardOrder } from '@/lib/orders/board/todayList';

interface Tabs {
  /** Those that make sense now, and those of which one went out. */
  readonly first: readonly PaperTab[];
  readonly more: readonly PaperTab[];
  /** The one that is shown where nobody has chosen. */
  readonly next: PaperTab;
}

/** @returns the papers of an order in the order they are written in, what is not to be written now apart. */
export function tabsNow({ facts, standing }: Pick<BoardOrder, 'facts' | 'standing'>): Tabs {
  const { money, gates, state, acceptance, agreed } = standing;
  const out = new Set<string>(facts.happened.flatMap((one) => ('withdrawn' in one ? [one.kind] : [])));
  const isAgreed = acceptance !== null || agreed !== null;
  const isPacked = state === 'packed' || state === 'delivered' || state === 'paid' || state === 'closed';
  const makesSense: Readonly<Record<PaperTab, boolean>> = {
    quote: true,
    confirmation: isAgreed,
    // A picture can be shown as soon as there is one, before anybody has said yes to a price.
    proof: facts.artworks.length > 0 && (isAgreed ? gates.approval === 'shut' : standing.lastQuote !== null),
    paymentRequest: isAgreed && (money.dueMinor ?? 0) > 0,
    invoice: isAgreed && (isPacked || money.isPaid || state === 'checked'),
    receipt: money.receivedMinor > 0,
    creditNote: false,
    deliveryNote: isPacked || state === 'checked',
    careCard: isPacked || state === 'checked',
  };
  const first = all.filter((tab) => makesSense[tab] || out.has(tab));
  return { first, more: all.filter((tab) => !first.includes(tab)), next: nextOf(standing) };
}

// Helpers

const all: readonly PaperTab[] = [
  'quote',
  'confirmation',
  'proof',
  'paymentRequest',
  'invoice',
  'receipt',
  'creditNote',
  'deliveryNote',
  'careCard',
];

function nextOf({ state, gates, money }: BoardOrder['standing']): PaperTab {
  switch (state) {
    case 'enquiry':
    case 'quoted':
      return 'quote';
    case 'accepted':
      return gates.approval === 'shut' ? 'proof' : 'paymentRequest';
    case 'packed':
      return gates.balance === 'shut' ? 'paymentRequest' : 'deliveryNote';
    case 'ready':
    case 'blanksOrdered':
    case 'goodsIn':
    case 'scheduled':
    case 'printed':
    case 'pressed':
      return 'confirmation';
    case 'checked':
      return 'deliveryNote';
    case 'delivered':
      return money.isPaid ? 'receipt' : 'invoice';
    case 'paid':
    case 'closed':
      return 'invoice';
    default:
      return state satisfies never;
  }
}
