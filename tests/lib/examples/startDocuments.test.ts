import { describe, expect, it } from 'vitest';
import { priceJob } from '@/lib/costing/priceJob';
import { startingBlankNames } from '@/lib/examples/blankPatterns';
import { type ExampleDocument, exampleDocuments } from '@/lib/examples/exampleDocuments';
import { exampleJobIds } from '@/lib/examples/exampleJobIds';
import { type Region, regionOf } from '@/lib/examples/regionOf';
import { noChoices, type StartChoices } from '@/lib/examples/startChoices';
import { type FormerDocuments, startDocuments, startInput } from '@/lib/examples/startDocuments';
import { Grid } from '@/lib/grid/evaluateGrid';
import { kinds } from '@/lib/kinds/kinds';
import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import type { Workshop } from '@/shared/schemas/workshop';

const DAY = '2026-11-25';
const ids = { job: 'first-job', blank: 'first-blank', artwork: 'first-picture' };
const grid = new Grid();

type Shelf = ReadonlyMap<string, ExampleDocument>;
const shelfOf = (documents: readonly ExampleDocument[]): Shelf =>
  new Map(documents.map((one) => [`${one.kind} ${one.id}`, one]));

const bodies = <Body>(shelf: Shelf, kind: ExampleDocument['kind']): Record<string, Body> =>
  Object.fromEntries(
    [...shelf.values()].flatMap((one) => (one.kind === kind ? [[one.id, one.body as Body]] : [])),
  );
const workshopOf = (shelf: Shelf) => bodies<Workshop>(shelf, 'workshop').workshop as Workshop;

const formerOf = (shelf: Shelf, exampleAnew: FormerDocuments['exampleAnew'] = null): FormerDocuments => ({
  workshop: workshopOf(shelf),
  blanks: bodies<Blank>(shelf, 'blank'),
  jobs: Object.entries(bodies<Job>(shelf, 'job')).map(([id, job]) => ({ id, job })),
  exampleAnew,
});

const inputOf = (shelf: Shelf, jobId: string): JobInput =>
  jobInputSchema.parse({
    asOf: DAY,
    workshop: workshopOf(shelf),
    blanks: bodies(shelf, 'blank'),
    artworks: bodies(shelf, 'artwork'),
    job: bodies<Job>(shelf, 'job')[jobId],
  });

const costOf = (shelf: Shelf, jobId: string) => {
  const { costSheet, prices } = priceJob(inputOf(shelf, jobId), grid);
  return { fullCost: costSheet?.fullCost.toFixed(2), target: prices?.targetTotal.toFixed(2) };
};

function started(
  region: Region,
  answers: Partial<StartChoices>,
  before = shelfOf(exampleDocuments(DAY, region)),
) {
  const choices = { ...noChoices(region), make: 'shirt' as const, ...answers };
  const documents = startDocuments(choices.make ?? 'shirt', choices, DAY, formerOf(before), ids);
  return { before, after: new Map([...before, ...shelfOf(documents)]), documents };
}

const us = regionOf('en-US');

describe('a start beside the example', () => {
  it('leaves the example with its sums, to the cent', () => {
    const { before, after } = started(us, {});
    for (const id of exampleJobIds) expect(costOf(after, id)).toEqual(costOf(before, id));
    expect(costOf(after, 'club-order').fullCost).toBe('411.79');
  });

  it('writes nothing but what its schemas read', () => {
    for (const { kind, body } of started(us, { make: 'mug' }).documents) {
      expect(kinds[kind].schema.parse(body)).toEqual(body);
    }
  });

  it('puts the maker’s own machines first, and none of the example before them', () => {
    const workshop = workshopOf(started(us, { make: 'mug', paper: 'wide' }).after);
    expect(workshop.presses.map(({ id }) => id)).toEqual(['press-1', 'flat-press', 'mug-press']);
    expect(workshop.presses.map(({ name }) => name)).toEqual([
      'Mug press',
      'Flat press 15 × 15 in',
      'Mug press 2',
    ]);
    expect(workshop.sheets.map(({ name }) => name)).toEqual(['Wide sheet 13 × 19', 'Letter sheet']);
    expect(workshop.rates.wage).toMatchObject({ value: 18, origin: 'typical' });
  });

  it('brings the example in the money of the place where another is chosen, and its prices hold', () => {
    const before = shelfOf(exampleDocuments(DAY, us));
    const euro = regionOf('de-DE');
    const documents = startDocuments(
      'shirt',
      { ...noChoices(euro), make: 'shirt' },
      DAY,
      formerOf(before, exampleDocuments(DAY, euro)),
      ids,
    );
    const after = new Map([...before, ...shelfOf(documents)]);
    const there = shelfOf(exampleDocuments(DAY, euro));
    expect(workshopOf(after)).toMatchObject(euro);
    for (const id of exampleJobIds) expect(costOf(after, id)).toEqual(costOf(there, id));
  });
});

describe.each(['en-US', 'de-DE', 'en-GB', 'sv-SE', 'ja-JP'])('a first job for %s', (language) => {
  const region = regionOf(language);

  it.each(startingBlankNames)('on a %s has a price at once, and no stop', (make) => {
    const choices = { ...noChoices(region), make };
    const former = formerOf(shelfOf(exampleDocuments(DAY, region)));
    const { prices, findings } = priceJob(startInput(make, choices, DAY, former, ids), grid);
    expect(findings.filter(({ severity }) => severity === 'stop').map(({ id }) => id)).toEqual([]);
    expect(prices?.offer.pieces).toBe(12);
    expect(prices?.offer.payPerHour).toBeGreaterThan(0);
    // Nobody has typed anything yet.
    expect(prices?.rates.typical).toHaveLength(prices?.rates.all ?? 0);
  });

  it.each(['letter', 'a4', 'a3', 'wide', 'roll'] as const)('can be printed on paper %s', (paper) => {
    const choices = { ...noChoices(region), make: 'shirt' as const, paper };
    const former = formerOf(shelfOf(exampleDocuments(DAY, region)));
    const { prices } = priceJob(startInput('shirt', choices, DAY, former, ids), grid);
    expect(prices?.offer.payPerHour).toBeGreaterThan(0);
  });
});

describe('answers', () => {
  const answered = (answers: Partial<StartChoices>) => {
    const choices = { ...noChoices(us), make: 'shirt' as const, ...answers };
    return startInput('shirt', choices, DAY, formerOf(shelfOf(exampleDocuments(DAY, us))), ids);
  };

  it('about the workshop are written where the checks look for them', () => {
    const yes = answered({ isAired: true, hasOwnCircuit: true, usesFreshPaper: true, keepsLabel: true });
    expect(yes.workshop.room.ventilated).toBe(true);
    expect(yes.workshop.circuit).toEqual({ volts: 120, amps: 15, otherWatts: 0 });
    expect(yes.job.sewnLabel).toBe('kept');
    expect(yes.job.lines[0]?.placements[0]?.recipe.protectivePaper).toBe('freshPlain');
    const no = answered({ isAired: false, hasOwnCircuit: false, usesFreshPaper: false, keepsLabel: false });
    expect(no.workshop.room.ventilated).toBe(false);
    expect(no.workshop.circuit).toBeNull();
    expect(no.job.sewnLabel).toBe('removed');
    expect(no.job.lines[0]?.placements[0]?.recipe.protectivePaper).toBe('reused');
  });

  it('that are missing stay unanswered', () => {
    const { workshop, job } = answered({});
    expect([workshop.room.ventilated, workshop.circuit, job.sewnLabel]).toEqual([null, null, 'unknown']);
  });

  it('in figures take the place of the typical ones: pay, shirt, hands, paper', () => {
    const yours = <Unit extends string>(value: number, unit: Unit) => ({
      value,
      unit,
      date: DAY,
      origin: 'yours' as const,
    });
    const { workshop, job, blanks } = answered({
      rates: { wage: yours(25, 'money/h') },
      blankPrice: yours(3.9, 'money/piece'),
      handMinutes: yours(3, 'min'),
      sheetPrice: yours(0.2, 'money/sheet'),
    });
    expect(workshop.rates.wage?.value).toBe(25);
    expect(workshop.sheets[0]?.price?.value).toBe(0.2);
    expect(job.lines[0]?.placements[0]?.handMinutes?.value).toBe(3);
    // 4.60 × 1.35 and × 1.55 for the two large sizes, which have prices of their own.
    expect(blanks['first-blank']?.sizes.map(({ price }) => price?.value)).toEqual([
      3.9, 3.9, 3.9, 3.9, 6.21, 7.13,
    ]);
  });

  it('about quantities of sizes the blank does not have give way to the typical mix', () => {
    const { job } = answered({ quantities: [{ size: '11 oz', quantity: 5 }] });
    expect(job.lines[0]?.quantities.map(({ quantity }) => quantity)).toEqual([1, 3, 4, 2, 1, 1]);
  });
});

describe('money far from the dollar', () => {
  const kronor = regionOf('sv-SE');
  const wageOf = (answers: Partial<StartChoices>, region = kronor) => {
    const choices = { ...noChoices(region), make: 'shirt' as const, ...answers };
    const former = formerOf(shelfOf(exampleDocuments(DAY, region)));
    return startInput('shirt', choices, DAY, former, ids).workshop;
  };

  it('has typical amounts by what a dollar is said to be, ten kronor while nobody says', () => {
    expect(wageOf({}).rates.wage).toMatchObject({ value: 180, origin: 'typical' });
    expect(wageOf({ dollar: 11 }).rates.wage).toMatchObject({ value: 198 });
    expect(wageOf({}).policy.priceStep).toBe(5);
  });

  it('has none where nobody knows what a dollar is, until it is typed', () => {
    const kip = { ...kronor, currency: 'LAK' };
    expect(wageOf({}, kip).rates.wage).toBeNull();
    expect(wageOf({ dollar: 20_000 }, kip).rates.wage).toMatchObject({ value: 360_000 });
  });
});

describe('a start in a workshop that is the maker’s own already', () => {
  const { after: own } = started(us, {});

  it('adds only the press and the sheet that are not there, and leaves every rate', () => {
    const before = workshopOf(own);
    const choices = { ...noChoices(us), make: 'mug' as const };
    const documents = startDocuments('mug', choices, DAY, formerOf(own), {
      job: 'j',
      blank: 'b',
      artwork: 'a',
    });
    const after = new Map([...own, ...shelfOf(documents)]);
    const workshop = workshopOf(after);
    expect(workshop.rates).toEqual(before.rates);
    expect(workshop.sheets).toEqual(before.sheets);
    // The example's mug press does for it.
    expect(workshop.presses).toEqual(before.presses);
    expect(bodies<Job>(after, 'job').j?.lines[0]?.placements[0]?.pressId).toBe('mug-press');
    expect(documents.map(({ kind, id }) => `${kind} ${id}`)).toEqual([
      'workshop workshop',
      'artwork a',
      'job j',
    ]);
  });

  it('adds a press of a size that is not there', () => {
    const choices = {
      ...noChoices(us),
      make: 'shirt' as const,
      press: 'large' as const,
      paper: 'wide' as const,
    };
    const documents = startDocuments('shirt', choices, DAY, formerOf(own), {
      job: 'j',
      blank: 'b',
      artwork: 'a',
    });
    const workshop = workshopOf(shelfOf(documents));
    expect(workshop.presses.at(-1)).toMatchObject({ id: 'press-1-2', name: 'Large flat press' });
    expect(workshop.sheets.at(-1)).toMatchObject({ name: 'Wide sheet 13 × 19' });
  });
});
