import type { Formatter } from '@/app/_words/formatter';
import type { changedSince } from '@/lib/orders/repeat/changedSince';
import type { repeatOrder } from '@/lib/orders/repeat/repeatOrder';

type Repeated = ReturnType<typeof repeatOrder>;

/** @returns what of a repeat need not be done or paid again. */
export function freeWords({ jobs, freeCharges }: Repeated, formatter: Formatter): readonly string[] {
  const pictures = jobs.reduce((sum, { readyPlacements }) => sum + readyPlacements.length, 0);
  const prints = jobs.reduce(
    (sum, { job }) => sum + job.lines.reduce((total, { placements }) => total + placements.length, 0),
    0,
  );
  const proofs = jobs.filter(({ isProofFree }) => isProofFree).length;
  return [
    ...(pictures === 0
      ? []
      : [
          pictures === prints
            ? 'All pictures are prepared, and their tests are made.'
            : `${formatter.count(pictures, 'picture')} of ${formatter.number(prints)} ${pictures === 1 ? 'is' : 'are'} prepared and tested.`,
        ]),
    ...(proofs === 0
      ? []
      : [
          proofs === jobs.length
            ? 'The proof was approved as it is today.'
            : 'A part of the proof was approved as it is today.',
        ]),
    ...(freeCharges.length === 0
      ? []
      : [`Not charged again: ${freeCharges.map(({ what }) => what).join(', ')}.`]),
  ];
}

/** @returns what was of the last order alone, or is not here any more. */
export function leftOutOfRepeat({ missingJobs, leftOut }: Repeated, formatter: Formatter): readonly string[] {
  const parts = [
    leftOut.discount && 'the discount',
    leftOut.agreed && 'what was agreed beside the terms',
    leftOut.names > 0 && formatter.count(leftOut.names, 'name'),
    leftOut.fromLists > 0 && 'prices of a price list',
    leftOut.waivers > 0 && formatter.count(leftOut.waivers, 'passed stop'),
    ...leftOut.otherCharges.map(({ what }) => what),
  ].filter((part) => part !== false);
  return [
    ...(parts.length === 0 ? [] : [`Left out, as it was of that order alone: ${parts.join(', ')}.`]),
    ...(missingJobs.length === 0
      ? []
      : [
          `${formatter.count(missingJobs.length, 'job')} of it ${missingJobs.length === 1 ? 'is' : 'are'} not here any more. Add what is missing in the new order.`,
        ]),
  ];
}

/** @returns what a repeat asks: the prices of its jobs as they stand, and what is suggested where there is none. */
export function priceWords({ jobs }: Repeated, formatter: Formatter): readonly string[] {
  const asked = jobs.flatMap(({ job }) =>
    job.lines.flatMap(({ name, askedPrice, askedStart }) =>
      askedPrice === null
        ? []
        : [
            `${name} ${formatter.money(askedPrice)}${askedStart === null || askedStart === 0 ? '' : ` and ${formatter.money(askedStart)} to start`}`,
          ],
    ),
  );
  const anew = jobs.flatMap(({ pricedAnew }) => pricedAnew);
  const lines = jobs.reduce((sum, { job }) => sum + job.lines.length, 0);
  return [
    ...(asked.length === 0
      ? []
      : [
          `Prices that the jobs ask stay as they are: ${asked.join(', ')}. Each job tells what the rates of today suggest.`,
        ]),
    ...anew.map(
      (name) =>
        `${name} was not sold at one price for each size, and a job asks no other way: the rates of today suggest its price anew.`,
    ),
    ...(lines > asked.length + anew.length ? [FOLLOWS] : []),
  ];
}

export const NOT_TAKEN_REPEAT = 'It could not be made, and nothing was changed. Press again.';

const FOLLOWS = 'What no job has a price for follows the rates of today.';

/** As many rates are named; the quote of the new order tells of all. */
const MOST_RATES = 4;

/**
 * @param artworkName what a picture is called
 * @returns what is otherwise than when the last one was quoted
 */
export function changedWords(
  changed: ReturnType<typeof changedSince>,
  quotedOn: string,
  artworkName: (id: string) => string,
  formatter: Formatter,
): readonly string[] {
  const { rates, artworks, tax, goneBlanks, goneSizes } = changed;
  const moved = rates
    .slice(0, MOST_RATES)
    .map(
      ({ label, was, is, unit }) => `${label} ${formatter.rate(was, unit)}, now ${formatter.rate(is, unit)}`,
    );
  const more =
    rates.length > MOST_RATES ? ` and ${formatter.count(rates.length - MOST_RATES, 'more rate')}` : '';
  return [
    rates.length === 0
      ? `No rate has changed since the quote of ${formatter.day(quotedOn)}.`
      : `Changed since the quote of ${formatter.day(quotedOn)}: ${moved.join('; ')}${more}.`,
    ...artworks.map(
      ({ artworkId, was, is }) =>
        `${artworkName(artworkId)} is in its version ${formatter.number(is)}; quoted was ${formatter.number(was)}.`,
    ),
    ...(tax === null ? [] : [`Tax is ${formatter.share(tax.is)}; it was ${formatter.share(tax.was)}.`]),
    ...goneBlanks.map((line) => `The blank of ${line} is not here any more. Choose another in its job.`),
    ...goneSizes.map(({ line, size }) => `${line} has no ${size} any more. Change its sizes in the job.`),
  ];
}
