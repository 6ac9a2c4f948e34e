import { blanksTaken } from '@/lib/grid/blanksTaken';
import { type CostCase, type CostSheet, caseValue } from '@/lib/grid/costSheet';
import { blanksForConfidence } from '@/lib/job/blanksForConfidence';
import type { RunJob } from '@/lib/making/runPlan';
import type { Cover } from '@/shared/schemas/supply';
import { splitWhole } from '@/shared/splitWhole';
import { thresholds } from '@/shared/tables/thresholds';

/** A size of a line with the blanks laid out for it. */
interface SizeBlanks {
  readonly lineId: string;
  readonly size: string;
  /** Good pieces. */
  readonly wanted: number;
  /** Blanks laid out, spares among them. */
  readonly take: number;
  /** That a blank ends good. */
  readonly chance: number;
}

/**
 * Blanks of each size of a job by the cover of its run. Those that a customer brings cannot be bought again: of them
 * every run takes as many as the customer was asked for.
 */
export function blanksOfJob({ input, costed: { sheet } }: RunJob, cover: Cover): readonly SizeBlanks[] {
  const isBrought = (lineId: string) => {
    const line = input.job.lines.find(({ id }) => id === lineId);
    return line !== undefined && input.blanks[line.blankId]?.suppliedBy === 'customer';
  };
  const usual = blanksTaken(sheet, isBrought).take;
  const bought = sheet.cases.flatMap(({ lineId }, index) => (isBrought(lineId) ? [] : [index]));
  const others = cover === 'usual' ? null : coverOf(sheet, bought, cover);
  return sheet.cases.map((one, index) => {
    const at = bought.indexOf(index);
    const wanted = piecesOf(one);
    const take = (at < 0 ? undefined : others?.[at]) ?? usual[index] ?? wanted;
    return { lineId: one.lineId, size: one.size, wanted, take, chance: chanceOf(sheet, index) };
  });
}

// Helpers

const piecesOf = ({ quantity }: CostCase): number => Math.ceil(quantity - 1e-9);
const chanceOf = (sheet: CostSheet, index: number): number => 1 / caseValue(sheet, 'blanksDrawn', index);

/** What is expected to be used is counted over all sizes together and shared by need; a chance goes by every size. */
function coverOf(
  sheet: CostSheet,
  indexes: readonly number[],
  cover: Exclude<Cover, 'usual'>,
): readonly number[] {
  const wanted = indexes.flatMap((index) => {
    const one = sheet.cases[index];
    return one === undefined
      ? []
      : [
          {
            pieces: piecesOf(one),
            chance: chanceOf(sheet, index),
            price: sheet.inputs.cases[index]?.blankPrice?.value ?? 0,
          },
        ];
  });
  if (cover === 'sure') return blanksForConfidence(wanted, thresholds.spares.sure.value).blanks;
  const used = wanted.map(({ pieces, chance }) => pieces / chance);
  const all = Math.ceil(used.reduce((sum, many) => sum + many, 0) - 1e-9);
  return splitWhole(all, used).map((many, at) => Math.max(many, wanted[at]?.pieces ?? 0));
}
