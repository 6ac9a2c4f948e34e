import { copiedJob } from '@/lib/drafts/copiedJob';
import { freeName } from '@/lib/drafts/freeName';
import type { OrderStanding } from '@/lib/orders/orderStanding';
import { isMaking } from '@/lib/orders/stepOrder';
import type { Job, Placement } from '@/shared/schemas/job';

/** What of a print need not be done again. */
interface FreeArtworks {
  /** The same version was made for the order: it is prepared, and its recipe is known. */
  readonly made: ReadonlySet<string>;
  /** The customer said yes to the version of today. */
  readonly approved: ReadonlySet<string>;
}

export interface RepeatedJob {
  readonly job: Job;
  /** Placements whose picture is ready and needs no test. */
  readonly readyPlacements: readonly string[];
  readonly isProofFree: boolean;
  /** How many stops were passed with a reason, which was given for one order. */
  readonly waivers: number;
  /** Lines that are priced anew: what their job asked was made of several prices and told to nobody. */
  readonly pricedAnew: readonly string[];
}

/** @returns which artworks are as they were: what the order made, else what its quote showed, is the version of today. */
export function freeOnRepeat({
  artworks,
  agreed,
  lastQuote,
  steps,
}: Pick<OrderStanding, 'artworks' | 'agreed' | 'lastQuote' | 'steps'>): FreeArtworks {
  const quote = agreed?.quote ?? lastQuote;
  const quoted = (quote?.body.goods ?? []).flatMap(({ prints }) => prints.map(({ artwork }) => artwork));
  const made = steps.flatMap(({ step }) =>
    isMaking(step.what) && 'versions' in step ? (step.versions ?? []) : [],
  );
  const versions = new Map([...quoted, ...made].map(({ artworkId, version }) => [artworkId, version]));
  return {
    made: new Set(
      artworks.flatMap(({ artworkId, version }) => (versions.get(artworkId) === version ? [artworkId] : [])),
    ),
    approved: new Set(artworks.flatMap(({ artworkId, holds }) => (holds ? [artworkId] : []))),
  };
}

interface Repeating {
  readonly free: FreeArtworks;
  readonly today: string;
  /** Names of all jobs. */
  readonly taken: readonly string[];
  /** Lines by id whose price is of the order before alone. */
  readonly mixed: readonly string[];
}

/** @returns a job as an order after another makes it. */
export function repeatedJob(before: Job, { free, today, taken, mixed }: Repeating): RepeatedJob {
  const { job, leftOut } = copiedJob(before, taken);
  const placements = job.lines.flatMap((line) => line.placements);
  const ready = placements.filter(({ artworkId }) => free.made.has(artworkId));
  const isProofFree = placements.every(({ artworkId }) => free.approved.has(artworkId));
  const { proofMinutes: _, ...rates } = job.rates;
  return {
    job: {
      ...job,
      name: freeName(before.name, taken),
      rates: isProofFree
        ? { ...rates, proofMinutes: { value: 0, unit: 'min', date: today, origin: 'yours' } }
        : rates,
      lines: job.lines.map((line) => ({
        ...line,
        ...(mixed.includes(line.id) && { askedPrice: null, askedStart: null }),
        placements: line.placements.map((placement) => repeatedPlacement(placement, free)),
      })),
    },
    readyPlacements: ready.map(({ id }) => id),
    isProofFree,
    waivers: leftOut.waivers,
    pricedAnew: job.lines.flatMap(({ id, name }) => (mixed.includes(id) ? [name] : [])),
  };
}

/** Its tests found the recipe, which is known now. */
function repeatedPlacement(placement: Placement, { made }: FreeArtworks): Placement {
  const { artReady: _, ...rest } = placement;
  return made.has(placement.artworkId) ? { ...rest, artReady: true, testPresses: 0 } : rest;
}
