import { describe, expect, it } from 'vitest';
import { orderStanding } from '@/lib/orders/orderStanding';
import {
  anOrderLog,
  approve,
  clubArtworks,
  creditOut,
  type FactsChange,
  factsOf,
  invoiceOut,
  type OrderLog,
  pay,
  proofOut,
  quoteOut,
  steps,
  tell,
} from '@/tests/fixtures/orderLog';

const standing = (log: OrderLog, change?: FactsChange) => orderStanding(factsOf(log, change));
/** Enquired and quoted. */
const quotedLog = () => {
  const log = anOrderLog();
  tell(log, steps.enquired);
  const quote = quoteOut(log);
  tell(log, steps.quoted(quote.id), { day: '2026-11-26' });
  return { log, quote };
};
const acceptedLog = () => {
  const { log, quote } = quotedLog();
  tell(log, steps.accepted(quote.id), { day: '2026-11-27' });
  return { log, quote };
};
const readyLog = () => {
  const { log, quote } = acceptedLog();
  pay(log, 38066, { day: '2026-11-28' });
  tell(log, steps.approved(), { day: '2026-11-29' });
  return { log, quote };
};
const gatesShut = (log: OrderLog, change?: FactsChange) =>
  standing(log, change).tooEarly.map(({ step, waitsFor }) => [step.what, ...waitsFor]);

describe('the standing of an order', () => {
  it('is an enquiry without a number where nothing was noted', () => {
    expect(standing(anOrderLog())).toMatchObject({ state: 'enquiry', number: null, agreed: null });
    expect(standing(anOrderLog()).money).toMatchObject({
      totalMinor: null,
      dueMinor: null,
      receivedMinor: 0,
    });
  });

  it('goes from enquiry to paid, a step at a time, by the figures of the club’s quote', () => {
    const { log, quote } = quotedLog();
    expect(standing(log)).toMatchObject({
      state: 'quoted',
      number: { year: 2026, count: 14, letter: 'A' },
      enquiredOn: '2026-11-24',
    });
    tell(log, steps.accepted(quote.id), { day: '2026-11-27' });
    expect(standing(log)).toMatchObject({
      state: 'accepted',
      money: { totalMinor: 76131, depositOpenMinor: 38066 },
    });
    pay(log, 38066, { day: '2026-11-28' });
    expect(standing(log).state).toBe('accepted');
    tell(log, steps.approved(), { day: '2026-11-29' });
    expect(standing(log).state).toBe('ready');
    for (const what of [
      'blanksOrdered',
      'goodsIn',
      'scheduled',
      'printed',
      'pressed',
      'checked',
      'packed',
    ] as const) {
      tell(log, steps.plain(what), { day: '2026-12-01' });
      expect(standing(log).state).toBe(what);
    }
    pay(log, 38065, { day: '2026-12-14' });
    expect(standing(log)).toMatchObject({ state: 'packed', money: { dueMinor: 0, isPaid: true } });
    tell(log, steps.plain('delivered'), { day: '2026-12-14' });
    expect(standing(log).state).toBe('paid');
    tell(log, steps.plain('closed'), { day: '2026-12-15' });
    expect(standing(log)).toMatchObject({ state: 'closed', tooEarly: [] });
  });

  it('takes the total and the deposit of the alternative that was chosen', () => {
    const { log, quote } = quotedLog();
    tell(log, steps.accepted(quote.id, 'three-more'));
    expect(standing(log).money).toMatchObject({ totalMinor: 80143, depositMinor: 40072 });
  });

  it('does not take an alternative that the quote never offered, or a quote that was withdrawn', () => {
    const { log, quote } = quotedLog();
    tell(log, steps.accepted(quote.id, 'ten-more'));
    expect(standing(log)).toMatchObject({ state: 'quoted', agreed: null, acceptance: null });
    expect(standing(log).steps.at(-1)?.fault).toBe('noSuchChoice');
    const other = anOrderLog();
    const withdrawn = quoteOut(other, {}, { withdrawn: true });
    tell(other, steps.quoted(withdrawn.id));
    tell(other, steps.accepted(withdrawn.id));
    expect(standing(other)).toMatchObject({ state: 'enquiry', gates: { acceptance: 'shut' } });
    expect(standing(other).steps.map(({ fault }) => fault)).toEqual(['quoteWithdrawn', 'quoteWithdrawn']);
  });

  it('counts an acceptance whose quote is not on this device, and knows no total', () => {
    const log = anOrderLog();
    tell(log, steps.accepted('laptop00-9'));
    pay(log, 38066);
    expect(standing(log)).toMatchObject({
      state: 'accepted',
      isQuoteMissing: true,
      gates: { acceptance: 'open', deposit: 'shut' },
      money: { totalMinor: null, dueMinor: null, overpaidMinor: 0 },
    });
  });

  it('says that it was accepted after the quote had ended', () => {
    const { log, quote } = quotedLog();
    tell(log, steps.accepted(quote.id), { day: '2026-12-10' });
    expect(standing(log).isAcceptedLate).toBe(false);
    tell(log, steps.accepted(quote.id), { day: '2026-12-11' });
    expect(standing(log)).toMatchObject({ state: 'accepted', isAcceptedLate: true });
  });

  it('says that a version went out after the accepted one, which stays what was agreed', () => {
    const { log, quote } = acceptedLog();
    quoteOut(log, { sums: { subtotal: 80000, tax: 5600, total: 85600 } });
    expect(standing(log)).toMatchObject({ isQuotedAnew: true, money: { totalMinor: 76131 } });
    expect(standing(log).agreed?.quote.id).toBe(quote.id);
  });
});

describe('a gate', () => {
  it('keeps blanks from counting as ordered before acceptance, deposit and approval, and says which is missing', () => {
    const { log, quote } = quotedLog();
    tell(log, steps.plain('blanksOrdered'), { day: '2026-11-27' });
    expect(standing(log).state).toBe('quoted');
    expect(gatesShut(log)).toEqual([['blanksOrdered', 'acceptance', 'deposit', 'approval']]);
    tell(log, steps.accepted(quote.id), { day: '2026-11-27' });
    expect(gatesShut(log)).toEqual([['blanksOrdered', 'deposit', 'approval']]);
    pay(log, 38065);
    // One cent short.
    expect(gatesShut(log)).toEqual([['blanksOrdered', 'deposit', 'approval']]);
    pay(log, 1);
    expect(gatesShut(log)).toEqual([['blanksOrdered', 'approval']]);
    expect(standing(log).state).toBe('accepted');
    tell(log, steps.approved(), { day: '2026-11-30' });
    expect(standing(log)).toMatchObject({ state: 'blanksOrdered', tooEarly: [] });
    // It counts from the day its last gate opened, not from the day it was noted for.
    expect(standing(log).steps.find(({ step }) => step.what === 'blanksOrdered')?.holdsSince).toBe(
      '2026-11-30',
    );
  });

  it('of approval holds for the present version only, from whichever kind of yes', () => {
    const { log } = acceptedLog();
    pay(log, 38066);
    tell(log, steps.approved([{ artworkId: 'badge', version: 1 }]));
    expect(standing(log).gates.approval).toBe('shut');
    approve(log, 'back', 1);
    expect(standing(log).gates.approval).toBe('open');
    const newer = {
      artworks: [
        { artworkId: 'badge', version: 2 },
        { artworkId: 'back', version: 1 },
      ],
    };
    expect(standing(log, newer).gates.approval).toBe('shut');
    expect(standing(log, newer).artworks).toEqual([
      { artworkId: 'badge', version: 2, approvedVersion: 1, holds: false },
      { artworkId: 'back', version: 1, approvedVersion: 1, holds: true },
    ]);
    approve(log, 'back', null);
    expect(standing(log).gates.approval).toBe('shut');
  });

  it('of approval takes the versions of the proof sheet where the answer names no others', () => {
    const { log } = acceptedLog();
    const proof = proofOut(log, [
      { artworkId: 'badge', version: 1 },
      { artworkId: 'back', version: 1 },
    ]);
    tell(log, steps.approved([], proof.id));
    expect(standing(log).gates.approval).toBe('open');
  });

  it('of approval is shut where there is no picture to approve', () => {
    const { log } = readyLog();
    expect(standing(log, { artworks: [] }).gates.approval).toBe('shut');
  });

  it('keeps pressing from counting while the version pressed is not approved', () => {
    const { log } = readyLog();
    tell(log, { ...steps.plain('blanksOrdered'), versions: [{ artworkId: 'badge', version: 1 }] });
    tell(log, { ...steps.plain('pressed'), versions: [{ artworkId: 'badge', version: 2 }] });
    expect(standing(log).state).toBe('blanksOrdered');
    expect(gatesShut(log)).toEqual([['pressed', 'approval']]);
    approve(log, 'badge', 2);
    expect(standing(log).state).toBe('pressed');
  });

  it('that a step has passed does not shut behind it: a later picture changes nothing of what was made', () => {
    const { log } = readyLog();
    const versions = [
      { artworkId: 'badge', version: 1 },
      { artworkId: 'back', version: 1 },
    ];
    tell(log, { ...steps.plain('pressed'), versions });
    approve(log, 'badge', 2);
    expect(
      standing(log, {
        artworks: [
          { artworkId: 'badge', version: 2 },
          { artworkId: 'back', version: 3 },
        ],
      }),
    ).toMatchObject({
      state: 'pressed',
      gates: { approval: 'shut' },
    });
  });

  /** The badge as it is made for the next order, or no picture at all. */
  const laterArtworks = [
    [
      { artworkId: 'badge', version: 2 },
      { artworkId: 'back', version: 1 },
    ],
    [],
  ];

  it.each(laterArtworks.map((artworks) => [artworks.length, artworks]))(
    'does not shut behind an order that is over: of %i pictures changed afterwards it stays closed',
    (_, artworks) => {
      const { log } = readyLog();
      const versions = [...clubArtworks];
      for (const what of ['blanksOrdered', 'printed', 'pressed'] as const)
        tell(log, { ...steps.plain(what), versions }, { day: '2026-12-01' });
      // The next order's badge is approved, which takes the place of the yes to this one's.
      approve(log, 'badge', 2);
      for (const what of ['goodsIn', 'scheduled', 'checked', 'packed'] as const)
        tell(log, steps.plain(what), { day: '2026-12-05' });
      expect(standing(log, { artworks })).toMatchObject({ state: 'packed', tooEarly: [] });
      pay(log, 38065, { day: '2026-12-06' });
      tell(log, steps.plain('delivered'), { day: '2026-12-07' });
      expect(standing(log, { artworks })).toMatchObject({ state: 'paid', tooEarly: [] });
      tell(log, steps.plain('closed'), { day: '2026-12-08' });
      expect(standing(log, { artworks })).toMatchObject({ state: 'closed', tooEarly: [] });
    },
  );

  it.each(laterArtworks.map((artworks) => [artworks.length, artworks]))(
    'does not shut behind an order of which only the delivery was noted, with the pictures of that day: %i now',
    (_, artworks) => {
      const { log } = readyLog();
      pay(log, 38065);
      const versions = [...clubArtworks];
      tell(log, { ...steps.plain('delivered'), versions });
      expect(standing(log, { artworks })).toMatchObject({ state: 'paid', tooEarly: [] });
      // Closed when the badge was the next order's already.
      tell(log, { ...steps.plain('closed'), versions: [{ artworkId: 'badge', version: 2 }] });
      expect(standing(log, { artworks })).toMatchObject({ state: 'closed', tooEarly: [] });
    },
  );

  it('stays told at what follows where the pictures were made without a yes', () => {
    const { log } = acceptedLog();
    pay(log, 76131);
    tell(log, steps.override('approval'));
    tell(log, { ...steps.plain('pressed'), versions: [...clubArtworks] });
    tell(log, steps.plain('packed'));
    const later = standing(log, { artworks: [{ artworkId: 'badge', version: 2 }] });
    expect(later).toMatchObject({ state: 'packed', tooEarly: [] });
    expect(later.steps.at(-1)?.overridden).toEqual(['approval']);
  });

  it('is passed for what follows by what was printed or pressed, not by blanks, which bear no picture', () => {
    const { log } = readyLog();
    const changed = [{ artworkId: 'badge', version: 2 }];
    const later = { artworks: changed };
    tell(log, { ...steps.plain('blanksOrdered'), versions: [...clubArtworks] });
    tell(log, { ...steps.plain('goodsIn'), versions: changed });
    tell(log, { ...steps.plain('packed'), versions: changed });
    expect(standing(log, later).state).toBe('goodsIn');
    expect(gatesShut(log, later)).toEqual([['packed', 'approval']]);
    // What is pressed anew needs its own yes, whatever was pressed before.
    tell(log, { ...steps.plain('pressed'), versions: [{ artworkId: 'badge', version: 1 }] });
    tell(log, { ...steps.plain('pressed'), versions: changed });
    tell(log, { ...steps.plain('packed'), versions: changed });
    expect(gatesShut(log, later)).toEqual([
      ['packed', 'approval'],
      ['pressed', 'approval'],
    ]);
    expect(standing(log, later).state).toBe('packed');
  });

  it('of the deposit that goes back later is told as shut, and the blanks stay ordered', () => {
    const { log } = readyLog();
    tell(log, steps.plain('blanksOrdered'));
    pay(log, 38066, { more: { kind: 'reversal' } });
    expect(standing(log)).toMatchObject({
      state: 'blanksOrdered',
      gates: { deposit: 'shut' },
      money: { receivedMinor: 0, depositOpenMinor: 38066 },
    });
  });

  it('keeps delivery from counting before the balance, a cent less is not enough', () => {
    const { log } = readyLog();
    tell(log, steps.plain('packed'));
    tell(log, steps.plain('delivered'));
    expect(gatesShut(log)).toEqual([['delivered', 'balance']]);
    pay(log, 38064);
    expect(standing(log).state).toBe('packed');
    pay(log, 1);
    expect(standing(log).state).toBe('paid');
  });

  it('of the balance is open where days of credit are agreed, by the workshop or an invoice due later', () => {
    const { log } = readyLog();
    tell(log, steps.plain('delivered'));
    expect(standing(log).gates.balance).toBe('shut');
    expect(standing(log, { creditDays: 14 }).state).toBe('delivered');
    const atOnce = invoiceOut(log, 76131, { day: '2026-12-14', dueOn: '2026-12-14' });
    expect(standing(log).gates.balance).toBe('shut');
    creditOut(log, atOnce.id, 76131);
    invoiceOut(log, 76131, { day: '2026-12-14', dueOn: '2026-12-28' });
    expect(standing(log)).toMatchObject({ state: 'delivered', money: { dueMinor: 38065 } });
  });

  it.each(['packed', 'closed', 'printed'] as const)(
    'is not gone round by noting only that it is %s',
    (what) => {
      const { log } = acceptedLog();
      tell(log, steps.plain(what));
      expect(standing(log).state).toBe('accepted');
    },
  );

  it('opened by an override with its reason stays told, of the step and of the order', () => {
    const { log } = acceptedLog();
    tell(log, steps.approved());
    tell(log, steps.override('deposit'), { day: '2026-11-27' });
    tell(log, steps.plain('blanksOrdered'));
    expect(standing(log)).toMatchObject({
      state: 'blanksOrdered',
      gates: { deposit: 'overridden' },
      overrides: [{ gate: 'deposit', reason: 'a friend of twenty years', day: '2026-11-27' }],
    });
    expect(standing(log).steps.at(-1)?.overridden).toEqual(['deposit']);
    // The other gates are not opened with it.
    tell(log, steps.plain('delivered'));
    expect(gatesShut(log)).toEqual([['delivered', 'balance']]);
  });
});

describe('the gate of approval, gone through without a yes', () => {
  it('is open for the versions it was opened for, and shut for the next version of a picture', () => {
    const { log } = acceptedLog();
    pay(log, 38066);
    tell(log, steps.override('approval'));
    expect(standing(log).gates.approval).toBe('overridden');
    tell(log, steps.plain('printed'));
    expect(standing(log).state).toBe('printed');
    const later = [
      { artworkId: 'badge', version: 9 },
      { artworkId: 'back', version: 1 },
    ];
    expect(standing(log, { artworks: later }).gates.approval).toBe('shut');
    tell(log, { ...steps.plain('pressed'), versions: later });
    expect(gatesShut(log)).toEqual([['pressed', 'approval']]);
    // Only what was never gone on with waits for a yes.
    approve(log, 'badge', 9);
    expect(standing(log, { artworks: later }).gates.approval).toBe('overridden');
    expect(standing(log).state).toBe('pressed');
  });
});

describe('what else happens to an order', () => {
  it('holds and resumes it, cancels it, loses it with why, and opens it again', () => {
    const { log } = readyLog();
    tell(log, steps.plain('held'), { day: '2026-11-30' });
    expect(standing(log)).toMatchObject({ state: 'ready', side: { side: 'held', since: '2026-11-30' } });
    tell(log, steps.plain('resumed'));
    expect(standing(log).side).toEqual({ side: 'open' });
    tell(log, { what: 'lost', why: 'price', note: '' }, { day: '2026-12-01' });
    expect(standing(log).side).toMatchObject({ side: 'lost', why: 'price', since: '2026-12-01' });
    // Only what was held can be resumed.
    tell(log, steps.plain('resumed'));
    expect(standing(log).side.side).toBe('lost');
    tell(log, steps.plain('reopened'));
    expect(standing(log).side).toEqual({ side: 'open' });
  });

  it('opened again after it was closed, is as far as before until it is closed anew', () => {
    const { log } = readyLog();
    pay(log, 38065);
    tell(log, steps.plain('delivered'));
    tell(log, steps.plain('closed'));
    tell(log, steps.plain('reopened'));
    expect(standing(log).state).toBe('paid');
    tell(log, steps.plain('closed'));
    expect(standing(log).state).toBe('closed');
  });

  it('counts revisions against those included, and keeps reprints by cause and payer', () => {
    const { log } = quotedLog();
    for (const wish of ['larger', 'smaller', 'as before']) tell(log, { what: 'revised', wish });
    tell(log, { what: 'reprint', cause: 'approvedError', payer: 'customer', pieces: 2, note: '' });
    tell(log, { what: 'reminded', of: 'deposit' });
    expect(standing(log)).toMatchObject({
      revisions: { used: 3, included: 2, beyond: 1 },
      reprints: [{ cause: 'approvedError', payer: 'customer', pieces: 2 }],
      reminders: [{ of: 'deposit' }],
    });
    expect(standing(log, { order: { revisionsIncluded: 3 } }).revisions).toEqual({
      used: 3,
      included: 3,
      beyond: 0,
    });
  });

  it('shows the six stretches of its way, with the days reached and promised', () => {
    const { log } = acceptedLog();
    expect(standing(log, { order: { wantedOn: '2026-12-14' } }).track).toEqual([
      { stage: 'enquiry', place: 'past', on: '2026-11-24', by: null },
      { stage: 'quoted', place: 'past', on: '2026-11-26', by: '2026-12-10' },
      { stage: 'agreed', place: 'present', on: null, by: '2026-11-30' },
      { stage: 'making', place: 'ahead', on: null, by: '2026-12-09' },
      // As its quote promised.
      { stage: 'delivered', place: 'ahead', on: null, by: '2026-12-09' },
      { stage: 'paid', place: 'ahead', on: null, by: null },
    ]);
    pay(log, 76131, { day: '2026-11-28' });
    tell(log, steps.approved(), { day: '2026-11-29' });
    tell(log, steps.plain('packed'), { day: '2026-12-05' });
    tell(log, steps.plain('delivered'), { day: '2026-12-06' });
    expect(standing(log).track.map(({ place, on }) => [place, on])).toEqual([
      ['past', '2026-11-24'],
      ['past', '2026-11-26'],
      ['past', '2026-11-29'],
      ['past', '2026-12-05'],
      ['past', '2026-12-06'],
      ['past', '2026-11-28'],
    ]);
  });
});
