import type { Artwork } from '@/shared/schemas/artwork';
import type { Line } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import { newJob } from './newJob';
import { scaledJob } from './scaledJob';
import { typicalMix } from './typicalMix';

/**
 * Whether nobody has chosen anything of a job yet: its line, sizes, print, picture and price are those it began with.
 * How many pieces there are says nothing, for it may begin with as many as were asked for; nor does its blank alone,
 * which brings its own name and sizes.
 */
export function isAsBegun({ asOf, job, workshop, blanks, artworks }: JobInput): boolean {
  const [line, ...furtherLines] = job.lines;
  const [placement, ...furtherPrints] = line?.placements ?? [];
  if (line === undefined || placement === undefined) return false;
  if (furtherLines.length > 0 || furtherPrints.length > 0) return false;
  const pieces = line.quantities.reduce((sum, { quantity }) => sum + quantity, 0);
  const artwork = Object.hasOwn(artworks, placement.artworkId) ? artworks[placement.artworkId] : undefined;
  if (artwork === undefined || pieces <= 0 || !Number.isInteger(pieces)) return false;
  const body = Object.hasOwn(blanks, line.blankId) ? blanks[line.blankId] : undefined;
  const { printerId, sheetId } = job;
  const begun = newJob({
    ...{ name: job.name, day: placement.handMinutes?.date ?? asOf, workshop, artworkId: placement.artworkId },
    blank: body === undefined ? null : { id: line.blankId, body },
    machines: { printerId, sheetId, pressId: placement.pressId },
  });
  const [first] = begun.job.lines;
  const [asked] = scaledJob(begun.job, pieces).lines;
  const sizes = body?.sizes.map(({ name }) => name) ?? [];
  if (first === undefined || asked === undefined) return false;
  return (
    chosenOf(line) === chosenOf(first) &&
    seenOf(artwork) === seenOf(begun.artwork) &&
    [asked.quantities, typicalMix(sizes, pieces)].some((mix) => mixOf(mix) === mixOf(line.quantities))
  );
}

// Helpers

/** What somebody chooses of a line, but for its pieces. */
const chosenOf = ({ name, askedPrice, ownPrices, nameList, placements }: Line): string =>
  JSON.stringify([
    ...[name, askedPrice, ownPrices, nameList],
    placements.map((one) => [
      one.name,
      one.position,
      one.prints.map(({ sizes, widthMm, heightMm }) => [sizes, widthMm, heightMm]),
    ]),
  ]);

const seenOf = ({ name, version, picture, pixels, coverage, rights }: Artwork): string =>
  JSON.stringify([name, version, picture, pixels, coverage, rights.state, rights.note]);

const mixOf = (quantities: Line['quantities']): string =>
  JSON.stringify(quantities.map(({ size, quantity }) => [size, quantity]));
