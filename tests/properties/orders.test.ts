import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ArtworkVersion, Happening, OrderFacts } from '@/lib/orders/orderFacts';
import { orderStanding } from '@/lib/orders/orderStanding';
import { gatesOf, placeOf } from '@/lib/orders/stepOrder';
import type { OrderGate } from '@/shared/schemas/orderEvents';
import {
  anOrderLog,
  approve,
  clubArtworks,
  creditOut,
  factsOf,
  happenedIn,
  invoiceOut,
  type OrderLog,
  pay,
  payOut,
  quoteOut,
  steps,
  takeBack,
  tell,
  withdraw,
} from '@/tests/fixtures/orderLog';
import { cases } from '@/tests/tools/cases';

const moving = ['blanksOrdered', 'goodsIn', 'printed', 'pressed', 'packed', 'delivered', 'closed'] as const;
const aside = ['held', 'resumed', 'cancelled', 'reopened'] as const;

/** The pictures as a step names them: as they were made first, as the badge is later, or not at all. */
const badgeAnew: readonly ArtworkVersion[] = [
  { artworkId: 'badge', version: 2 },
  { artworkId: 'back', version: 1 },
];
const versionsNamed = fc.constantFrom<readonly ArtworkVersion[] | null>(null, clubArtworks, badgeAnew);
/** The pictures as they are when everything is looked at. */
const artworksNow = fc.constantFrom<readonly ArtworkVersion[]>(clubArtworks, badgeAnew, []);

const accept = fc.record({
  do: fc.constant('accept'),
  choice: fc.constantFrom(null, 'three-more', 'gone'),
});
const step = fc.record({ do: fc.constant('step'), what: fc.constantFrom(...aside) });
const move = fc.record({
  do: fc.constant('move'),
  moves: fc.constantFrom(...moving),
  versions: versionsNamed,
});
const override = fc.record({
  do: fc.constant('override'),
  gate: fc.constantFrom('acceptance', 'deposit', 'approval', 'balance'),
});
const bill = fc.record({
  do: fc.constant('bill'),
  totalMinor: fc.constantFrom(1, 76131, 80143),
  dueOn: fc.constantFrom(null, '2026-12-09', '2027-01-08'),
});
const credit = fc.record({ do: fc.constant('credit'), creditMinor: fc.constantFrom(1, 38065, 76131) });
/** What somebody may note next, whether it makes sense or not. */
const act = fc.oneof(
  step,
  move,
  accept,
  fc.record({
    do: fc.constant('approve'),
    artwork: fc.constantFrom('badge', 'back'),
    version: fc.constantFrom(1, 2, null),
  }),
  fc.record({ do: fc.constant('approveAll') }),
  fc.record({ do: fc.constant('press'), badge: fc.constantFrom(1, 2) }),
  fc.record({
    do: fc.constant('pay'),
    kind: fc.constantFrom('payment', 'payment', 'refund', 'reversal'),
    amountMinor: fc.constantFrom(1, 38065, 38066, 40072, 76131, 80143),
  }),
  override,
  fc.record({ do: fc.constant('takeBack'), back: fc.nat(30) }),
  fc.record({ do: fc.constant('noteAnew'), anew: fc.nat(30) }),
  fc.record({ do: fc.constant('payOut'), reached: fc.nat(30) }),
  bill,
  credit,
  fc.record({ do: fc.constant('withdraw'), gone: fc.nat(8) }),
);
/** On which of two devices, each with a clock that is set back and forth by as much as a year. */
const where: fc.Arbitrary<{ readonly device: string; readonly at: number }> = fc.record({
  device: fc.constantFrom('phone000', 'laptop00'),
  at: fc.constantFrom(0, 1, 2, 3, 31_536_000_000),
});
const anyActs = fc.array(fc.record({ act, where }), { maxLength: 25 });
/** Everything is agreed and approved, so that money alone decides. */
const moneyActs = fc
  .array(
    fc.record({
      act: fc.oneof(step, move, accept, override, bill, credit),
      where: fc.constant({ device: 'phone000', at: 0 }),
    }),
    { maxLength: 8 },
  )
  .map((rest) => [
    { act: { do: 'accept', choice: null }, where: { device: 'phone000', at: 0 } } as const,
    { act: { do: 'approveAll' }, where: { device: 'phone000', at: 0 } } as const,
    ...rest,
  ]);
const acts = fc.oneof({ weight: 2, arbitrary: anyActs }, { weight: 1, arbitrary: moneyActs });

type Acts = typeof acts extends fc.Arbitrary<infer Of> ? Of : never;

function logOf(walk: Acts): OrderLog {
  const log = anOrderLog();
  const quote = quoteOut(log, {}, { at: 0 });
  tell(log, steps.quoted(quote.id), { at: 0 });
  for (const { act: next, where: told } of walk) {
    if ('what' in next) tell(log, steps.plain(next.what), told);
    else if ('moves' in next) {
      const { moves, versions } = next;
      tell(log, { ...steps.plain(moves), ...(versions !== null && { versions: [...versions] }) }, told);
    } else if ('choice' in next) tell(log, steps.accepted(quote.id, next.choice), told);
    else if ('artwork' in next) approve(log, next.artwork, next.version, told);
    else if ('kind' in next) pay(log, next.amountMinor, { ...told, more: { kind: next.kind } });
    else if ('back' in next) {
      const some = log.noted.filter(({ kind }) => kind !== 'payout');
      takeBack(log, some[next.back % some.length]?.id ?? '', told);
    } else if ('anew' in next) {
      const paid = nthPayment(log, next.anew);
      if (paid === undefined) continue;
      takeBack(log, paid.id, told);
      pay(log, paid.body.amountMinor, { ...told, more: paid.body });
    } else if ('reached' in next) {
      const paid = nthPayment(log, next.reached);
      if (paid !== undefined) payOut(log, paid.id, { feeMinor: 7 }, told);
    } else if ('totalMinor' in next) invoiceOut(log, next.totalMinor, { ...told, dueOn: next.dueOn });
    else if ('creditMinor' in next) {
      const invoice = log.papers.findLast(({ kind }) => kind === 'invoice');
      if (invoice !== undefined) creditOut(log, invoice.id, next.creditMinor, told);
    } else if ('gone' in next) {
      const paper = log.papers[next.gone % log.papers.length];
      if (paper?.withdrawn === false) withdraw(log, paper.id, told);
    } else if ('gate' in next) tell(log, steps.override(next.gate), told);
    else if ('badge' in next) {
      tell(log, { ...steps.plain('pressed'), versions: [{ artworkId: 'badge', version: next.badge }] }, told);
    } else tell(log, steps.approved(), told);
  }
  return log;
}

function nthPayment({ noted }: OrderLog, nth: number) {
  const paid = noted.flatMap((one) => (one.kind === 'payment' ? [one] : []));
  return paid[nth % Math.max(1, paid.length)];
}

/** Whether a gate is open after the first things that happened, reckoned anew from nothing each time. */
function isOpenAfter(
  gate: OrderGate,
  before: readonly Happening[],
  wanted: readonly ArtworkVersion[],
  isQuoteInForce: boolean,
): boolean {
  const events = before.flatMap((one) => (one.kind === 'orderEvent' ? [one.body.step] : []));
  const isPassed = events.some((step) => step.what === 'override' && step.gate === gate);
  if (isPassed && gate === 'acceptance') return true;
  if (isPassed && gate !== 'approval' && isGoneWithout(gate, before, isQuoteInForce)) return true;
  const accepted = events.findLast(
    (step) => isQuoteInForce && step.what === 'accepted' && step.alternativeId !== 'gone',
  );
  const isOffered = before.some((one) => one.kind === 'quote' && !one.withdrawn);
  const isMore = accepted?.what === 'accepted' && accepted.alternativeId === 'three-more';
  const received = before.reduce(
    (sum, one) =>
      one.kind !== 'payment'
        ? sum
        : one.body.kind === 'payment'
          ? sum + one.body.amountMinor
          : sum - one.body.amountMinor,
    0,
  );
  const yes = (artworkId: string) =>
    before.reduce<number | null>((last, one) => {
      if (one.kind === 'approval' && one.body.artworkId === artworkId) return one.body.version;
      return one.kind === 'orderEvent' && one.body.step.what === 'approved' ? 1 : last;
    }, null);
  switch (gate) {
    case 'acceptance':
      return accepted !== undefined;
    case 'deposit':
      return (accepted !== undefined || isOffered) && received >= (isMore ? 40072 : 38066);
    case 'balance': {
      const owed = billed(before) ?? (accepted === undefined ? null : isMore ? 80143 : 76131);
      const later = billed(before, ({ dueOn }) => dueOn === '2027-01-08') ?? 0;
      const atOnce = billed(before, ({ dueOn }) => dueOn !== '2027-01-08') ?? 0;
      return (owed !== null && received >= owed) || (later > 0 && received >= atOnce);
    }
    case 'approval':
      return (
        (wanted.length > 0 || isPassed) &&
        wanted.every(
          // An approval is gone without for the first versions alone.
          ({ artworkId, version }) => yes(artworkId) === version || (isPassed && version === 1),
        )
      );
    default:
      return gate satisfies never;
  }
}

/** Whether the money of what was chosen last was gone on without: for just that, or for the quote before it was chosen. */
function isGoneWithout(gate: OrderGate, before: readonly Happening[], isQuoteInForce: boolean): boolean {
  let about: string | null = 'nothing';
  const passed = new Set<string | null>();
  for (const one of before) {
    if (one.kind === 'quote' && !one.withdrawn && about === 'nothing') about = 'any choice';
    if (one.kind !== 'orderEvent') continue;
    const { step } = one.body;
    if (step.what === 'override' && step.gate === gate) passed.add(about);
    if (step.what === 'accepted' && isQuoteInForce && step.alternativeId !== 'gone')
      about = step.alternativeId;
  }
  return passed.has(about) || (about !== 'nothing' && passed.has('any choice'));
}

/** What invoices in force ask for, less what credit notes in force took from just these. */
function billed(
  before: readonly Happening[],
  isOne: (invoice: { readonly dueOn: string | null }) => boolean = () => true,
): number | null {
  const totals = new Map(
    before.flatMap((one) =>
      one.kind === 'invoice' && !one.withdrawn && isOne(one.body)
        ? [[one.id, one.body.sums.total] as const]
        : [],
    ),
  );
  if (totals.size === 0) return null;
  let owed = [...totals.values()].reduce((sum, total) => sum + total, 0);
  for (const one of before) {
    if (one.kind !== 'creditNote' || one.withdrawn || !totals.has(one.body.invoice.paperId)) continue;
    owed -= one.body.sums.total;
  }
  return owed;
}

const goesOnWith = (what: string): readonly string[] =>
  what === 'blanksOrdered' || what === 'printed' || what === 'pressed'
    ? []
    : what === 'goodsIn'
      ? moving
      : moving.filter((one) => one !== 'blanksOrdered' && one !== 'goodsIn');

/** @returns after how many of the things that happened a step begins to count; null where it never does. */
function countsFrom(facts: OrderFacts, at: number): number | null {
  const { happened, artworks } = facts;
  const one = happened[at];
  if (one?.kind !== 'orderEvent') return null;
  const { step } = one.body;
  const rest = happened.slice(at + 1);
  const isReopened = rest.some((next) => next.kind === 'orderEvent' && next.body.step.what === 'reopened');
  if (step.what === 'closed' && isReopened) return null;
  const isQuoteInForce = happened.some((other) => other.kind === 'quote' && !other.withdrawn);
  if (step.what === 'quoted') return isQuoteInForce ? at + 1 : null;
  if (step.what === 'accepted') return isQuoteInForce && step.alternativeId !== 'gone' ? at + 1 : null;
  const wanted = ('versions' in step ? step.versions : undefined) ?? artworks;
  const gates = placeOf(step.what) < placeOf('blanksOrdered') ? [] : gatesNamed(step.what);
  const madeFrom = Math.min(
    ...happened.slice(0, at).map((before, place) => {
      const isBehind = before.kind === 'orderEvent' && goesOnWith(step.what).includes(before.body.step.what);
      return (isBehind ? countsFrom(facts, place) : null) ?? Number.POSITIVE_INFINITY;
    }),
  );
  for (let end = at + 1; end <= happened.length; end += 1) {
    const isThrough = (gate: OrderGate) =>
      (gate === 'approval' && end >= madeFrom) ||
      isOpenAfter(gate, happened.slice(0, end), wanted, isQuoteInForce);
    if (gates.every(isThrough)) return end;
  }
  return null;
}

const gatesNamed = (what: string): readonly OrderGate[] =>
  what === 'delivered' || what === 'closed'
    ? ['acceptance', 'deposit', 'approval', 'balance']
    : ['acceptance', 'deposit', 'approval'];

describe('walks over the steps of an order', () => {
  it('count a step exactly where every gate before it was open at once after it was noted, or an override is kept', () => {
    fc.assert(
      fc.property(acts, artworksNow, (walk, artworks) => {
        const facts = factsOf(logOf(walk), { artworks });
        const standing = orderStanding(facts);
        for (const { entryId, holdsSince } of standing.steps) {
          const at = facts.happened.findIndex(({ id }) => id === entryId);
          expect(holdsSince !== null).toBe(countsFrom(facts, at) !== null);
        }
      }),
      cases(400),
    );
  });

  it('count the same steps whatever the pictures have become, where each named those of its day', () => {
    fc.assert(
      fc.property(acts, artworksNow, (walk, artworks) => {
        const named = walk.map((one) =>
          'moves' in one.act && one.act.versions === null
            ? { ...one, act: { ...one.act, versions: clubArtworks } }
            : one,
        );
        const [before, after] = [clubArtworks, artworks].map(
          (some) => orderStanding(factsOf(logOf(named), { artworks: some })).steps,
        );
        expect(after).toEqual(before);
      }),
      cases(400),
    );
  });

  it('skip no gate but by an override that is kept and told', () => {
    fc.assert(
      fc.property(acts, (walk) => {
        const standing = orderStanding(factsOf(logOf(walk)));
        for (const { step, holdsSince, overridden, waitsFor } of standing.steps) {
          if (holdsSince === null) continue;
          expect(waitsFor).toEqual([]);
          for (const gate of overridden) {
            expect(standing.overrides.some((one) => one.gate === gate && one.reason !== '')).toBe(true);
            expect(gatesOf(step.what)).toContain(gate);
          }
        }
        const furthest = standing.steps.filter(({ holdsSince }) => holdsSince !== null);
        const names = furthest.map(({ step }) => placeOf(step.what));
        const state =
          standing.state === 'paid' ? 'delivered' : standing.state === 'ready' ? 'accepted' : standing.state;
        expect(placeOf(state === 'enquiry' ? 'enquired' : state)).toBe(Math.max(0, ...names));
      }),
      cases(400),
    );
  });

  it('come to the same standing in whatever order the entries of two devices arrive', () => {
    const shuffled = acts.chain((walk) => {
      const log = logOf(walk);
      return fc.record({
        log: fc.constant(log),
        noted: fc.shuffledSubarray(log.noted, { minLength: log.noted.length }),
      });
    });
    fc.assert(
      fc.property(shuffled, ({ log, noted }) => {
        expect(orderStanding(factsOf({ ...log, noted }))).toEqual(orderStanding(factsOf(log)));
      }),
      cases(300),
    );
  });

  it('noted on one device stand in the order they were noted in, whatever its clock was set to', () => {
    const ofOneDevice = fc.array(
      fc.record({ act, where: where.map(({ at }) => ({ device: 'phone000', at })) }),
      {
        maxLength: 25,
      },
    );
    fc.assert(
      fc.property(ofOneDevice, (walk) => {
        const steady = walk.map(({ act: next }) => ({ act: next, where: { device: 'phone000', at: 5 } }));
        const [set, kept] = [walk, steady].map((one) => orderStanding(factsOf(logOf(one))));
        expect(set).toEqual(kept);
      }),
      cases(300),
    );
  });
});

describe('what is noted afterwards', () => {
  it('moves nothing that happened because something was taken back', () => {
    fc.assert(
      fc.property(acts, fc.nat(40), where, (walk, nth, told) => {
        const log = logOf(walk);
        const before = happenedIn(log).map(({ id }) => id);
        const id = before[nth % before.length] ?? '';
        takeBack(log, id, told);
        const after = happenedIn(log).map((one) => one.id);
        expect(after.filter((one) => before.includes(one))).toEqual(
          before.filter((one) => after.includes(one)),
        );
      }),
      cases(300),
    );
  });

  it('changes no step by saying that a payment reached the bank', () => {
    const ofOneDevice = fc.array(fc.record({ act, where: fc.constant({ device: 'phone000', at: 5 }) }), {
      maxLength: 25,
    });
    fc.assert(
      fc.property(ofOneDevice, (walk) => {
        const without = walk.filter(({ act: next }) => !('reached' in next));
        const [one, other] = [walk, without].map((some) => orderStanding(factsOf(logOf(some))));
        const told = (of: typeof one) => of?.steps.map(({ entryId, ...rest }) => rest);
        expect(told(one)).toEqual(told(other));
        expect([one?.state, one?.money.receivedMinor]).toEqual([other?.state, other?.money.receivedMinor]);
      }),
      cases(300),
    );
  });
});

const anAmount = fc.oneof(fc.integer({ min: 1, max: 500_000 }), fc.integer({ min: 1, max: 1e12 }));
const payments = fc.array(
  fc.record({
    kind: fc.constantFrom('payment', 'refund', 'reversal'),
    amountMinor: anAmount,
    feeMinor: fc.integer({ min: 0, max: 5_000 }),
    way: fc.constantFrom('card', 'cash', 'transfer'),
    payout: fc.boolean(),
    currency: fc.constantFrom('USD', 'USD', 'EUR'),
    day: fc.constantFrom('2026-11-25', '2026-11-26', '2026-12-01'),
  }),
  { maxLength: 30 },
);

describe('payments', () => {
  it('fold to the cent, against whole numbers without an end', () => {
    fc.assert(
      fc.property(payments, (paid) => {
        const log = anOrderLog();
        const quote = quoteOut(log);
        tell(log, steps.accepted(quote.id));
        for (const { payout, ...more } of paid) {
          const { id } = pay(log, more.amountMinor, { more });
          if (payout) payOut(log, id, { feeMinor: more.feeMinor });
        }
        const { money } = orderStanding(factsOf(log, { artworks: clubArtworks }));
        const own = paid.filter(({ currency }) => currency === 'USD');
        const sum = (of: (one: (typeof paid)[number]) => number, some = own) =>
          some.reduce((total, one) => total + BigInt(of(one)), 0n);
        const signed = (one: (typeof paid)[number]) =>
          one.kind === 'payment' ? one.amountMinor : -one.amountMinor;
        const received = sum(signed);
        expect(BigInt(money.receivedMinor)).toBe(received);
        expect(BigInt(money.netMinor)).toBe(received - sum(({ feeMinor }) => feeMinor));
        expect(BigInt(money.dueMinor ?? -1) - BigInt(money.overpaidMinor)).toBe(76131n - received);
        expect(Math.min(money.dueMinor ?? -1, money.overpaidMinor)).toBe(0);
        expect(money.inBankMinor + money.inCashMinor + money.toReachBankMinor).toBe(money.netMinor);
        const net = (one: (typeof paid)[number]) => signed(one) - one.feeMinor;
        expect(BigInt(money.inBankMinor)).toBe(
          sum(
            net,
            own.filter(({ payout }) => payout),
          ),
        );
        expect(money.other).toHaveLength(paid.length - own.length);
        expect(BigInt(money.exposure.points.at(-1)?.balanceMinor ?? 0)).toBe(BigInt(money.netMinor));
        const lows = ['2026-11-25', '2026-11-26', '2026-12-01'].flatMap((day) =>
          own.some((one) => one.day === day)
            ? [
                sum(
                  net,
                  own.filter((one) => one.day <= day),
                ),
              ]
            : [],
        );
        const least = lows.reduce<bigint | null>(
          (low, next) => (low === null || next < low ? next : low),
          null,
        );
        expect(money.exposure.lowest === null ? null : BigInt(money.exposure.lowest.balanceMinor)).toBe(
          least,
        );
      }),
      cases(400),
    );
  });
});
