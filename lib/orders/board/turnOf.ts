import { dayToKeep } from '@/lib/orders/dayToKeep';
import { lateDays } from '@/lib/orders/money/dueDays';
import type { OrderFacts } from '@/lib/orders/orderFacts';
import type { OrderStanding } from '@/lib/orders/orderStanding';

/** Whoever has to do something before an order goes on. */
export type Turn = 'you' | 'customer' | 'nobody';

/** What an order waits for. */
interface Waiting {
  readonly turn: Turn;
  readonly why: WaitsFor;
  readonly dueOn: string | null;
  readonly lateDays: number;
}

type WaitsFor =
  | 'answer'
  | 'openItem'
  | 'decision'
  | 'newQuote'
  | 'proof'
  | 'newProof'
  | 'approval'
  | 'deposit'
  | 'orderBlanks'
  | 'blanks'
  | 'print'
  | 'press'
  | 'check'
  | 'pack'
  | 'askBalance'
  | 'balance'
  | 'remind'
  | 'deliver'
  | 'close'
  | 'held'
  | 'over';

export interface OrderTurn {
  readonly turn: Turn;
  /** The one that decides, first. */
  readonly waits: readonly Waiting[];
  /** The nearest day of those whose turn it is; null where none has one. */
  readonly dueOn: string | null;
}

/** @returns whose turn it is: yours as soon as anything is to be done by you. */
export function turnOf(facts: OrderFacts, standing: OrderStanding, today: string): OrderTurn {
  const waits = waitsOf(facts, standing, today);
  const turn =
    (['you', 'customer'] as const).find((who) => waits.some((one) => one.turn === who)) ?? 'nobody';
  const own = waits.filter((one) => one.turn === turn);
  const days = own.flatMap(({ dueOn }) => (dueOn === null ? [] : [dueOn])).toSorted();
  return { turn, waits: [...own, ...waits.filter((one) => one.turn !== turn)], dueOn: days[0] ?? null };
}

/** @returns whether an order is on the board at all. */
export const isOpen = ({ order }: Pick<OrderFacts, 'order'>, { state, side }: OrderStanding): boolean =>
  order.archivedOn === null && state !== 'closed' && (side.side === 'open' || side.side === 'held');

// Helpers

function waitsOf(facts: OrderFacts, standing: OrderStanding, today: string): readonly Waiting[] {
  const { order } = facts;
  const { state, side, lastQuote, agreed, enquiredOn } = standing;
  const wait = (turn: Turn, why: WaitsFor, dueOn: string | null = null): Waiting => ({
    ...{ turn, why, dueOn },
    lateDays: lateDays(dueOn, today),
  });
  if (!isOpen(facts, standing)) return [wait('nobody', 'over')];
  if (side.side === 'held') return [wait('nobody', 'held')];
  const dates = agreed?.quote.body.dates ?? null;
  const open = order.openItems.flatMap(({ ofWhom, doneBy, doneOn }) =>
    doneOn !== null
      ? []
      : [
          wait(
            ofWhom === 'maker' ? 'you' : ofWhom === 'customer' ? 'customer' : 'nobody',
            'openItem',
            doneBy,
          ),
        ],
  );
  const opening = [...proofWaits(facts, standing, wait), ...depositWaits(standing, wait)];
  // What is made next waits for what opens its gates, as the first of it did.
  const make = (why: WaitsFor) => (opening.length > 0 ? opening : [wait('you', why, dates?.ready ?? null)]);
  const made = (): readonly Waiting[] => {
    switch (state) {
      case 'enquiry':
        return [wait('you', 'answer', enquiredOn)];
      case 'quoted': {
        const until = lastQuote?.body.validUntil ?? null;
        return until !== null && until < today
          ? [wait('you', 'newQuote', until)]
          : [wait('customer', 'decision', until)];
      }
      case 'accepted':
        return opening;
      case 'ready':
        return [wait('you', 'orderBlanks', dates?.orderBlanksBy ?? null)];
      case 'blanksOrdered':
        return [...opening, wait('nobody', 'blanks')];
      case 'goodsIn':
      case 'scheduled':
        return make('print');
      case 'printed':
        return make('press');
      case 'pressed':
        return [wait('you', 'check', dates?.ready ?? null)];
      case 'checked':
        return [wait('you', 'pack', dates?.ready ?? null)];
      case 'packed':
        return standing.gates.balance === 'shut'
          ? balanceWaits(standing, today, wait)
          : [wait('you', 'deliver', dayToKeep(order, agreed))];
      case 'delivered':
        return balanceWaits(standing, today, wait);
      case 'paid':
        return [wait('you', 'close')];
      case 'closed':
        return [];
      default:
        return state satisfies never;
    }
  };
  return [...made(), ...open];
}

type Wait = (turn: Turn, why: WaitsFor, dueOn?: string | null) => Waiting;

function proofWaits(
  { happened }: OrderFacts,
  { gates, artworks, agreed }: OrderStanding,
  wait: Wait,
): readonly Waiting[] {
  if (gates.approval !== 'shut') return [];
  const by = agreed?.quote.body.dates.approveBy ?? null;
  const proofAt = happened.findLastIndex((one) => one.kind === 'proof' && !one.withdrawn);
  const revisedAt = happened.findLastIndex(
    (one) => one.kind === 'orderEvent' && one.body.step.what === 'revised',
  );
  if (revisedAt > proofAt) return [wait('you', 'newProof', by)];
  const proof = happened[proofAt];
  const shown = proof?.kind === 'proof' ? proof.body.goods.flatMap(({ prints }) => prints) : [];
  const isShown = artworks.every(
    ({ artworkId, version, holds }) =>
      holds || shown.some(({ artwork }) => artwork.artworkId === artworkId && artwork.version === version),
  );
  if (proofAt === -1 || !isShown) return [wait('you', proofAt === -1 ? 'proof' : 'newProof', by)];
  return [wait('customer', 'approval', (proof?.kind === 'proof' ? proof.body.answerBy : null) ?? by)];
}

function depositWaits({ gates, money }: OrderStanding, wait: Wait): readonly Waiting[] {
  return gates.deposit === 'shut' ? [wait('customer', 'deposit', money.due.depositOn)] : [];
}

function balanceWaits({ money }: OrderStanding, today: string, wait: Wait): readonly Waiting[] {
  const { balanceOn, balanceAsked } = money.due;
  if (!balanceAsked) return [wait('you', 'askBalance', balanceOn)];
  return balanceOn !== null && balanceOn < today
    ? [wait('you', 'remind', balanceOn)]
    : [wait('customer', 'balance', balanceOn)];
}
