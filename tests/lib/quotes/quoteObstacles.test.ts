import { describe, expect, it } from 'vitest';
import { quoteObstacleWords } from '@/app/_words/orders/quote/quoteObstacleWords';
import { newJob } from '@/lib/drafts/newJob';
import type { JobInput } from '@/shared/schemas/request';
import { club, clubWith, TODAY } from '@/tests/fixtures/clubJob';
import { DAY } from '@/tests/fixtures/numbers';
import { anItem, aVersion } from '@/tests/lib/priceLists/aVersion';
import { plainInput } from './plainQuote';
import { clubCustomer, made, refused } from './quoteTools';

const kindsOf = (...asked: Parameters<typeof refused>) => refused(...asked).map(({ kind }) => kind);
const kindsOrNone = (asked: Parameters<typeof made>[0]) => {
  const outcome = made(asked);
  return outcome.kind === 'refused' ? outcome.obstacles.map(({ kind }) => kind) : [];
};
const context = {
  locale: 'en-US',
  currency: 'USD',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
} as const;
const certificate = (validUntil: string | null) =>
  clubCustomer({ exemption: { number: 'RS-1', validUntil, proof: null } });

describe('a quote is not made', () => {
  it('for nobody, or for somebody whose name was taken out', () => {
    expect(kindsOf({ customer: null })).toEqual(['noCustomer']);
    expect(kindsOf({ customer: clubCustomer({ erasedOn: TODAY }) })).toEqual(['noCustomer']);
  });

  it('of nothing', () => {
    expect(kindsOf({ jobs: [], order: { jobIds: [] } })).toEqual(['nothingOrdered']);
    expect(kindsOf({ order: { jobIds: ['club-order', 'gone'] } })).toEqual(['jobGone']);
  });

  it('of a job of which nobody has chosen anything, unless somebody says that it is right so', () => {
    const { workshop, blanks, asOf } = club();
    const [id = '', body] = Object.entries(blanks)[0] ?? [];
    if (body === undefined) throw new Error('the example has no blank');
    const begunNow = newJob({ name: 'Caps', day: asOf, workshop, blank: { id, body }, artworkId: 'first' });
    const input: JobInput = {
      ...{ asOf, workshop, blanks, artworks: { first: begunNow.artwork }, onHand: {}, approvedVersions: {} },
      job: begunNow.job,
    };
    expect(refused({ input })).toContainEqual({
      ...{ kind: 'asBegun', jobId: 'club-order', lineId: 'line-1', name: body.name, job: 'Caps' },
      ...{ pieces: 12, picture: 'First picture' },
    });
    const lines = [{ jobId: 'club-order', lineId: 'line-1', rightAsBegun: true }];
    const order = { lines };
    expect(kindsOrNone({ order, input })).not.toContain('asBegun');
    // In every word that it is told by.
    const [begun] = refused({ input });
    expect(begun === undefined ? '' : quoteObstacleWords(begun, context)).toBe(
      `The job “Caps” is as it began: 12 × ${body.name}, printed with “First picture”. Nobody has chosen that yet, so the quote would be for goods nobody asked for. Choose the blank, the sizes and the print in the job, or say that it is right so.`,
    );
  });

  it('while a job has a stop, and says which', () => {
    const [obstacle] = refused({ input: clubWith({ 'job.lines.0.quantities.0.size': 'no such size' }) });
    expect(obstacle).toMatchObject({ kind: 'stopped', jobId: 'club-order', name: 'Ramblers Club shirts' });
  });

  it('before anybody has said how tax stands to prices', () => {
    expect(kindsOf({ input: clubWith({ 'workshop.channels.0.taxMode': null }) })).toEqual(['noTaxMode']);
    expect(kindsOf({ order: { channelId: 'gone' } })).toEqual(['noChannel']);
  });

  it('with tax inside some prices and not others', () => {
    expect(refused({ order: { channelId: 'stall' } })).toEqual([
      { kind: 'mixedChannels', channels: ['Own orders, half by transfer and half by card', 'Market stall'] },
    ]);
  });

  it('without tax on no certificate, or on one that has ended', () => {
    expect(kindsOf({ order: { exempt: true } })).toEqual(['noCertificate']);
    expect(kindsOf({ order: { exempt: true }, customer: certificate('2026-11-24') })).toEqual([
      'certificateExpired',
    ]);
  });

  it('with more taken off than there is, or all of it', () => {
    const off = (amount: number) => ({ discount: { kind: 'amount', amount, why: '' } });
    expect(refused({ order: off(711.51) })).toEqual([
      { kind: 'discountOver', discount: 71_151, before: 71_150 },
    ]);
    expect(kindsOf({ order: off(711.5) })).toEqual(['asksNothing']);
  });

  it('for a day that is past', () => {
    expect(refused({ order: { wantedOn: '2026-11-24' } })).toContainEqual({
      kind: 'wantedInPast',
      wantedOn: '2026-11-24',
    });
  });

  it('under what it costs in full, unless its maker says why', () => {
    // 37 at 10.00 with up-charges of 8.50 are 378.50, and 411.79 are its cost.
    const input = clubWith({ 'job.lines.0.askedPrice': 10 });
    const [obstacle] = refused({ input });
    expect(obstacle).toMatchObject({ kind: 'underCost', fullCost: expect.closeTo(411.79, 2) });
  });

  it('under its floor either, where the stop of the job is the price alone', () => {
    expect(kindsOf({ input: clubWith({ 'job.lines.0.askedPrice': 5 }) })).toEqual(['underCost']);
  });

  it('of more lines than a paper holds', () => {
    const input = plainInput({ sizes: [{ quantity: 1, blank: 1 }], asked: 10 });
    const [line] = input.job.lines;
    if (line === undefined) throw new Error('no line');
    const lines = Array.from({ length: 10 }, (_, at) => ({
      ...line,
      ...{ id: `line-${at}`, name: `Line ${at}` },
      placements: line.placements.map((one) => ({ ...one, id: `print-${at}` })),
    }));
    const ids = ['a', 'b', 'c', 'd', 'e'];
    const jobs = ids.map((jobId) => ({ jobId, input: { ...input, job: { ...input.job, lines } } }));
    expect(refused({ jobs, day: DAY, order: { jobIds: ids } })).toEqual([
      { kind: 'tooManyLines', lines: 50, most: 48 },
    ]);
  });

  it('of more money than is kept exact', () => {
    const order = {
      lines: [
        { jobId: 'club-order', lineId: 'shirts', price: { from: 'list', paperId: 'list', itemId: 'shirts' } },
      ],
    };
    const sizes = ['S', 'M', 'L', 'XL', '2XL', '3XL'].map((size) => ({ size, upCharge: 0 }));
    const breaks = [{ from: 1, to: null, each: 1e12, leastAt: 1, leastSize: 'S', leastMargin: 0.3 }];
    const version = aVersion({ items: [anItem({ sizes, breaks })] });
    expect(kindsOf({ order, versions: [{ paperId: 'list', version, isWithdrawn: false }] })).toEqual([
      'tooLarge',
    ]);
  });

  it('and tells everything at once, each in words', () => {
    const obstacles = refused({
      customer: null,
      order: { exempt: true, wantedOn: '2026-11-24', jobIds: ['club-order', 'gone'] },
      input: club(),
    });
    expect(obstacles.map(({ kind }) => kind)).toEqual([
      'noCustomer',
      'jobGone',
      'wantedInPast',
      'noCertificate',
    ]);
    for (const obstacle of obstacles) expect(quoteObstacleWords(obstacle, context)).toMatch(/^[A-Z].*\.$/);
  });
});
