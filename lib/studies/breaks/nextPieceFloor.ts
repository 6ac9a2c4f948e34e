import { type CostSheet, UnknownFigure } from '@/lib/grid/costSheet';
import { taxTerms } from '@/lib/price/taxTerms';

/**
 * @param index which case of the cost sheet
 * @returns the least that one piece more of it must bring in, written as the channel writes prices, unrounded
 */
export function nextPieceFloor(sheet: CostSheet, index: number): number {
  const cost = sheet.cases[index]?.incrementalCost;
  const fees = sheet.jobValues.feeShare;
  if (cost === undefined || fees === undefined)
    throw new UnknownFigure(`the cost sheet has no case ${index} with fees`);
  return taxTerms(sheet).written(cost / (1 - fees));
}
