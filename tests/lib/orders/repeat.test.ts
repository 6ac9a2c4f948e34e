import { describe, expect, it } from 'vitest';
import { wholeJob } from '@/lib/grid/costSheet';
import type { ArtworkVersion } from '@/lib/orders/orderFacts';
import { orderStanding } from '@/lib/orders/orderStanding';
import { changedSince } from '@/lib/orders/repeat/changedSince';
import { repeatOrder } from '@/lib/orders/repeat/repeatOrder';
import { jobsAsAgreed } from '@/lib/quotes/agreed/jobAsAgreed';
import { type Order, orderSchema } from '@/shared/schemas/order';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { club, TODAY } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';
import {
  anOrderLog,
  approve,
  clubQuote,
  factsOf,
  issue,
  type OrderLog,
  steps,
  tell,
} from '@/tests/fixtures/orderLog';
import { clubAlternatives, ready } from '@/tests/lib/quotes/quoteTools';

const first: readonly ArtworkVersion[] = [
  { artworkId: 'club-crest', version: 1 },
  { artworkId: 'hill-path', version: 1 },
];
const line = {
  jobId: 'job-1',
  lineId: 'shirts',
  names: [{ id: 'n-1', name: 'Sam', size: 'L', number: '7' }],
};
const charges = [
  { id: 'c-1', kind: 'design', what: 'Setting up', amount: 20 },
  { id: 'c-2', kind: 'delivery', what: 'Delivery', amount: 8 },
  { id: 'c-3', kind: 'rush', what: 'In three days', amount: 60 },
] as const;
const was: Order = orderSchema.parse({
  ...{ name: 'Ramblers Club shirts', jobIds: ['job-1', 'gone'], customerId: 'club', asked: 'As last year' },
  ...{
    lines: [line],
    charges,
    wantedOn: '2026-12-14',
    agreed: 'Paid in two parts',
    heardFrom: 'a neighbour',
  },
  discount: { kind: 'share', share: 0.1, why: 'First order' },
  openItems: [{ id: 'o-1', what: 'Letter', ofWhom: 'customer' }],
});

/** The club's order, accepted and approved in its first versions. */
const clubLog = (): OrderLog => {
  const log = anOrderLog();
  const quote = issue(log, 'quote', clubQuote({}, first));
  tell(log, steps.accepted(quote.id));
  for (const { artworkId, version } of first) approve(log, artworkId, version);
  return log;
};
const repeated = (artworks = first, log = clubLog(), job = club().job) => {
  const facts = factsOf(log, { order: was, artworks });
  let made = 0;
  return repeatOrder({
    facts,
    standing: orderStanding(facts),
    jobs: { 'job-1': job },
    workshop: club().workshop,
    today: TODAY,
    makeId: () => {
      made += 1;
      return `new-${made}`;
    },
    orderNames: [was.name],
    jobNames: [job.name],
  });
};
/** The club took “three more in L”: 37 at 19.00 to 21.50 and three at 12.50, and its job became that. */
function takenForty() {
  const log = anOrderLog();
  const { goods, alternatives } = ready({ order: { alternatives: clubAlternatives } }).body;
  const ofJob = <One extends { readonly jobId: string }>(one: One) => ({ ...one, jobId: 'job-1' });
  const quote = issue(
    log,
    'quote',
    clubQuote({
      goods: goods.map(ofJob),
      alternatives: alternatives.map((one) => ({
        ...one,
        priced: { ...one.priced, lines: one.priced.lines.map(ofJob) },
      })),
    }),
  );
  tell(log, steps.accepted(quote.id, 'forty'));
  const [become] = jobsAsAgreed({
    ...{ quote: quote.body, alternativeId: 'forty', order: was, workshop: club().workshop },
    jobs: [{ jobId: 'job-1', job: club().job }],
  });
  if (become === undefined) throw new Error('the job stays as it is');
  return { log, job: become.job };
}
const costOf = (job: JobInput['job']) => costed(jobInputSchema.parse({ ...club(), job })).sheet;

describe('an order that is repeated', () => {
  it('bears the customer and what is made, and nothing that was of the last one alone', () => {
    const { order, jobs, missingJobs, freeCharges, leftOut } = repeated();
    expect(orderSchema.parse(order)).toEqual(order);
    expect(order).toMatchObject({
      ...{ name: 'Ramblers Club shirts 2', customerId: 'club', repeats: 'order-1', jobIds: ['new-1'] },
      ...{ wantedOn: null, openItems: [], discount: null, agreed: '', asked: '' },
      lines: [{ jobId: 'new-1', lineId: 'shirts', price: { from: 'job' }, names: [] }],
      charges: [{ kind: 'delivery' }],
    });
    expect(jobs.map(({ id, repeats }) => [id, repeats])).toEqual([['new-1', 'job-1']]);
    expect(missingJobs).toEqual(['gone']);
    expect(freeCharges.map(({ kind }) => kind)).toEqual(['design']);
    expect(leftOut).toMatchObject({ discount: true, agreed: true, names: 1, fromLists: 0, waivers: 0 });
    expect(leftOut.otherCharges.map(({ kind }) => kind)).toEqual(['rush']);
  });

  it('has art, proof and tests free where the pictures are as they were', () => {
    const [copy] = repeated().jobs;
    expect(copy?.isProofFree).toBe(true);
    expect(copy?.readyPlacements).toEqual(['back', 'badge']);
    const job = copy?.job ?? club().job;
    const [before, after] = [costOf(club().job), costOf(job)];
    // The worked example: 45 minutes of art and 15 of the proof; enquiry 40, packing 12, delivery 30 stay.
    expect([wholeJob(before, 'designTime'), wholeJob(after, 'designTime')]).toEqual([45, 0]);
    expect(wholeJob(before, 'orderTime')).toBeCloseTo(97, 9);
    expect(wholeJob(after, 'orderTime')).toBeCloseTo(82, 9);
    // Two tests fewer, so two sheets fewer of 52.90.
    expect(wholeJob(before, 'sheets') - wholeJob(after, 'sheets')).toBeCloseTo(2, 9);
  });

  it('has a changed picture prepared, tested and proven again', () => {
    const [copy] = repeated([
      { artworkId: 'club-crest', version: 2 },
      { artworkId: 'hill-path', version: 1 },
    ]).jobs;
    expect(copy?.readyPlacements).toEqual(['back']);
    expect(copy?.isProofFree).toBe(false);
    const sheet = costOf(copy?.job ?? club().job);
    // The crest takes its 15 minutes again.
    expect(wholeJob(sheet, 'designTime')).toBeCloseTo(15, 9);
    expect(wholeJob(sheet, 'orderTime')).toBeCloseTo(97, 9);
  });

  it('takes what was made before what was quoted', () => {
    const log = clubLog();
    tell(log, { ...steps.plain('pressed'), versions: [{ artworkId: 'club-crest', version: 2 }] });
    const [copy] = repeated(
      [
        { artworkId: 'club-crest', version: 2 },
        { artworkId: 'hill-path', version: 1 },
      ],
      log,
    ).jobs;
    expect(copy?.readyPlacements).toEqual(['back', 'badge']);
  });

  it('prices anew what was sold at two prices, for the price of its job was told to nobody', () => {
    const taken = takenForty();
    const [copy] = repeated(first, taken.log, taken.job).jobs;
    expect(copy?.pricedAnew).toEqual(['Club shirt']);
    expect(copy?.job.lines[0]).toMatchObject({ askedPrice: null, askedStart: null });
    const job = copy?.job ?? club().job;
    const { body } = ready({ input: jobInputSchema.parse({ ...club(), job }) });
    // No set-up line of a coin, and 37 and three are forty at one price a size.
    const [goods] = body.goods;
    expect(goods?.start).toBe(0);
    expect(goods?.sizes.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(40);
    expect(goods?.sizes.map(({ size }) => size)).toEqual(['S', 'M', 'L', 'XL', '2XL', '3XL']);
    expect(goods?.sizes.map(({ each }) => each)).not.toContain(1851);
  });

  it('keeps the price that it was sold at, as its job asks it', () => {
    const [copy] = repeated().jobs;
    expect(copy?.pricedAnew).toEqual([]);
    expect(copy?.job.lines[0]?.askedPrice).toBe(19);
  });

  it('of a repeat has nothing free any more once its picture changed', () => {
    const [copy] = repeated().jobs;
    const other = [
      { artworkId: 'club-crest', version: 2 },
      { artworkId: 'hill-path', version: 2 },
    ];
    const [next] = repeated(other, clubLog(), copy?.job).jobs;
    expect(next?.readyPlacements).toEqual([]);
    expect(next?.job.rates.proofMinutes).toBeUndefined();
    expect(next?.job.lines[0]?.placements.map(({ artReady }) => artReady)).toEqual([undefined, undefined]);
  });
});

describe('what changed since an order was quoted', () => {
  const rate = (place: string, value: number) => ({
    place,
    label: place,
    value,
    unit: 'money/pc',
    date: TODAY,
  });
  const owner = { ...clubQuote().owner, rates: [rate('shirt', 4.83), rate('wage', 18), rate('gone', 1)] };

  it('names rates, pictures, tax, blanks and sizes that are otherwise', () => {
    const { job, blanks } = club();
    const quote = issue(anOrderLog(), 'quote', clubQuote({ owner }, first));
    const now = {
      quote,
      ratesNow: [rate('shirt', 5.1), rate('wage', 18), rate('new', 2)],
      artworksNow: [
        { artworkId: 'club-crest', version: 3 },
        { artworkId: 'hill-path', version: 1 },
      ],
      jobs: [job],
      blanks,
      taxNow: { mode: 'added', share: 0.08 },
    } as const;
    expect(changedSince(now)).toEqual({
      rates: [{ label: 'shirt', was: 4.83, is: 5.1, unit: 'money/pc' }],
      artworks: [{ artworkId: 'club-crest', was: 1, is: 3 }],
      tax: { was: 0.07, is: 0.08 },
      goneBlanks: [],
      goneSizes: [],
    });
    expect(changedSince({ ...now, blanks: {}, taxNow: { mode: 'added', share: 0.07 } })).toMatchObject({
      tax: null,
      goneBlanks: [job.lines[0]?.name],
    });
    const [id = '', shirt] = Object.entries(blanks)[0] ?? [];
    const small = { [id]: { ...shirt, sizes: shirt?.sizes.filter(({ name }) => name !== '3XL') ?? [] } };
    expect(changedSince({ ...now, blanks: { ...blanks, ...small } as typeof blanks }).goneSizes).toEqual([
      { line: job.lines[0]?.name, size: '3XL' },
    ]);
  });
});
