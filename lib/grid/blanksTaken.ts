import { blanksForConfidence } from '@/lib/job/blanksForConfidence';
import { thresholds } from '@/shared/tables/thresholds';
import { type CostSheet, caseValue } from './costSheet';

interface BlanksTaken {
  /** Blanks to lay out by case, spares among them. */
  readonly take: readonly number[];
  /** How likely no size runs out of blanks. */
  readonly covered: number;
}

/**
 * How many blanks of each size a job takes, wherever that is told. A customer's own cannot be bought again, so each of
 * their lines has the spares that the customer is asked for; all others share the usual confidence.
 *
 * @param isBrought whether the customer brings the blanks of a line
 */
export function blanksTaken(sheet: CostSheet, isBrought: (lineId: string) => boolean): BlanksTaken {
  const cases = sheet.cases.map(({ lineId, quantity }, index) => ({
    index,
    group: isBrought(lineId) ? lineId : null,
    pieces: Math.ceil(quantity),
    chance: 1 / caseValue(sheet, 'blanksDrawn', index),
    price: caseValue(sheet, 'blanks', index),
  }));
  const { usual, sure } = thresholds.spares;
  const groups = [...new Set(cases.map(({ group }) => group))].map((group) => {
    const members = cases.filter((one) => one.group === group);
    const found = blanksForConfidence(members, (group === null ? usual : sure).value);
    return {
      covered: found.covered,
      took: members.map(({ index }, at) => [index, found.blanks[at]] as const),
    };
  });
  const taken = new Map(groups.flatMap(({ took }) => took));
  return {
    take: cases.map(({ index, pieces }) => taken.get(index) ?? pieces),
    covered: groups.reduce((all, group) => all * group.covered, 1),
  };
}
