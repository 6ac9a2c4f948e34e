import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Bill, billsOf, doubledBills, isAsking, isOfGoods, leftOf } from '@/lib/orders/bills';
import { orderStanding } from '@/lib/orders/orderStanding';
import { toBill } from '@/lib/orders/toBill';
import {
  anOrderLog,
  creditOut,
  factsOf,
  invoiceOut,
  type OrderLog,
  quoteOut,
  steps,
  takeBack,
  tell,
  withdraw,
} from '@/tests/fixtures/orderLog';
import { cases } from '@/tests/tools/cases';

/*
 * Two devices note changes, bill what they know to be unbilled, give back and meet now and then. Each change costs a
 * power of two, so that what is owed beside the bills says by itself which changes are in it, and how often.
 */

const AGREED = 71150;
const devices = ['phone000', 'tablet00'] as const;
type Device = (typeof devices)[number];
const noTax = { mode: 'none', share: 0, rounding: 'document', exemption: null } as const;

const noted = fc.record({ do: fc.constant('change') });
const billed = fc.record({ do: fc.constant('bill') });
const met = fc.record({ do: fc.constant('meet') });
const undone = fc.oneof(
  fc.record({ do: fc.constant('creditWhole'), nth: fc.nat(5) }),
  fc.record({ do: fc.constant('creditPart'), nth: fc.nat(5) }),
  fc.record({ do: fc.constant('withdraw'), nth: fc.nat(5) }),
  fc.record({ do: fc.constant('takeBack'), nth: fc.nat(5) }),
);
type Act = { readonly do: string; readonly nth?: number };
const walkOf = (act: fc.Arbitrary<Act>) =>
  fc.array(fc.record({ act, device: fc.constantFrom(...devices), at: fc.nat(6) }), { maxLength: 22 });
type Walk = readonly { readonly act: Act; readonly device: Device; readonly at: number }[];

/** Everything that was written, and how much of it each device has heard of. */
interface World {
  readonly log: OrderLog;
  readonly known: Record<Device, Set<string>>;
  /** Papers by what withdrew them. */
  readonly withdrawnBy: Map<string, string>;
}

function walked(walk: Walk): World {
  const log = anOrderLog();
  const quote = quoteOut(log, { tax: noTax, sums: { subtotal: AGREED, tax: 0, total: AGREED } }, { at: 0 });
  tell(log, steps.accepted(quote.id), { at: 0 });
  const beginning = idsOf(log);
  const world: World = {
    log,
    known: { phone000: new Set(beginning), tablet00: new Set(beginning) },
    withdrawnBy: new Map(),
  };
  for (const { act, device, at } of walk) {
    const before = new Set(idsOf(log));
    done(world, act, { device, at });
    for (const id of idsOf(log)) if (!before.has(id)) world.known[device].add(id);
  }
  return world;
}

function done({ log, known, withdrawnBy }: World, { do: what, nth = 0 }: Act, told: Told): void {
  const own = viewOf({ log, known, withdrawnBy }, told.device);
  const bills = billsOf(factsOf(own).happened);
  const asking = bills.filter(isAsking);
  const bill = asking[nth % Math.max(1, asking.length)];
  if (what === 'change') {
    const count = log.noted.filter(
      (one) => one.kind === 'orderEvent' && one.body.step.what === 'change',
    ).length;
    if (count < 12) tell(log, changeOf(2 ** count), told);
  } else if (what === 'bill') billUnbilled(log, own, told);
  else if (what === 'meet') {
    const all = [...known.phone000, ...known.tablet00];
    for (const one of devices) for (const id of all) known[one].add(id);
  } else if (what === 'takeBack') {
    const changes = own.noted.filter((one) => one.kind === 'orderEvent' && one.body.step.what === 'change');
    const change = changes[nth % Math.max(1, changes.length)];
    if (change !== undefined) takeBack(log, change.id, told);
  } else if (bill === undefined) return;
  else if (what === 'creditWhole') creditOut(log, bill.paper.id, leftOf(bill).total, told);
  else if (what === 'creditPart' && leftOf(bill).total > 1) creditOut(log, bill.paper.id, 1, told);
  else if (what === 'withdraw') {
    withdraw(log, bill.paper.id, told);
    withdrawnBy.set(bill.paper.id, log.rest.at(-1)?.id ?? '');
  }
}

/** The next invoice as the screen makes it, of what its device has heard of. */
function billUnbilled(log: OrderLog, own: OrderLog, told: Told): void {
  const facts = factsOf(own);
  const { isOfGoods: withGoods, changes } = toBill(facts.happened, orderStanding(facts));
  if (!withGoods && changes.length === 0) return;
  const sum = changes.reduce((all, { amountMinor }) => all + amountMinor, withGoods ? AGREED : 0);
  const changeIds = changes.map(({ entryId }) => entryId);
  invoiceOut(log, sum, { ...told, isOfGoods: withGoods, changeIds });
}

interface Told {
  readonly device: Device;
  readonly at: number;
}
const changeOf = (amountMinor: number) =>
  ({ what: 'change', wish: 'more', amountMinor, currency: 'USD' }) as const;
const idsOf = ({ noted: entries, papers, rest }: OrderLog) =>
  [...entries, ...papers, ...rest].map(({ id }) => id);

function viewOf({ log, known, withdrawnBy }: World, device: Device): OrderLog {
  const has = ({ id }: { readonly id: string }) => known[device].has(id);
  return {
    noted: log.noted.filter(has),
    rest: log.rest.filter(has),
    papers: log.papers
      .filter(has)
      .map((one) => ({ ...one, withdrawn: known[device].has(withdrawnBy.get(one.id) ?? '') })),
  };
}

/** Which changes count, which bills are in force, and which changes are owed beside them. */
function owedIn(log: OrderLog) {
  const facts = factsOf(log);
  const { changes, money } = orderStanding(facts);
  const bills = billsOf(facts.happened);
  const goods = bills.some(isOfGoods) ? 0 : AGREED;
  const beside = (money.totalMinor ?? 0) - goods - bills.reduce((sum, bill) => sum + leftOf(bill).total, 0);
  // More than every change once, or less than none, would be no sum of some of them.
  expect(beside).toBeGreaterThanOrEqual(0);
  expect(beside).toBeLessThanOrEqual(changes.reduce((sum, { amountMinor }) => sum + amountMinor, 0));
  return {
    bills,
    changes: changes.map(({ entryId, amountMinor }) => ({
      entryId,
      isBeside: (beside & amountMinor) !== 0,
      namedBy: bills.filter(({ paper }) => paper.body.changeIds.includes(entryId)),
    })),
    besideMinor: beside,
    totalMinor: money.totalMinor,
    changesMinor: changes.reduce((sum, { amountMinor }) => sum + amountMinor, 0),
  };
}

/** Gives back whole, one after the other, what is told as asked for twice. */
function mended(log: OrderLog, picks: readonly number[]): void {
  for (let turn = 0; turn <= log.papers.length * 2; turn += 1) {
    const doubled: readonly Bill[] = doubledBills(billsOf(factsOf(log).happened));
    const bill = doubled[(picks[turn % picks.length] ?? 0) % Math.max(1, doubled.length)];
    if (bill === undefined) return;
    creditOut(log, bill.paper.id, leftOf(bill).total, { at: 9 });
  }
  throw new Error('it is told for ever');
}

const picks = fc.array(fc.nat(7), { minLength: 1, maxLength: 4 });

describe('every change is owed exactly once', () => {
  it('on a bill or beside all bills, or on several that are told, whatever either device had heard of', () => {
    fc.assert(
      fc.property(walkOf(fc.oneof(noted, billed, met)), (walk) => {
        const { log } = walked(walk);
        const { bills, changes } = owedIn(log);
        const doubled = doubledBills(bills).map(({ paper }) => paper.id);
        for (const { isBeside, namedBy } of changes) {
          expect(isBeside).toBe(namedBy.length === 0);
          if (namedBy.length > 1)
            expect(doubled).toEqual(expect.arrayContaining(namedBy.map(({ paper }) => paper.id)));
        }
        if (doubled.length === 0) expect(bills.filter(isOfGoods).length).toBeLessThan(2);
      }),
      cases(300),
    );
  });

  it('once what is told was given back, in whatever order: the goods as well', () => {
    fc.assert(
      fc.property(walkOf(fc.oneof(noted, billed, met)), picks, (walk, some) => {
        const { log } = walked(walk);
        mended(log, some);
        const { totalMinor, changesMinor } = owedIn(log);
        expect(totalMinor).toBe(AGREED + changesMinor);
        // And what is beside the bills then goes on the next one.
        const before = log.papers.length;
        billUnbilled(log, log, { device: 'phone000', at: 9 });
        const after = owedIn(log);
        expect(after.totalMinor).toBe(AGREED + changesMinor);
        expect(after.besideMinor).toBe(0);
        expect(log.papers.length - before).toBeLessThan(2);
      }),
      cases(300),
    );
  });

  it('but for those that were given back, where bills are given back, withdrawn and changes taken back as well', () => {
    fc.assert(
      fc.property(walkOf(fc.oneof(noted, billed, met, undone)), (walk) => {
        const { bills, changes } = owedIn(walked(walk).log);
        const doubled = doubledBills(bills).map(({ paper }) => paper.id);
        for (const { isBeside, namedBy } of changes) {
          const asked = namedBy.filter(isAsking);
          if (asked.length > 0) expect(isBeside).toBe(false);
          if (asked.length > 1) for (const { paper } of asked) expect(doubled).toContain(paper.id);
          if (namedBy.length === 0) expect(isBeside).toBe(true);
          // Neither asked for nor owed: only what was given back whole, and stands on no bill that was one too many.
          if (asked.length === 0 && !isBeside)
            expect(namedBy.some(({ credits }) => credits.length > 0)).toBe(true);
        }
      }),
      cases(400),
    );
  });

  it('the same in whatever order entries and papers arrive', () => {
    const arriving = walkOf(fc.oneof(noted, billed, met, undone)).chain((walk) => {
      const { log } = walked(walk);
      return fc.record({
        log: fc.constant(log),
        noted: fc.shuffledSubarray(log.noted, { minLength: log.noted.length }),
        papers: fc.shuffledSubarray(log.papers, { minLength: log.papers.length }),
        rest: fc.shuffledSubarray(log.rest, { minLength: log.rest.length }),
      });
    });
    fc.assert(
      fc.property(arriving, ({ log, ...other }) => {
        expect(orderStanding(factsOf(other))).toEqual(orderStanding(factsOf(log)));
      }),
      cases(200),
    );
  });
});
