import { expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { priceWords } from '@/app/_words/orders/board/repeatWords';
import type { Line } from '@/shared/schemas/job';
import { club } from '@/tests/fixtures/clubJob';

const { job, workshop } = club();

/** What is said of a repeat of two lines, the first of which is priced as told. */
const said = (price: Partial<Line>, pricedAnew: readonly string[]): readonly string[] => {
  const lines = job.lines.flatMap((line) => [
    { ...line, ...price },
    { ...line, name: 'Cap', askedPrice: null },
  ]);
  const one = { ...{ id: 'new', repeats: 'job', readyPlacements: [], isProofFree: false, waivers: 0 } };
  return priceWords(
    {
      jobs: [{ ...one, job: { ...job, lines }, pricedAnew }],
    } as unknown as Parameters<typeof priceWords>[0],
    formatterFor(workshop),
  );
};

it('a repeat says which prices stay, with what is paid to start, and that the others follow the rates', () => {
  expect(said({ askedPrice: 19, askedStart: 20 }, [])).toEqual([
    'Prices that the jobs ask stay as they are: Club shirt 19.00 USD and 20.00 USD to start. Each job tells what the rates of today suggest.',
    'What no job has a price for follows the rates of today.',
  ]);
});

it('a repeat says why a price is suggested anew', () => {
  expect(said({ askedPrice: null, askedStart: null }, ['Club shirt'])).toEqual([
    'Club shirt was not sold at one price for each size, and a job asks no other way: the rates of today suggest its price anew.',
    'What no job has a price for follows the rates of today.',
  ]);
});
