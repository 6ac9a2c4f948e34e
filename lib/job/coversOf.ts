import { enoughGood } from '@/lib/statistics/enoughGood';
import { type Cover, covers } from '@/shared/schemas/making/supply';
import { thresholds } from '@/shared/tables/thresholds';
import { cheapestCover, drawnFor } from './cheapestCover';
import { expectedBlanks } from './expectedBlanks';

/** Blanks of all sizes for one cover. */
export interface CoverChoice {
  readonly cover: Cover;
  /** Blanks of the maker, all sizes and blanks together. */
  readonly bought: number;
  /** How likely it is that every size comes out whole, 0 to 1: of works that share no blanks the least sure. */
  readonly everySize: number;
  /** The same of all works at once. */
  readonly everyWork: number;
  /** What they cost by the job's own prices, currency units, without freight. */
  readonly cost: number;
  /** How much dearer it may be than the cheapest that reaches the cover; 0 where it is the cheapest. */
  readonly dearerAtMost: number;
  readonly sizes: readonly CoverSize[];
}

/** A size of a blank in one cover. */
interface CoverSize {
  readonly blankId: string;
  readonly size: string;
  /** Good pieces, over all works. */
  readonly pieces: number;
  /** Blanks, spares among them. */
  readonly take: number;
  /** How likely this size comes out whole, 0 to 1. */
  readonly chance: number;
}

/** A size of a blank for one work. */
interface SizeOfWork {
  /** Place of the work. */
  readonly work: number;
  readonly blankId: string;
  readonly size: string;
  /** Good pieces, whole. */
  readonly pieces: number;
  /** That a blank ends good, above 0, up to 1. */
  readonly chance: number;
  /** Currency units. */
  readonly each: number;
}

/** @returns the three choices for some works: what is expected to be used, every size whole at 75 % and at 95 %. */
export const coversOf = (sizes: readonly SizeOfWork[]): readonly CoverChoice[] =>
  covers.map((cover) => coverOf(sizes, cover));

/**
 * Blanks of one size are one stack, whoever they are for: works that share it share its spares, and are covered
 * together. Works that share nothing are covered each for itself, as the sheet of each at the bench has it.
 *
 * @param sizes a size of a blank may stand there once for each work, at whatever chance
 */
export function coverOf(sizes: readonly SizeOfWork[], cover: Cover): CoverChoice {
  const stacks = stacksOf(sizes);
  const found = cover === 'expected' ? expectedCover(stacks) : sureCover(stacks, cover);
  const covered = coveredBy(stacks, found.chances);
  return {
    ...{ cover, dearerAtMost: found.dearerAtMost },
    ...{ everySize: leastOf(covered), everyWork: productOf(covered) },
    bought: sumOf(found.blanks),
    cost: sumOf(stacks.map(({ price }, at) => (found.blanks[at] ?? 0) * price)),
    sizes: stacks.map(({ blankId, size, wanted }, at): CoverSize => {
      const pieces = sumOf(wanted.map((one) => one.pieces));
      return {
        ...{ blankId, size, pieces },
        take: found.blanks[at] ?? 0,
        chance: found.chances[at] ?? 0,
      };
    }),
  };
}

/** @returns how likely a size comes out whole with so many blanks, 0 to 1. */
export function chanceWith(
  sizes: readonly SizeOfWork[],
  of: Pick<CoverSize, 'blankId' | 'size'>,
  blanks: number,
) {
  const wanted = sizes.filter(({ blankId, size }) => blankId === of.blankId && size === of.size);
  return Math.exp(enoughGood(wanted)(Math.floor(blanks)));
}

/**
 * @param blanksOf how many there are of a size
 * @returns how likely every size comes out whole with so many, of works that share no blanks the least sure, 0 to 1
 */
export function everySizeWith(
  sizes: readonly SizeOfWork[],
  blanksOf: (of: Pick<CoverSize, 'blankId' | 'size'>) => number,
): number {
  const stacks = stacksOf(sizes);
  const chances = stacks.map((stack) => Math.exp(enoughGood(stack.wanted)(Math.floor(blanksOf(stack)))));
  return leastOf(coveredBy(stacks, chances));
}

// Helpers

const coveredBy = (stacks: readonly Stack[], chances: readonly number[]): readonly number[] =>
  groupsOf(stacks).map((places) => productOf(places.map((at) => chances[at] ?? 0)));

const leastOf = (chances: readonly number[]): number => Math.min(1, ...chances);

interface Stack {
  readonly blankId: string;
  readonly size: string;
  readonly wanted: readonly SizeOfWork[];
  readonly price: number;
}

/** By stack. */
interface Found {
  readonly blanks: readonly number[];
  readonly chances: readonly number[];
  readonly dearerAtMost: number;
}

function stacksOf(sizes: readonly SizeOfWork[]): readonly Stack[] {
  const stacks = new Map<string, SizeOfWork[]>();
  for (const one of sizes) {
    const key = JSON.stringify([one.blankId, one.size]);
    const stack = stacks.get(key) ?? [];
    stack.push(one);
    stacks.set(key, stack);
  }
  return [...stacks.values()].flatMap((wanted) => {
    const [first] = wanted;
    if (first === undefined) return [];
    const { blankId, size, each } = first;
    return [{ blankId, size, wanted, price: each }];
  });
}

/** @returns places of stacks that are covered together: those that works lead to from one to the other. */
function groupsOf(stacks: readonly Stack[]): readonly (readonly number[])[] {
  let groups: { readonly works: ReadonlySet<number>; readonly places: readonly number[] }[] = [];
  for (const [at, { wanted }] of stacks.entries()) {
    const works = new Set(wanted.map(({ work }) => work));
    const met = groups.filter((group) => [...works].some((work) => group.works.has(work)));
    groups = [
      ...groups.filter((group) => !met.includes(group)),
      {
        works: new Set([...met.flatMap((group) => [...group.works]), ...works]),
        places: [...met.flatMap(({ places }) => places), at],
      },
    ];
  }
  return groups.map(({ places }) => places);
}

function sureCover(stacks: readonly Stack[], cover: 'usual' | 'sure'): Found {
  const blanks = stacks.map(() => 0);
  const chances = stacks.map(() => 0);
  let dearerAtMost = 0;
  for (const places of groupsOf(stacks)) {
    const found = cheapestCover(
      places.flatMap((at) => stacks[at] ?? []),
      thresholds.spares[cover].value,
    );
    dearerAtMost += found.dearerAtMost;
    places.forEach((at, index) => {
      blanks[at] = found.blanks[index] ?? 0;
      chances[at] = found.chances[index] ?? 0;
    });
  }
  return { blanks, chances, dearerAtMost };
}

/** Sizes of one blank pool what is expected of them; they come out whole only as often as the chances say. */
function expectedCover(stacks: readonly Stack[]): Found {
  const blanks = stacks.map(() => 0);
  for (const blankId of new Set(stacks.map((stack) => stack.blankId))) {
    const places = stacks.flatMap((stack, at) => (stack.blankId === blankId ? [at] : []));
    const whole = expectedBlanks(places.map((at) => drawnFor(stacks[at]?.wanted ?? [])));
    places.forEach((at, index) => {
      blanks[at] = whole[index] ?? 0;
    });
  }
  const chances = stacks.map(({ wanted }, at) => Math.exp(enoughGood(wanted)(blanks[at] ?? 0)));
  return { blanks, chances, dearerAtMost: 0 };
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

const productOf = (values: readonly number[]): number =>
  values.reduce((product, value) => product * value, 1);
