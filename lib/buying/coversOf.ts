import { cheapestCover, drawnFor } from '@/lib/job/cheapestCover';
import { expectedBlanks } from '@/lib/job/expectedBlanks';
import { enoughGood } from '@/lib/statistics/enoughGood';
import { type Cover, covers } from '@/shared/schemas/supply';
import { thresholds } from '@/shared/tables/thresholds';
import type { CoverChoice, CoverSize } from './buyingPlan';

/** A size of a blank for one work. */
export interface SizeOfWork {
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
 * Blanks of one size are one stack, whoever they are for: works that share it share its spares.
 *
 * @param sizes a size of a blank may stand there once for each work, at whatever chance
 */
export function coverOf(sizes: readonly SizeOfWork[], cover: Cover): CoverChoice {
  const stacks = stacksOf(sizes);
  const found = cover === 'expected' ? expectedCover(stacks) : sureCover(stacks, cover);
  return {
    ...{ cover, everySize: found.covered, dearerAtMost: found.dearerAtMost },
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

// Helpers

interface Stack {
  readonly blankId: string;
  readonly size: string;
  readonly wanted: readonly SizeOfWork[];
  readonly price: number;
}

type Found = ReturnType<typeof cheapestCover>;

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

const sureCover = (stacks: readonly Stack[], cover: 'usual' | 'sure'): Found =>
  cheapestCover(stacks, thresholds.spares[cover].value);

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
  return { blanks, chances, covered: chances.reduce((all, one) => all * one, 1), dearerAtMost: 0 };
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
