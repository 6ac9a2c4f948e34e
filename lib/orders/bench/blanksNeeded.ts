import type { JobBlanks } from '@/shared/jobBlanks';
import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';

interface OfOrder {
  /** Those of the order that are here. */
  readonly jobs: readonly { readonly id: string; readonly job: Pick<Job, 'lines'> }[];
  readonly blanks: Readonly<Record<string, Blank>>;
  /** What lies here, by blank and size; a size nobody counted is left out. */
  readonly onHand: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** Of a job; null while its sums are not known. */
  readonly knownOf: (jobId: string) => JobBlanks | null;
}

/** What jobs are made on, of one blank. */
export interface BlanksNeeded {
  readonly blankId: string;
  /** Null where the blank is not here. */
  readonly blank: Pick<Blank, 'name' | 'suppliedBy'> | null;
  /** Good ones. */
  readonly pieces: number;
  /** Spares among them; null while that is not known. */
  readonly take: number | null;
  /** Spares among them, less what lies here; null while that is not known. What the customer brings is asked of them. */
  readonly get: number | null;
  /** Sizes of which any are needed, in the order of the blank. */
  readonly sizes: readonly {
    readonly size: string;
    readonly pieces: number;
    readonly get: number | null;
  }[];
}

/** What an order is made on. */
export interface OrderBlanks {
  readonly needed: readonly BlanksNeeded[];
  /** What is to be bought, currency units; null while it is not known, or where nothing is. */
  readonly cost: {
    readonly amount: number;
    /** Whether freight is in it: some job may not say. */
    readonly withFreight: boolean;
  } | null;
}

/** @returns what the jobs of an order need of each blank, in the order in which they name them; nothing without pieces. */
export function blanksNeeded({ jobs, blanks, onHand, knownOf }: OfOrder): OrderBlanks {
  const known = jobs.map(({ id, job }) => knownFor(job, knownOf(id)));
  const rows = known.flatMap((one) => one?.sizes ?? []);
  const isKnown = known.every((one) => one !== null);
  const needed = wantedOf(jobs).flatMap(([blankId, of]): readonly BlanksNeeded[] => {
    const blank = blanks[blankId] ?? null;
    const own = (blank?.sizes ?? []).map(({ name }) => name);
    // A size that the blank is made in no more may still be ordered.
    const sizes = [...new Set([...own, ...of.keys()])].flatMap((size) => {
      const pieces = of.get(size) ?? 0;
      const take = sumOf(rows.filter(isOf(blankId, size)).map((row) => row.take));
      const here = blank?.suppliedBy === 'customer' ? 0 : countedOf(onHand, blankId, size);
      return pieces > 0 ? [{ size, pieces, take, get: isKnown ? Math.max(0, take - here) : null }] : [];
    });
    const pieces = sumOf(sizes.map((one) => one.pieces));
    if (pieces === 0) return [];
    return [
      {
        ...{ blankId, blank, pieces },
        take: isKnown ? sumOf(sizes.map((one) => one.take)) : null,
        get: isKnown ? sumOf(sizes.map((one) => one.get ?? 0)) : null,
        sizes: sizes.map(({ size, pieces: good, get }) => ({ size, pieces: good, get })),
      },
    ];
  });
  return {
    needed,
    cost: isKnown
      ? costOf(
          needed,
          known.flatMap((one) => one ?? []),
        )
      : null,
  };
}

// Helpers

type Row = JobBlanks['sizes'][number];

/** @returns null also where the sums are of other pieces than are in the job by now: they are worked out anew then. */
function knownFor(job: Pick<Job, 'lines'>, known: JobBlanks | null): JobBlanks | null {
  if (known === null) return null;
  const isSame = wantedOf([{ job }]).every(([blankId, of]) =>
    [...of].every(
      ([size, pieces]) => sumOf(known.sizes.filter(isOf(blankId, size)).map((row) => row.pieces)) === pieces,
    ),
  );
  return isSame ? known : null;
}

const isOf =
  (blankId: string, size: string) =>
  (row: Row): boolean =>
    row.blankId === blankId && row.size === size;

/** Good pieces by blank and size. */
function wantedOf(
  jobs: readonly { readonly job: Pick<Job, 'lines'> }[],
): readonly (readonly [string, ReadonlyMap<string, number>])[] {
  const wanted = new Map<string, Map<string, number>>();
  for (const { blankId, quantities } of jobs.flatMap(({ job }) => job.lines)) {
    const sizes = wanted.get(blankId) ?? new Map<string, number>();
    for (const { size, quantity } of quantities) sizes.set(size, (sizes.get(size) ?? 0) + quantity);
    wanted.set(blankId, sizes);
  }
  return [...wanted];
}

/** What nobody counted takes nothing away, and less than none does not either. */
function countedOf(onHand: OfOrder['onHand'], blankId: string, size: string): number {
  const sizes = Object.hasOwn(onHand, blankId) ? (onHand[blankId] ?? {}) : {};
  return Object.hasOwn(sizes, size) ? Math.max(0, sizes[size] ?? 0) : 0;
}

/** Freight is of each job that brings anything to buy. */
function costOf(needed: readonly BlanksNeeded[], known: readonly JobBlanks[]): OrderBlanks['cost'] {
  const rows = known.flatMap(({ sizes }) => sizes);
  const bought = needed.filter(({ blank, get }) => blank?.suppliedBy !== 'customer' && (get ?? 0) > 0);
  if (bought.length === 0) return null;
  const freights = known.flatMap(({ freight, sizes }) =>
    sizes.some(({ blankId }) => bought.some((one) => one.blankId === blankId)) ? [freight] : [],
  );
  const price = (blankId: string, size: string) => rows.find(isOf(blankId, size))?.each ?? 0;
  return {
    amount:
      sumOf(
        bought.flatMap(({ blankId, sizes }) =>
          sizes.map(({ size, get }) => (get ?? 0) * price(blankId, size)),
        ),
      ) + sumOf(freights.map((freight) => freight ?? 0)),
    withFreight: freights.every((freight) => freight !== null),
  };
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
