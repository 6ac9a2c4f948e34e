import { cheapestCover, drawnFor } from '@/lib/job/cheapestCover';
import { expectedBlanks } from '@/lib/job/expectedBlanks';
import { enoughGood } from '@/lib/statistics/enoughGood';
import type { Cover } from '@/shared/schemas/making/supply';
import { thresholds } from '@/shared/tables/thresholds';
import { type CostSheet, caseValue } from './costSheet';
import { shareSpares } from './shareSpares';

interface BlanksTaken {
  /** Blanks to lay out by case, spares among them. */
  readonly take: readonly number[];
  /** How likely no size runs out of blanks. */
  readonly covered: number;
}

/** A size of a line, and what decides how many blanks it takes. */
interface CaseToCover {
  /** Place among the cases of the sheet. */
  readonly index: number;
  readonly lineId: string;
  readonly size: string;
  /** Good pieces, whole. */
  readonly pieces: number;
  /** That a blank ends good. */
  readonly chance: number;
  /** Of one blank, currency units, without freight: an order pays that once however many spares it has. */
  readonly price: number;
}

/** @returns the sizes of a job as blanks are taken for them. */
export const casesToCover = (sheet: CostSheet): readonly CaseToCover[] =>
  sheet.cases.map(({ lineId, size, quantity }, index) => ({
    ...{ index, lineId, size },
    pieces: Math.ceil(quantity),
    chance: 1 / caseValue(sheet, 'blanksDrawn', index),
    price: sheet.inputs.cases[index]?.blankPrice?.value ?? 0,
  }));

/**
 * How many blanks of each size a job takes, wherever that is told. A customer's own cannot be bought again, so each of
 * their lines has the spares that the customer is asked for; all others share one confidence, and lines on one blank
 * share its spares.
 *
 * @param blankOf the blank of a line; null where the customer brings it
 * @param cover how sure every size is to come out whole
 */
export function blanksTaken(
  sheet: CostSheet,
  blankOf: (lineId: string) => string | null,
  cover: Cover = 'usual',
): BlanksTaken {
  const cases = casesToCover(sheet);
  const isBought = ({ lineId }: CaseToCover) => blankOf(lineId) !== null;
  const { sure } = thresholds.spares;
  const confidence = cover === 'expected' ? null : thresholds.spares[cover].value;
  const bought = coverTogether(cases.filter(isBought), ({ lineId }) => blankOf(lineId), confidence);
  const brought = [...new Set(cases.filter((one) => !isBought(one)).map(({ lineId }) => lineId))].map(
    (lineId) =>
      coverTogether(
        cases.filter((one) => one.lineId === lineId),
        () => lineId,
        sure.value,
      ),
  );
  const all = [bought, ...brought];
  const taken = new Map(all.flatMap(({ taken: some }) => [...some]));
  return {
    take: cases.map(({ index, pieces }) => taken.get(index) ?? pieces),
    covered: all.reduce((product, { covered }) => product * covered, 1),
  };
}

// Helpers

interface Taken {
  readonly taken: ReadonlyMap<number, number>;
  readonly covered: number;
}

/** @param confidence null for what is expected to be drawn and no more, whole over the sizes of a blank */
function coverTogether(
  cases: readonly CaseToCover[],
  stackOf: (one: CaseToCover) => string | null,
  confidence: number | null,
): Taken {
  const keys = cases.map((one) => JSON.stringify([stackOf(one), one.size]));
  const stacks = [...new Set(keys)].map((key) => cases.filter((_, at) => keys[at] === key));
  const { blanks, covered } =
    confidence === null
      ? expectedOf(stacks, stackOf)
      : cheapestCover(
          stacks.map((wanted) => ({ wanted, price: wanted[0]?.price ?? 0 })),
          confidence,
        );
  const taken = stacks.flatMap((stack, at) => {
    const parts = shareSpares(stack, blanks[at] ?? 0);
    return stack.map(({ index, pieces }, place) => [index, parts[place] ?? pieces] as const);
  });
  return { taken: new Map(taken), covered };
}

function expectedOf(
  stacks: readonly (readonly CaseToCover[])[],
  blankOf: (one: CaseToCover) => string | null,
): { readonly blanks: readonly number[]; readonly covered: number } {
  const named = stacks.map((wanted, at) => ({
    at,
    wanted,
    blank: wanted[0] === undefined ? null : blankOf(wanted[0]),
  }));
  const drawn = new Map(
    [...new Set(named.map(({ blank }) => blank))].flatMap((blank) => {
      const own = named.filter((one) => one.blank === blank);
      const whole = expectedBlanks(own.map(({ wanted }) => drawnFor(wanted)));
      return own.map(({ at, wanted }, place) => {
        const good = wanted.reduce((sum, { pieces }) => sum + pieces, 0);
        return [at, Math.max(whole[place] ?? good, good)] as const;
      });
    }),
  );
  const blanks = stacks.map((_, at) => drawn.get(at) ?? 0);
  const logs = stacks.map((wanted, at) => enoughGood(wanted)(blanks[at] ?? 0));
  return { blanks, covered: Math.exp(logs.reduce((sum, log) => sum + log, 0)) };
}
