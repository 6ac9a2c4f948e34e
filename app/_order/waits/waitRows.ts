import { proofsOf } from '@/app/_order/notes/proofVersions';
import type { NotedStep } from '@/app/_order/notes/stepNote';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { Bench } from '@/app/_orderBook/useBench';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { opensWords, stepWords } from '@/app/_words/orders/notes/orderStepWords';
import { shortDay } from '@/app/_words/orders/orderDayWords';
import { rowLine } from '@/app/_words/orders/waits/waitLineWords';
import { type WaitsFor, waitRow } from '@/app/_words/orders/waits/waitNames';
import { isBenchStep, lastDayOf } from '@/lib/orders/bench/stepDays';
import { shutGates } from '@/lib/orders/shutGates';
import type { OrderState, StepName } from '@/lib/orders/stepOrder';
import type { OrderGate } from '@/shared/schemas/orderEvents';
import { actOf, type WaitAct } from './waitAct';

/** One thing an order waits for. */
export interface WaitRow {
  readonly id: string;
  /** Whose it is; null where it waits for nobody. */
  readonly whose: 'maker' | 'customer' | 'supplier' | null;
  readonly what: string;
  /** Since when, by when, or what opens it. */
  readonly line: string;
  readonly act: WaitAct | null;
  /** Gates that keep it locked; none where it can be done. */
  readonly locked: readonly OrderGate[];
}

/**
 * @param bench asked for the last days of work that the order waits for
 * @returns what the order waits for, a row each, and the next step that is still locked
 */
export function waitRows(on: OrderOnScreen, bench: Pick<Bench, 'latestOf'>): readonly WaitRow[] {
  const { turn, order, today, formatter, locale } = on;
  const rows = turn.waits
    .filter(({ why }) => why !== 'openItem')
    .map((wait): WaitRow => {
      const { why, dueOn } = wait;
      return {
        id: why,
        whose: whoseOf(wait),
        what: whatOf(why, on),
        line: rowLine(
          {
            ...{ why, dueOn, since: sinceOf(why, on), reminded: remindedOf(why, on) },
            lastOn: isBenchStep(why) ? lastDayOf(why, bench.latestOf(on.orderId)) : null,
          },
          today,
          locale,
          formatter,
        ),
        act: actOf(why, on),
        locked: [],
      };
    });
  const items = order.openItems.flatMap(({ id, what, ofWhom, doneBy, doneOn }): readonly WaitRow[] =>
    doneOn !== null || isPutAside(on)
      ? []
      : [
          {
            id: `item-${id}`,
            whose: ofWhom,
            what,
            line: rowLine(
              { why: 'openItem', dueOn: doneBy, lastOn: null, since: null, reminded: null },
              today,
              locale,
              formatter,
            ),
            act: { kind: 'item', label: ofWhom === 'maker' ? 'Done' : 'It came', itemId: id },
            locked: [],
          },
        ],
  );
  const next = lockedStep(on);
  return [...rows, ...balanceRow(on), ...items, ...(next === null ? [] : [next])];
}

// Helpers

const isPutAside = ({ turn }: OrderOnScreen): boolean =>
  turn.waits.some(({ why }) => why === 'over' || why === 'held');

function whoseOf({ why, turn }: OrderOnScreen['turn']['waits'][number]): WaitRow['whose'] {
  if (why === 'blanks') return 'supplier';
  return turn === 'nobody' ? null : turn === 'customer' ? 'customer' : 'maker';
}

function whatOf(why: WaitsFor, { standing, workspace, facts, locale }: OrderOnScreen): string {
  const { money } = standing;
  const amount = (minor: number | null) =>
    minor === null ? '' : ` ${minorMoney(minor, money.currency, locale)}`;
  if (why === 'deposit') return `${waitRow('deposit')}${amount(money.depositOpenMinor)}`;
  if (why === 'balance' || why === 'remind' || why === 'askBalance')
    return `${waitRow(why)}${amount(money.dueMinor)}`;
  if (why !== 'approval') return waitRow(why);
  const names = facts.artworks.flatMap(({ artworkId, version }) => {
    const name = workspace.artworks[artworkId]?.name;
    return name === undefined ? [] : [version > 1 ? `${name}, version ${version}` : name];
  });
  return names.length === 0 ? waitRow('approval') : `Proof of ${new Intl.ListFormat('en').format(names)}`;
}

function sinceOf(why: WaitsFor, { standing, facts }: OrderOnScreen): string | null {
  switch (why) {
    case 'answer':
      return standing.enquiredOn;
    case 'decision':
      return standing.lastQuote?.body.issuedOn ?? null;
    case 'approval':
      return proofsOf(facts)[0]?.body.issuedOn ?? null;
    case 'blanks':
      return standing.steps.findLast(({ step }) => step.what === 'blanksOrdered')?.day ?? null;
    case 'held':
    case 'over':
      return standing.side.side === 'open'
        ? (standing.steps.findLast(({ step }) => step.what === 'closed')?.day ?? facts.order.archivedOn)
        : standing.side.since;
    default:
      return null;
  }
}

function remindedOf(why: WaitsFor, { standing }: OrderOnScreen): string | null {
  const of = why === 'decision' ? 'answer' : why === 'remind' ? 'balance' : why;
  return standing.reminders.findLast((one) => one.of === of)?.day ?? null;
}

/** Money may come at any time, whosever turn it is to ask for it. */
function balanceRow({ turn, standing, locale }: OrderOnScreen): readonly WaitRow[] {
  const { dueMinor, currency } = standing.money;
  const isAsking = turn.waits.some(({ why }) => why === 'askBalance' || why === 'remind');
  if (!isAsking || dueMinor === null || dueMinor === 0) return [];
  return [
    {
      ...{ id: 'balance', whose: 'customer', locked: [] },
      what: `${waitRow('balance')} ${minorMoney(dueMinor, currency, locale)}`,
      line: 'owed before it is over',
      act: { kind: 'payment', label: 'It came', dueMinor },
    },
  ];
}

/** The next step that brings the order on and waits for a gate; null where none does. */
function lockedStep({ standing, today, locale }: OrderOnScreen): WaitRow | null {
  if (standing.side.side !== 'open') return null;
  const next = lockable[standing.state];
  if (next === undefined) return null;
  const locked = shutGates(standing, next.step);
  if (locked.length === 0) return null;
  const by = standing.agreed?.quote.body.dates.orderBlanksBy ?? null;
  const until = next.why === 'orderBlanks' && by !== null ? `, by ${shortDay(by, today, locale)}` : '';
  return {
    ...{ id: `locked-${next.why}`, whose: 'maker', what: waitRow(next.why), locked },
    line: `${opensWords(locked)}${until}`,
    act: { kind: 'step', what: next.step, label: stepWords[next.step] },
  };
}

interface Lockable {
  readonly step: StepName & NotedStep;
  readonly why: WaitsFor;
}

const [buy, print]: readonly [Lockable, Lockable] = [
  { step: 'blanksOrdered', why: 'orderBlanks' },
  { step: 'printed', why: 'print' },
];
/** What comes next where a gate may keep it locked. */
const lockable: Readonly<Partial<Record<OrderState, Lockable>>> = {
  ...{ quoted: buy, accepted: buy, goodsIn: print, scheduled: print },
  printed: { step: 'pressed', why: 'press' },
  packed: { step: 'delivered', why: 'deliver' },
};
