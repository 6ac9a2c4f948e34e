import type { Family } from '@/app/_controls/FamilyMark';
import type { CostGroupId } from '@/lib/grid/costGroups';

/** Colour and pattern of a group, the same as those of its lines. */
export const groupMarks: Readonly<
  Record<CostGroupId, { readonly family: Family; readonly shade: 1 | 2 | 3 }>
> = {
  blanks: { family: 'materials', shade: 1 },
  time: { family: 'time', shade: 1 },
  overhead: { family: 'house', shade: 1 },
  loss: { family: 'loss', shade: 1 },
  sheets: { family: 'materials', shade: 2 },
  packing: { family: 'house', shade: 2 },
  running: { family: 'running', shade: 1 },
  own: { family: 'running', shade: 2 },
};
